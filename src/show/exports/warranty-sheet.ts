import type { JobReading } from "../../model.ts";
import { namedCauses } from "../causes.ts";
import { figures } from "../figures.ts";
import { stands } from "../standing-reading.ts";
import { faultWords, likelihood, personName } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime, type ExportJob, onDay } from "./sheet-source.ts";

const mostFigures = 12;

/** What a warranty desk asks for each part that was fitted. */
export const warrantySheet: SheetMaker = {
  name: "warranty",
  spare: true,
  columns: [
    { name: "job", kind: "number", about: "job number" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "unit model", kind: "text", about: "from the office's list" },
    { name: "unit serial", kind: "text", about: "from the office's list, as text" },
    { name: "installed", kind: "text", about: "from the office's list" },
    { name: "part", kind: "text", about: "what was fitted" },
    { name: "number", kind: "text", about: "part number, as text" },
    { name: "serials said", kind: "text", about: "serial numbers that were read out on this job" },
    { name: "called in", kind: "time", about: "when the job was opened" },
    { name: "fitted", kind: "time", about: "when it was said to be in" },
    { name: "by", kind: "text", about: "who said so" },
    { name: "cause", kind: "text", about: "most likely cause, with likely or possible" },
    { name: "readings before", kind: "text", about: "as said, before the part was in" },
    { name: "readings after", kind: "text", about: "as said, after it" },
    { name: "photos", kind: "number", about: "pictures on the job" },
    { name: "hours", kind: "number", about: "on site, over all people" },
    { name: "lacking", kind: "text", about: "what the file lacks" },
  ],
  rows: (record) =>
    record.jobs.flatMap((entry) => {
      const { job, equipment, judgement } = entry;
      const [top] = namedCauses(judgement);
      return job.parts
        .filter((part) => part.state === "fitted" && onDay(record, part.at))
        .map((part) => [
          job.job,
          job.site,
          job.equipment,
          equipment.model ?? null,
          equipment.serial ?? null,
          equipment.installed ?? null,
          part.part,
          part.number ?? null,
          serialsSaid(entry),
          cellTime(record, job.opened),
          cellTime(record, part.at),
          personName(part.who, record.names),
          top === undefined ? "not proven" : `${likelihood(top)}: ${faultWords(top.fault)}`,
          figuresOf(job.readings.filter((r) => r.taken <= part.at && measured(r))),
          figuresOf(job.readings.filter((r) => r.taken > part.at && measured(r))),
          job.files.filter(({ type }) => type.startsWith("image/")).length,
          job.labor_hours,
          job.file.gaps.join("; "),
        ]);
    }),
};

const measured = (reading: JobReading): boolean => stands(reading) && reading.doubtful !== true;

/** The last ones count: the first were taken before anybody knew what mattered. */
const figuresOf = (readings: readonly JobReading[]): string =>
  figures(readings.slice(-mostFigures));

function serialsSaid({ job }: ExportJob): string {
  return job.statements
    .flatMap(({ statement, undone, deleted }) =>
      statement.kind === "nameplate" &&
      statement.field === "serial" &&
      undone !== true &&
      deleted !== true
        ? [[statement.subject, statement.value].filter((word) => word !== undefined).join(" ")]
        : [],
    )
    .join("; ");
}
