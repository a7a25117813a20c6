import type { FaultName } from "../vocabulary.ts";
import type { Step, Where } from "./step.ts";

/**
 * A fault is data. The engine (`diagnose.ts`) multiplies its odds by how much likelier each sign
 * is under it than in the background of its group (`signs/`); of several signs of one group only
 * the strongest for and the strongest against count.
 */
export interface Fault {
  readonly fault: FaultName;
  /** what it is, as a clause: "the compressor's rotor is locked" */
  readonly says: string;
  /** share of calls that it causes on machines where it can be; relative, common practice */
  readonly common: number;
  /** it shows only when something tries to start the machine: without a try there is less reason to think of it */
  readonly attempt?: true;
  /** where it can be at all */
  readonly where?: Where;
  /**
   * P(outcome | this fault, the group was looked at), by sign. Outcomes of a group that are not
   * named share what is left in proportion to the background, at most the background itself: they
   * can speak against the fault, never for it. A group that is not named is untouched by it.
   */
  readonly shows: Readonly<Record<string, number>>;
  /** the proof that the trade asks for, or the first thing to do about it, cheapest first */
  readonly proof: readonly Step[];
  /** source of the probabilities, or "common practice, no source" */
  readonly source: string;
}
