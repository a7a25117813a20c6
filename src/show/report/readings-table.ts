import type { JobReading } from "../../model.ts";
import { cellTime, type DayRecord, type ExportJob } from "../exports/sheet-source.ts";
import { figures } from "../figures.ts";
import { verdictsOf } from "../verdicts-of.ts";
import { personName, verdictWords } from "../wording.ts";
import type { Block } from "./report.ts";

interface Column {
  readonly says: string;
  readonly share: number;
  readonly cell: (reading: JobReading, index: number) => string;
}

/** Every reading of a job, corrected ones too: a reader can see each correction. */
export function readingsTable(entry: ExportJob, record: DayRecord): Block {
  const { readings } = entry.job;
  const people = [...new Set(readings.map(({ who }) => personName(who, record.names)))];
  const columns = columnsOf(entry, record, people.length > 1);
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  return {
    kind: "table",
    title: people.length === 1 ? `All readings, by ${people.join("")}` : "All readings",
    table: {
      columns: columns.map(({ says, share }) => ({ says, share: share / whole })),
      rows: readings.map((reading, index) => columns.map(({ cell }) => cell(reading, index))),
    },
  };
}

/** Columns that would say the same in every row, or nothing, are left out. */
function columnsOf(entry: ExportJob, record: DayRecord, byMany: boolean): readonly Column[] {
  const { readings } = entry.job;
  const verdicts = verdictsOf(entry);
  const numbers = new Map(readings.map(({ id }, index) => [id, index + 1]));
  const by: Column = {
    says: "By",
    share: 0.16,
    cell: ({ who }) => personName(who, record.names),
  };
  const component: Column = {
    says: "Component",
    share: 0.14,
    cell: ({ subject }) => subject ?? "",
  };
  return [
    { says: "No.", share: 0.06, cell: (_, index) => String(index + 1) },
    { says: "When", share: 0.13, cell: ({ taken }) => cellTime(record, taken).slice(5, 16) },
    ...(byMany ? [by] : []),
    ...(readings.some(({ subject }) => subject !== undefined) ? [component] : []),
    { says: "Reading, as said", share: 0.36, cell: (reading) => figures([reading]) },
    {
      says: "Verdict",
      share: 0.17,
      cell: (reading) => {
        const level = verdicts.get(reading.id)?.level;
        return fateOf(reading, numbers) ?? (level === undefined ? "" : verdictWords[level]);
      },
    },
  ];
}

function fateOf(reading: JobReading, numbers: ReadonlyMap<string, number>): string | undefined {
  if (reading.deleted === true) return "deleted";
  if (reading.undone === true) return "taken back";
  if (reading.replaced_by !== undefined) {
    const by = numbers.get(reading.replaced_by);
    return by === undefined ? "replaced" : `replaced by ${by}`;
  }
  return reading.doubtful === true ? "doubtful, not used" : undefined;
}
