/** What a unit measures; quantities that share a dimension are told apart by words. */
export type Dimension =
  | "resistance"
  | "current"
  | "voltage"
  | "frequency"
  | "capacitance"
  | "power"
  | "apparent_power"
  | "pressure"
  | "inches_of_mercury"
  | "inches_of_water"
  | "low_pressure"
  | "temperature"
  | "percent"
  | "mass"
  | "airflow"
  | "speed"
  | "length"
  | "waterflow"
  | "concentration"
  | "time"
  | "steps"
  | "ratio";

/** Spelling, unit and factor in one row: canonical value = number * factor + offset. */
export interface Unit {
  readonly dimension: Dimension;
  /** the unit in plain letters, as a reply says it */
  readonly figure: string;
  readonly factor: number;
  readonly offset?: number;
  /** spellings that may stand beside a number or alone, "|" between them */
  readonly words: string;
  /** spellings that count only directly behind a number: they mean other things elsewhere */
  readonly beside?: string;
  /** what phones make of the word; each counts only beside a number */
  readonly heard?: string;
  readonly kind?: "ac" | "dc";
  readonly reference?: "gauge" | "absolute";
  /** the quantity that this unit alone settles */
  readonly settles?: string;
}

/** One thing that can be measured. */
export interface Quantity {
  /** the name that files, the record and replies share */
  readonly name: string;
  /** canonical UCUM unit of `value`; null where the value is text */
  readonly unit: string | null;
  /** what its units measure; the first is the usual one */
  readonly dimensions: readonly Dimension[];
  /** rows that this quantity brings; a dimension's rows serve all its quantities */
  readonly units: readonly Unit[];
  /** words that name it, "|" between them */
  readonly words: string;
  /** figure of the unit that goes without saying */
  readonly habit?: { readonly us: string; readonly si: string };
  /** canonical values outside are hardly possible in the trade: asked about; common practice, no source */
  readonly plausible?: readonly [low: number, high: number];
  /** a difference has no offset: 9 F is 5 K */
  readonly difference?: true;
}
