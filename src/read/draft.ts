import type { QuantityName } from "../quantities/list.ts";
import type { Unit } from "../quantities/quantity.ts";
import type { Place, Rating } from "../vocabulary.ts";

/** What stands between two values. */
export interface Between {
  readonly roles: number;
  /** nothing but small words */
  readonly bare: boolean;
  /** nothing but ",", "/", "and" */
  readonly list: boolean;
  /** a dash glued to both, or alone between spaces */
  readonly dash: boolean;
  readonly strong: boolean;
  readonly carriers: boolean;
  readonly empty: boolean;
  /** no more than two words that mean nothing here */
  readonly calm: boolean;
}

/** A value on its way to a reading: what was said of it so far. */
export interface Draft {
  /** what stands between it and the value before, once looked at; `gapFrom` is that value's index */
  gap: Between | undefined;
  gapFrom: number;
  /** index of the item that holds the value */
  readonly index: number;
  /** indexes of items before and behind it that speak of it */
  before: number[];
  behind: number[];
  /** items that hold for it though they stand elsewhere: test voltage, temperature */
  shared: number[];
  /** number of the sentence that it stands in */
  sentence: number;
  value: number;
  high: number;
  over: boolean;
  same: boolean;
  zero: boolean;
  unit: Unit | undefined;
  /** the unit as typed, where it is a single letter: G is not g */
  letter: string;
  /** the unit came with the number, not from elsewhere */
  ownUnit: boolean;
  quantity: QuantityName | undefined;
  /** named by a word of its own or by its unit */
  named: QuantityName | undefined;
  hint: QuantityName | undefined;
  place: Place | undefined;
  points: readonly (readonly string[])[] | undefined;
  grounded: boolean;
  subject: string | undefined;
  rating: Rating | undefined;
  plate: boolean;
  state: "start" | "running" | undefined;
  stat: "peak" | "minimum" | "average" | undefined;
  kind: "ac" | "dc" | undefined;
  reference: "gauge" | "absolute" | undefined;
  action: "recovered" | "charged" | undefined;
  /** "charge" before it: a noun where a plate is spoken of */
  chargeNoun: boolean;
  earlier: boolean;
  /** told by what stands on both sides of it, whatever such numbers have been */
  settled: boolean;
  now: boolean;
  component: boolean;
  thing: string | undefined;
  after: number | undefined;
  lasting: number | undefined;
  series: number[] | undefined;
  testVoltage: number | undefined;
  temperature: number | undefined;
  corrects: boolean;
  /** the place in the row that it corrects, where that was told without names */
  nth?: number;
  /** how many readings it stands for: "all three", "both" */
  count: number;
  /** taken back, merged into another, or no reading */
  gone: boolean;
  /** why it is asked about */
  question: string | undefined;
  assumedUnit: boolean;
  assumedQuantity: boolean;
  assumedPoints: boolean;
  assumedTest: boolean;
  measuredAt: string | undefined;
}

export function draft(index: number, value: number): Draft {
  return {
    gap: undefined,
    gapFrom: -1,
    index,
    before: [],
    behind: [],
    shared: [],
    sentence: 0,
    value,
    high: Number.NaN,
    over: false,
    same: false,
    zero: false,
    unit: undefined,
    letter: "",
    ownUnit: false,
    quantity: undefined,
    named: undefined,
    hint: undefined,
    place: undefined,
    points: undefined,
    grounded: false,
    subject: undefined,
    rating: undefined,
    plate: false,
    state: undefined,
    stat: undefined,
    kind: undefined,
    reference: undefined,
    action: undefined,
    chargeNoun: false,
    earlier: false,
    settled: false,
    now: false,
    component: false,
    thing: undefined,
    after: undefined,
    lasting: undefined,
    series: undefined,
    testVoltage: undefined,
    temperature: undefined,
    corrects: false,
    count: 1,
    gone: false,
    question: undefined,
    assumedUnit: false,
    assumedQuantity: false,
    assumedPoints: false,
    assumedTest: false,
    measuredAt: undefined,
  };
}

/** Nothing but its figure was said of it. */
export function isUntold({ unit, named, hint, place, points, rating, over, same }: Draft): boolean {
  const told = [unit, named, hint, place, points, rating].some((one) => one !== undefined);
  return !told && !over && !same;
}
