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
  kind: ItemKind;
  from: number;
  to: number;
  text: string;
  /** bits of `role` */
  roles: number;
  glued: boolean;
  apostrophe: boolean;
  /** its last word ends in "s" */
  plural: boolean;
  label: Label | undefined;
  signs: readonly number[] | undefined;
  /** where the phrase that the signs come from ends */
  signsTo: number;
  subject: string | undefined;
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
  spoken: boolean;
  loose: boolean;
  /** the number of a refrigerant's name: "four ten a" */
  gas: boolean;
  colon: boolean;
  fraction: boolean;
  tail: number;
  /** the rule that took it, and the statement or reading it went to */
  owner: string | undefined;
}

/** Is it its first word alone, and no longer name that begins with it: "low", not "low side"? */
export function isOneWord({ from, to, text }: Item): boolean {
  return to - from <= text.length;
}

/** What the items from one index up to another say, as it is cut. */
export function wordsFrom(items: readonly Item[], from: number, to: number): string {
  return items
    .slice(Math.max(0, from), Math.max(0, to))
    .map(({ text }) => text)
    .join(" ");
}

/** An item with nothing but its place; all items have one shape. */
export function newItem(kind: ItemKind, from: number, to: number, text: string): Item {
  return {
    kind,
    from,
    to,
    text,
    roles: 0,
    glued: false,
    apostrophe: false,
    plural: false,
    label: undefined,
    signs: undefined,
    signsTo: -1,
    subject: undefined,
    points: undefined,
    value: Number.NaN,
    high: Number.NaN,
    relation: "=",
    series: undefined,
    unit: undefined,
    heard: false,
    unitFrom: -1,
    numberTo: -1,
    spoken: false,
    loose: false,
    gas: false,
    colon: false,
    fraction: false,
    tail: 0,
    owner: undefined,
  };
}
