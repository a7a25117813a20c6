import type { QuantityName } from "../quantities/list.ts";
import type { Place, Rating } from "../vocabulary.ts";

/** What a word or a phrase says about the number that it stands with. */
export interface Label {
  readonly place?: Place;
  /** it is this quantity, wherever the unit allows */
  readonly quantity?: QuantityName;
  /** it is probably this quantity where no unit is said */
  readonly hint?: QuantityName;
  readonly rating?: Rating;
  /** a plate's word: holds for the values behind it too, until something is measured */
  readonly plate?: true;
  readonly state?: "start" | "running";
  readonly stat?: "peak" | "minimum" | "average";
  readonly kind?: "ac" | "dc";
  readonly reference?: "gauge" | "absolute";
  readonly action?: "recovered" | "charged";
  readonly earlier?: true;
  /** a part of the machine without a number: "blower", "drier"; ends the subject before it */
  readonly thing?: string;
  /** a component whose resistance is no winding's: thermistor, heater, coil */
  readonly component?: true;
}
