import type { Relation } from "../model.ts";
import type { Unit } from "../quantities/quantity.ts";
import type { Label } from "./label.ts";

/** What a stretch of the text is, once numbers, units, points and names have been put together. */
export const itemKind = {
  /** a number with its unit, if it has one */
  number: 1,
  /** "OL", "open": beyond what the meter shows */
  over: 2,
  /** "same", "ditto" */
  same: 3,
  /** electrical points: one, a pair, or a list of either */
  points: 4,
  label: 5,
  /** "compressor 2", "RTU-1" */
  subject: 6,
  /** "to ground" without a point before it */
  ground: 7,
  /** a unit that stands alone: "amps", "meg" */
  unit: 8,
  word: 9,
  sign: 10,
  line: 11,
  code: 12,
} as const;
export type ItemKind = (typeof itemKind)[keyof typeof itemKind];

export interface Item {
  readonly kind: ItemKind;
  readonly from: number;
  to: number;
  readonly text: string;
  /** bits of `role` */
  readonly roles: number;
  readonly glued: boolean;
  readonly apostrophe: boolean;
  readonly label: Label | undefined;
  readonly signs: readonly number[] | undefined;
  /** where the phrase that the signs come from ends */
  readonly signsTo: number;
  readonly subject: string | undefined;
  points: readonly (readonly string[])[] | undefined;
  // a number's own
  value: number;
  high: number;
  relation: Relation;
  series: readonly number[] | undefined;
  unit: Unit | undefined;
  heard: boolean;
  unitFrom: number;
  numberTo: number;
  readonly spoken: boolean;
  readonly loose: boolean;
  readonly colon: boolean;
  readonly fraction: boolean;
  readonly tail: number;
  /** the rule that took it, and the statement or reading it went to */
  owner: string | undefined;
}
