import type { Sheet, UnitHabit } from "../../model.ts";
import type { Report } from "../report/report.ts";
import type { About, DayRecord } from "./sheet-source.ts";

/** Everything that the files of an export are made from. */
export interface ExportRecord extends DayRecord {
  readonly about: About;
  readonly units: UnitHabit;
  /** its sheets, where they are made already; those about the export itself are made anew */
  readonly sheets?: readonly Sheet[];
  /** the jobs as `show --json` prints them */
  readonly shown: readonly object[];
  /** absent where persons and places were taken out: the chain would name them */
  readonly chain?: Chain;
  /** each made when its turn comes */
  readonly reports: readonly (() => Report)[];
  /** ends a text, given in pieces, in a line with its fingerprint */
  readonly seal: (pieces: Iterable<string>) => Iterable<string>;
  readonly fingerprint: (bytes: Uint8Array) => string;
}

/** The entries that the jobs are folded from, with what ties them to the rest of the store. What is long is read when it is written. */
export interface Chain {
  readonly entries: Iterable<object>;
  /** [job, last place, its hash] of each job that is not in the file */
  readonly other_heads: readonly (readonly [number, number, string])[];
  /** what each entry's hash of words was made over; none for those that were erased */
  readonly words: Iterable<object>;
  /** numbers of people in entries -> the names that they write under */
  readonly people: Readonly<Record<string, string>>;
}
