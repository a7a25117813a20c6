import type { Cell, JobPart, JobReading } from "../../model.ts";
import { namedCauses } from "../causes.ts";
import { figures } from "../figures.ts";
import { stands } from "../standing-reading.ts";
import { verdictsOf } from "../verdicts-of.ts";
import { causeCell, personName } from "../wording.ts";
import { partPapers } from "./part-papers.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime, type DayRecord, type ExportJob, onDay } from "./sheet-source.ts";

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
    { name: "old serial", kind: "text", about: "of what came out, as read out" },
    { name: "new serial", kind: "text", about: "of what went in, as read out" },
    { name: "serials said", kind: "text", about: "all serial numbers read out on this job" },
    { name: "invoice", kind: "text", about: "number of the part's invoice, where it was said" },
    { name: "called in", kind: "time", about: "when the job was opened" },
    { name: "fitted", kind: "time", about: "when it was said to be in" },
    { name: "by", kind: "text", about: "who said so" },
    { name: "cause", kind: "text", about: "most likely cause, with likely, possible or put right" },
    { name: "readings before", kind: "text", about: "as said, before the part was in" },
    { name: "readings after", kind: "text", about: "as said, after it" },
    { name: "photos", kind: "number", about: "pictures on the job" },
    { name: "hours", kind: "number", about: "on site, over all people" },
    {
      name: "lacking",
      kind: "text",
      about:
        "what a claim commonly asks for and the record does not hold, then what the file lacks",
    },
  ],
  rows: (record) =>
    record.jobs.flatMap((entry) =>
      entry.job.parts
        .filter((part) => part.state === "fitted" && onDay(record, part.at))
        .map((part) => claimRow(record, entry, part)),
    ),
};

function claimRow(record: DayRecord, entry: ExportJob, part: JobPart): readonly Cell[] {
  const { job, equipment, judgement } = entry;
  const [top] = namedCauses(judgement);
  const papers = partPapers(job, part);
  const decisive = decisiveFor(entry, part);
  const before = figuresOf(
    job.readings.filter((r) => r.taken <= part.at && measured(r)),
    decisive,
  );
  const after = figuresOf(
    job.readings.filter((r) => r.taken > part.at && measured(r)),
    decisive,
  );
  const photos = job.files.filter(({ type }) => type.startsWith("image/")).length;
  const asked: readonly (readonly [string, boolean])[] = [
    ["unit model", equipment.model !== undefined],
    ["unit serial", equipment.serial !== undefined],
    ["date installed", equipment.installed !== undefined],
    ["part number", part.number !== undefined],
    ["old serial of the part", papers.old !== undefined || !hasSerial.test(part.part)],
    ["new serial of the part", papers.fresh !== undefined || !hasSerial.test(part.part)],
    ["cause", top !== undefined],
    ["readings before", before !== ""],
    ["readings after", after !== ""],
    ["a photo", photos > 0],
    ["invoice number of the part", papers.invoice !== undefined],
    ["hours", job.labor_hours > 0],
  ];
  const gaps = asked.flatMap(([what, isThere]) => (isThere ? [] : [what]));
  return [
    job.job,
    job.site,
    job.equipment,
    equipment.model ?? null,
    equipment.serial ?? null,
    equipment.installed ?? null,
    part.part,
    part.number ?? null,
    papers.old ?? null,
    papers.fresh ?? null,
    serialsSaid(entry),
    papers.invoice ?? null,
    cellTime(record, job.opened),
    cellTime(record, part.at),
    personName(part.who, record.names),
    top === undefined ? "not proven" : causeCell(top),
    before,
    after,
    photos,
    job.labor_hours,
    [
      ...gaps,
      ...job.file.gaps.filter((gap) => !(gap === "old and new serial" && papers.both)),
    ].join("; "),
  ];
}

/** Parts that carry a serial number of their own; common practice, no source. */
const hasSerial = /compressor|motor|drive|inverter|board|module|pump/i;

const measured = (reading: JobReading): boolean => stands(reading) && reading.doubtful !== true;

/** How much a reading says of a part: 2 taken on it, 1 with a verdict, else 0. */
function decisiveFor(entry: ExportJob, part: JobPart): (reading: JobReading) => number {
  const verdicts = verdictsOf(entry);
  const name = part.part.toLowerCase();
  return ({ id, subject = "" }) => {
    const component = subject.toLowerCase().replace(/ \S+$/, "");
    if (component !== "" && name.includes(component)) return 2;
    return verdicts.has(id) ? 1 : 0;
  };
}

/** The decisive ones; of others the last: the first were taken before anybody knew what mattered. */
function figuresOf(
  readings: readonly JobReading[],
  decisive: (reading: JobReading) => number,
): string {
  const chosen = [...readings.entries()]
    .sort(([a, one], [b, other]) => decisive(other) - decisive(one) || b - a)
    .slice(0, mostFigures)
    .sort(([a], [b]) => a - b);
  return figures(chosen.map(([, reading]) => reading));
}

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
