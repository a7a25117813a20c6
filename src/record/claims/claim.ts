import type { EquipmentFacts, JobReading, Statement } from "../../model.ts";

/** What stands in a job's record, in order of time, as claims and proofs see it. */
export interface Ledger {
  readonly equipment: EquipmentFacts;
  readonly said: readonly Said[];
  readonly readings: readonly JobReading[];
  /** the words of every message that stands, lower case */
  readonly words: readonly string[];
  /** people who handled refrigerant and whose certificate the office does not know; names */
  readonly uncertified: readonly string[];
}

export interface Said {
  /** ISO */
  readonly at: string;
  readonly who: string;
  readonly message: string;
  readonly statement: Statement;
}

/** Something the record must hold before a claim is proven. */
export interface Proof {
  /** what is missing, as it is asked for: "vacuum hold" */
  readonly gap: string;
  /** what lacking it costs: 3 the law or the bill, 2 the warranty, 1 the next visit */
  readonly cost: 1 | 2 | 3;
  /** `since`: ISO, when the claim was made */
  readonly held: (ledger: Ledger, since: string) => boolean;
}

/** Something a technician said was so or was done. */
export interface Claim {
  readonly name: string;
  /** ISO of the moment that it was made, the first time; undefined where it was not */
  readonly made: (ledger: Ledger) => string | undefined;
  readonly proofs: readonly Proof[];
}

type Action = Extract<Statement, { kind: "action" }>;
type Part = Extract<Statement, { kind: "part" }>;

/** Actions that were done, not announced. */
export function done(ledger: Ledger): readonly { readonly at: string; readonly action: Action }[] {
  return ledger.said.flatMap(({ at, statement }) =>
    statement.kind === "action" && statement.planned !== true ? [{ at, action: statement }] : [],
  );
}

/** Parts that were fitted, said as a part or as something replaced. */
export function fitted(ledger: Ledger): readonly { readonly at: string; readonly name: string }[] {
  const parts = ledger.said.flatMap(({ at, statement }) =>
    statement.kind === "part" && statement.state === "fitted"
      ? [{ at, name: nameOf(statement) }]
      : [],
  );
  const replaced = done(ledger).flatMap(({ at, action }) =>
    action.action === "replaced" && action.what !== undefined ? [{ at, name: action.what }] : [],
  );
  return [...parts, ...replaced].sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
}

const nameOf = ({ part }: Part): string => part;

/** The moment of the first that was fitted of a kind. */
export const fittedFirst = (ledger: Ledger, kind: RegExp): string | undefined =>
  fitted(ledger).find(({ name }) => kind.test(name))?.at;

export const isMeasured = (reading: JobReading): boolean =>
  reading.rating === undefined && reading.earlier !== true && reading.doubtful !== true;

/** Measured readings of a quantity, taken not before a moment. */
export function measured(
  ledger: Ledger,
  quantity: JobReading["quantity"],
  since?: string,
): readonly JobReading[] {
  return ledger.readings.filter(
    (reading) =>
      reading.quantity === quantity &&
      isMeasured(reading) &&
      (since === undefined || Date.parse(reading.taken) >= Date.parse(since)),
  );
}

/** Whether one of some observations was made, or made and denied: either is an answer. */
export function observed(ledger: Ledger, ...names: readonly string[]): boolean {
  return ledger.said.some(
    ({ statement }) => statement.kind === "observation" && names.includes(statement.observation),
  );
}
