import type { JobReading } from "../../model.ts";
import { cellTime, type DayRecord, type ExportJob } from "../exports/sheet-source.ts";
import { figures } from "../figures.ts";
import { verdictsOf } from "../verdicts-of.ts";
import { personName, verdictWords } from "../wording.ts";
import type { Annex } from "./report.ts";

/** Readings of one message that share component, verdict and fate. */
interface Row {
  readonly from: number;
  readonly readings: JobReading[];
  readonly verdict: string;
}

/** More in a row would be looked for in vain. */
const mostInRow = 8;

/** Every reading of a job, corrected ones too: a reader can see each correction. */
export function readingsTable(entry: ExportJob, record: DayRecord): Annex {
  const { readings } = entry.job;
  const rows = rowsOf(entry);
  const people = [...new Set(readings.map(({ who }) => personName(who, record.names)))];
  const days = [...new Set(readings.map(({ taken }) => cellTime(record, taken).slice(0, 10)))];
  const when = ({ taken }: JobReading): string =>
    cellTime(record, taken).slice(days.length > 1 ? 5 : 11, 16);
  const byMany = people.length > 1;
  const columns = [
    { says: "No.", share: readings.length > 999 ? 0.17 : 0.15 },
    { says: "When", share: days.length > 1 ? 0.19 : 0.115 },
    ...(byMany ? [{ says: "By", share: 0.068 }] : []),
    { says: "Reading", share: 0.5 },
    { says: "Verdict", share: 0.18 },
  ];
  const whole = columns.reduce((sum, { share }) => sum + share, 0);
  return {
    title: `Appendix: ${countedReadings(readings.length)}, as said`,
    says: saysOf(people, days),
    table: {
      columns: columns.map(({ says, share }) => ({ says, share: share / whole })),
      rows: rows.map((row) => {
        const [first] = row.readings;
        const who = first === undefined ? "" : personName(first.who, record.names);
        return [
          numbersOf(row),
          first === undefined ? "" : when(first),
          ...(byMany ? [letterOf(people.indexOf(who))] : []),
          wordsOf(row.readings),
          row.verdict,
        ];
      }),
    },
  };
}

/** "all 1,008 readings" */
export function countedReadings(count: number): string {
  if (count === 1) return "the one reading";
  return `all ${String(count).replaceAll(/\B(?=(?:\d{3})+$)/g, ",")} readings`;
}

/** "By: A Bram, B Tamsin. On 2026-05-12." */
function saysOf(people: readonly string[], days: readonly string[]): string {
  const [day] = days;
  const named = people.map((name, index) => `${letterOf(index)} ${name}`);
  const by = people.length > 1 ? `By: ${named.join(", ")}.` : `By ${people.join("")}.`;
  const on = days.length > 1 || day === undefined ? "" : ` On ${day}.`;
  return `${by}${on} What was corrected stands with what it was replaced by.`;
}

/** A, B … Z, AA: names are long and come again in each row. */
function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : `${letterOf(Math.floor(index / 26) - 1)}${last}`;
}

const numbersOf = ({ from, readings }: Row): string =>
  readings.length === 1 ? String(from) : `${from}-${from + readings.length - 1}`;

function wordsOf(readings: readonly JobReading[]): string {
  const subject = readings[0]?.subject;
  return `${subject === undefined ? "" : `${subject}: `}${figures(readings)}`;
}

function rowsOf(entry: ExportJob): readonly Row[] {
  const { readings } = entry.job;
  const verdicts = verdictsOf(entry);
  const numbers = new Map(readings.map(({ id }, index) => [id, index + 1]));
  const rows: Row[] = [];
  for (const [index, reading] of readings.entries()) {
    const level = verdicts.get(reading.id)?.level;
    const verdict = fateOf(reading, numbers) ?? (level === undefined ? "" : verdictWords[level]);
    const row = rows.at(-1);
    const [first] = row?.readings ?? [];
    const joins =
      row?.verdict === verdict &&
      row.readings.length < mostInRow &&
      first?.message === reading.message &&
      first.subject === reading.subject &&
      first.taken === reading.taken;
    if (joins) row.readings.push(reading);
    else rows.push({ from: index + 1, readings: [reading], verdict });
  }
  return rows;
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
