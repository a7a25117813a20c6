/** A picture of numbers, as data: what is drawn, not how. */
export interface Plot {
  /** what people call it: "vacuum", "insulation", "start", "nitrogen" */
  readonly name: string;
  /** "RTU-2: vacuum after isolation" */
  readonly title: string;
  /** what the picture says, one line under it; empty for nothing */
  readonly note: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly series: readonly Series[];
  /** lines across the picture that values are held against */
  readonly limits: readonly { readonly at: number; readonly says: string }[];
}

export interface Axis {
  /** "minutes", "megohm": with its unit */
  readonly says: string;
  readonly scale: "linear" | "log";
  /** names in place of numbers, at 0, 1, 2 */
  readonly names?: readonly string[];
  /** the least stretch that is shown, so that noise does not fill the picture */
  readonly least?: readonly [low: number, high: number];
}

export type Mark = "dot" | "ring" | "cross" | "none";

export interface Series {
  readonly says: string;
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly mark: Mark;
  /** told apart without color */
  readonly line: "solid" | "dashed" | "none";
}
