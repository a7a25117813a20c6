import type { Finding, JobReading, Judgement } from "../model.ts";
import { stands } from "./standing-reading.ts";
import { speaksOf, worstFirst } from "./touched.ts";

export interface Judged {
  readonly job: { readonly readings: readonly JobReading[] };
  readonly judgement: Judgement;
  /** as the job was judged before anything was changed on the machine */
  readonly beforeWork?: { readonly at: string; readonly judgement: Judgement };
}

/** Checks that judge a row of values of one place as a whole. */
const together = new Set<string>(["pressure_test", "evacuation", "polarization", "start_current"]);

/**
 * By reading id, the finding that judged it: of several the worst. A verdict belongs to the value
 * that it was made on: what was read again at the same place has none of its own, and what was
 * read before the work has the verdict of then.
 */
export function verdictsOf(entry: Judged): ReadonlyMap<string, Finding> {
  const known = made.get(entry);
  if (known !== undefined) return known;
  const verdicts = verdictsIn(entry);
  made.set(entry, verdicts);
  return verdicts;
}

/** A sheet and two tables of a report ask for the same. */
const made = new WeakMap<Judged, ReadonlyMap<string, Finding>>();

function verdictsIn({ job, judgement, beforeWork }: Judged): ReadonlyMap<string, Finding> {
  const standing = job.readings.filter((r) => stands(r) && r.doubtful !== true);
  const cut = beforeWork === undefined ? Number.NEGATIVE_INFINITY : Date.parse(beforeWork.at);
  const isBefore = (r: JobReading): boolean => Date.parse(r.received) < cut;
  return new Map([
    ...judgedBy(standing.filter(isBefore), beforeWork?.judgement),
    ...judgedBy(
      standing.filter((r) => !isBefore(r)),
      judgement,
    ),
  ]);
}

function judgedBy(
  readings: readonly JobReading[],
  judgement: Judgement | undefined,
): readonly (readonly [string, Finding])[] {
  const findings = worstFirst(judgement?.findings ?? []);
  const places = readings.map(placeOf);
  const last = new Map(readings.map((reading, index) => [places[index], reading.id]));
  const rows = rowsOf(readings, places);
  return readings.flatMap((reading, index): (readonly [string, Finding])[] => {
    const isLast = last.get(places[index]) === reading.id;
    // "11, 14.4 and 11.2 A" without their legs are one place, and one verdict names them all
    const row = rows.get(`${reading.message} ${places[index]}`) ?? [];
    const fitting = findings.filter(
      (one) => (isLast || together.has(one.check) || namesRow(one, row)) && wasMadeOn(one, reading),
    );
    // of two sets of one check the one that names the figure was made on it
    const finding = fitting.find((one) => names(one, reading)) ?? fitting[0];
    return finding === undefined ? [] : [[reading.id, finding]];
  });
}

/** The readings of one message at one place. */
function rowsOf(
  readings: readonly JobReading[],
  places: readonly string[],
): ReadonlyMap<string, readonly JobReading[]> {
  const rows = new Map<string, JobReading[]>();
  for (const [index, reading] of readings.entries()) {
    const key = `${reading.message} ${places[index]}`;
    const row = rows.get(key);
    if (row === undefined) rows.set(key, [reading]);
    else row.push(reading);
  }
  return rows;
}

/** Of the places that a check may speak about in a reply, those that its verdict is made on. */
const madeOn: Readonly<Record<string, (reading: JobReading, finding: Finding) => boolean>> = {
  // a hold is the gauge on the circuit and the pipe it sits on; a box or a room is neither
  pressure_test: ({ at }) => at === undefined,
  saturation: ({ quantity, at }, { says }) =>
    (quantity === "pressure" || at?.endsWith("_saturation") === true) &&
    at?.startsWith("suction") === /^boils/i.test(says),
  supply: ({ quantity, at, kind, value, points }) =>
    quantity === "frequency" ||
    ((at === undefined || at === "supply") &&
      kind !== "dc" &&
      typeof value === "number" &&
      value > 50 &&
      (points === undefined || points.every((point) => /^(?:L[123]|N|phase .)$/.test(point)))),
  fan: ({ subject }) => subject !== undefined && /fan|blower/i.test(subject),
};

const component = /compressor|fan|blower|pump/i;

/** Stricter than what a reply may mention: a verdict in a sheet stands beside one figure alone. */
function wasMadeOn(finding: Finding, reading: JobReading): boolean {
  const whose = component.exec(reading.subject ?? "")?.[0].toLowerCase();
  const about = component.exec(finding.about)?.[0].toLowerCase();
  if (whose !== undefined && about !== undefined && whose !== about) return false;
  return speaksOf(finding, reading) && (madeOn[finding.check]?.(reading, finding) ?? true);
}

const namesRow = (finding: Finding, row: readonly JobReading[]): boolean =>
  row.length > 2 && row.every((reading) => names(finding, reading));

function names(finding: Finding, { figure }: JobReading): boolean {
  const said = numbersIn.get(finding) ?? new Set(numbersOf(finding.says));
  numbersIn.set(finding, said);
  return said.has(Number(figure.number));
}

/** Of each finding, asked for reading by reading. */
const numbersIn = new WeakMap<Finding, ReadonlySet<number>>();

const numbersOf = (says: string): readonly number[] =>
  says
    .split(/[^\d.]+/)
    .filter((word) => word !== "")
    .map(Number.parseFloat);

function placeOf(r: JobReading): string {
  const { quantity, subject, at, points, state, stat, kind, after_s } = r;
  return JSON.stringify([quantity, subject, at, points, state, stat, kind, after_s]);
}
