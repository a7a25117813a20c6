import type { Plot } from "../plots/plot.ts";

/** A table of a report: headings with their share of the width, rows of text. */
export interface Table {
  readonly columns: readonly { readonly says: string; readonly share: number }[];
  readonly rows: readonly (readonly string[])[];
}

export type Block =
  | {
      readonly kind: "lines";
      readonly title: string;
      readonly lines: readonly string[];
      /** in small letters: what stands on every report */
      readonly small?: readonly string[];
    }
  | { readonly kind: "table"; readonly title: string; readonly table: Table };

/** What follows the report and is looked up in: a long table, set tighter. */
export interface Annex {
  readonly title: string;
  readonly says: string;
  readonly table: Table;
}

export interface Photo {
  readonly bytes: Uint8Array;
  readonly says: string;
}

/** A job's report as data, before it is set on paper. */
export interface Report {
  readonly title: string;
  readonly subtitle: string;
  readonly head: readonly (readonly [label: string, text: string])[];
  readonly blocks: readonly Block[];
  readonly plots: readonly Plot[];
  readonly photos: readonly Photo[];
  /** what follows on pages of its own */
  readonly annex: readonly Annex[];
  /** on every page: revision, fingerprint */
  readonly foot: string;
  readonly paper: "LETTER" | "A4";
  /** ISO: stands in the file for the time of its making, so that it is the same file again */
  readonly made: string;
}
