import type { Cell, Finding, JobReading } from "../../model.ts";
import { figureWords } from "../figure-words.ts";
import { placeName } from "../reading-phrase.ts";
import { verdictsOf } from "../verdicts-of.ts";
import { personName, verdictWords } from "../wording.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { cellTime, type DayRecord, type ExportJob, onDay } from "./sheet-source.ts";

export const readingsSheet: SheetMaker = {
  name: "readings",
  columns: [
    { name: "job", kind: "number", about: "job number" },
    { name: "site", kind: "text", about: "customer's site" },
    { name: "unit", kind: "text", about: "tag of the unit" },
    { name: "component", kind: "text", about: "what it belongs to, where said" },
    { name: "measured at", kind: "time", about: "the time said, else the message's" },
    { name: "received at", kind: "time", about: "when the message came" },
    { name: "by", kind: "text", about: "who sent it" },
    { name: "quantity", kind: "text", about: "what was measured" },
    { name: "where", kind: "text", about: "place on the machine" },
    { name: "points", kind: "text", about: "electrical points" },
    { name: "relation", kind: "text", about: "is, about, under, at most, over, at least, range" },
    { name: "figure", kind: "text", about: "the figure as said, with its unit" },
    { name: "value", kind: "number", about: "the number as said, where it is one number" },
    { name: "unit", kind: "text", about: "the unit as said" },
    { name: "SI value", kind: "number", about: "the same in the canonical unit beside it" },
    { name: "SI to", kind: "number", about: "upper end of a range" },
    { name: "SI unit", kind: "text", about: "canonical unit, UCUM" },
    { name: "text value", kind: "text", about: "a fault code, or over range" },
    { name: "state", kind: "text", about: "start or running; peak, minimum, average" },
    { name: "test V", kind: "number", about: "voltage of an insulation test" },
    { name: "temperature Cel", kind: "number", about: "said with an insulation or winding test" },
    { name: "after s", kind: "number", about: "seconds since the test began" },
    { name: "for s", kind: "number", about: "how long the value held" },
    { name: "rating", kind: "text", about: "plate, setpoint or expected value: no measurement" },
    {
      name: "verdict",
      kind: "text",
      about:
        "GOOD, WATCH, BAD or NOT JUDGED, on the last value of each place; before the work as it was judged then",
    },
    { name: "shows", kind: "text", about: "what the verdict says, with the limit" },
    { name: "basis", kind: "text", about: "where the limit comes from" },
    { name: "assumed", kind: "text", about: "what was filled in and not said" },
    { name: "doubtful", kind: "text", about: "yes: hardly possible, kept and not used" },
    { name: "stands", kind: "text", about: "yes, or what became of it" },
    { name: "replaced by", kind: "text", about: "reading that stands instead" },
    { name: "said", kind: "text", about: "the words it was read from" },
    { name: "reading", kind: "text", about: "its id in the record" },
    { name: "message", kind: "text", about: "message that it came with" },
  ],
  rows: (record) =>
    record.jobs.flatMap((entry) => {
      const verdicts = verdictsOf(entry);
      return entry.job.readings
        .filter((r) => onDay(record, r.taken))
        .map((reading) =>
          readingRow(record, entry, { reading, finding: verdicts.get(reading.id) }),
        );
    }),
};

function readingRow(
  record: DayRecord,
  { job }: ExportJob,
  row: { readonly reading: JobReading; readonly finding: Finding | undefined },
): readonly Cell[] {
  const { reading, finding } = row;
  return [
    job.job,
    job.site,
    job.equipment,
    reading.subject ?? null,
    cellTime(record, reading.taken),
    cellTime(record, reading.received),
    personName(reading.who, record.names),
    ...measured(reading),
    ...judged(finding),
    reading.assumed.join(", "),
    reading.doubtful === true ? "yes" : null,
    stands(reading),
    reading.replaced_by ?? null,
    reading.said,
    reading.id,
    reading.message,
  ];
}

function measured(r: JobReading): readonly Cell[] {
  return [
    r.quantity.replaceAll("_", " "),
    r.at === undefined ? null : placeName(r.at),
    r.points?.join(" to ") ?? null,
    relations[r.relation],
    figureText(r),
    numberSaid(r),
    r.figure.unit,
    typeof r.value === "number" ? r.value : null,
    r.high ?? null,
    r.unit,
    typeof r.value === "string" ? r.value : r.over_range === true ? "over range" : null,
    [r.state, r.stat].filter((w) => w !== undefined).join(" "),
    r.test_voltage ?? null,
    r.temperature ?? null,
    r.after_s ?? null,
    r.for_s ?? null,
    r.rating?.replaceAll("_", " ") ?? (r.earlier === true ? "earlier visit" : null),
  ];
}

const relations = {
  "=": "is",
  "~": "about",
  "<": "under",
  "<=": "at most",
  ">": "over",
  ">=": "at least",
  in: "range",
} as const satisfies Record<JobReading["relation"], string>;

function figureText(reading: JobReading): string {
  const { number, unit } = figureWords(reading);
  return `${number} ${unit}`.trim();
}

/** "4 lb 6 oz" and "80 to 90" are not one number, and "1,200" is. */
function numberSaid(reading: JobReading): Cell {
  const { figure, over_range, relation } = reading;
  if (relation === "in" || figureWords(reading).number.includes(" lb ")) return null;
  const plain = figure.number.replaceAll(/(?<=\d),(?=\d{3}\b)/g, "");
  return over_range !== true && /^-?\d*\.?\d+$/.test(plain) ? Number(plain) : null;
}

function judged(finding: Finding | undefined): readonly Cell[] {
  if (finding === undefined) return [null, null, null];
  const { level, brief, says, basis } = finding;
  return [verdictWords[level], brief ?? says, basis];
}

function stands(reading: JobReading): string {
  if (reading.deleted === true) return "deleted";
  if (reading.undone === true) return "taken back";
  return reading.replaced_by === undefined ? "yes" : "replaced";
}
