import type { Cell, JobReading } from "../../model.ts";
import { figureWords } from "../figure-words.ts";
import { gasOfWeight } from "../gas-of.ts";
import { personName } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime, type DayRecord, type ExportJob, onDay } from "./sheet-source.ts";

export const refrigerantSheet: SheetMaker = {
  name: "refrigerant",
  columns: [
    { name: "job", kind: "number", about: "job number" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "circuit", kind: "text", about: "circuit or compressor, where said" },
    { name: "gas", kind: "text", about: "from the job, else the office's list" },
    { name: "full charge kg", kind: "number", about: "from the office's list" },
    { name: "at", kind: "time", about: "when it was weighed, as said" },
    { name: "by", kind: "text", about: "who said it" },
    { name: "action", kind: "text", about: "recovered or charged" },
    { name: "figure", kind: "text", about: "the weight as said" },
    { name: "kg", kind: "number", about: "the weight" },
    { name: "cylinder", kind: "text", about: "out of or into which, where it was said" },
    {
      name: "stands",
      kind: "text",
      about: "yes; no where it was replaced or taken back; asked where it is doubted",
    },
    { name: "message", kind: "text", about: "message that it came with" },
  ],
  rows: (record) =>
    record.jobs.flatMap((entry) =>
      entry.job.readings
        .filter((r) => r.quantity === "mass" && r.action !== undefined && r.rating === undefined)
        .filter((r) => onDay(record, r.taken))
        .map((reading) => weightRow(record, entry, reading)),
    ),
};

function weightRow(record: DayRecord, entry: ExportJob, r: JobReading): readonly Cell[] {
  const { job, equipment } = entry;
  const { number, unit } = figureWords(r);
  const gone = r.replaced_by !== undefined || r.undone === true || r.deleted === true;
  return [
    job.job,
    job.site,
    job.equipment,
    r.subject ?? null,
    gasOfWeight(job, equipment, r),
    equipment.charge_kg ?? null,
    cellTime(record, r.taken),
    personName(r.who, record.names),
    r.action ?? null,
    `${number} ${unit}`.trim(),
    typeof r.value === "number" ? Math.round(r.value * 1000) / 1000 : null,
    record.cylinderOf?.(job, r.message) ?? null,
    gone ? "no" : r.doubtful === true ? "asked" : "yes",
    r.message,
  ];
}
