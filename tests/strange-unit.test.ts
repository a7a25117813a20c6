import { expect, test } from "vitest";
import { namesAnotherUnit } from "../src/record/strange-unit.ts";

/** What begins with another unit of the kind that is in hand is not filed there unasked. */

const cases: readonly (readonly [text: string, unit: string, another: boolean])[] = [
  ["rtu 5 comp 1 22 amps", "RTU-4", true],
  ["RTU-5 compressor one is drawing twenty two amps", "RTU-4", true],
  ["ok now rtu five, 118 over 342", "RTU-4", true],
  ["hp-4 head 410", "HP-3", true],
  ["rtu 4 comp 1 22 amps", "RTU-4", false],
  ["rtu4 22 amps", "RTU-04", false],
  ["comp 5 22 amps", "RTU-4", false],
  // a pressure, and a figure that no tag has
  ["hp 41 lp 12", "HP-3", false],
  ["hp 410 lp 120", "HP-3", false],
  ["ou 2.5 amps", "OU-3", false],
  // of another in passing
  ["swapped the board with rtu 5", "RTU-4", false],
  ["iu 8 is at 54", "OU-3", false],
  ["rtu four has 24 v", "RTU-4", false],
];

test.each(cases)("%s, on %s: %s", (text, unit, another) => {
  expect(namesAnotherUnit(text, unit)).toBe(another);
});
