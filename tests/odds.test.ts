import { expect, test } from "vitest";
import { startContext } from "../src/read/context.ts";
import { likeliest, likelihood, oddsOf } from "../src/read/odds/odds.ts";
import { kinds } from "../src/read/odds/table.ts";
import { look, traits } from "../src/read/odds/traits.ts";
import { read, understand } from "../src/read/read.ts";

const us = startContext("us");

/** What was read, as "quantity figure unit place". */
function said(text: string): readonly string[] {
  return read(text, us).readings.map(({ quantity, figure, at = "" }) =>
    `${quantity} ${figure.number} ${figure.unit} ${at}`.trim(),
  );
}

test("a number that no rule knows is what such numbers have been", () => {
  expect(said("su 131 di 344 sh 10 sc 12")).toEqual([
    "pressure 131 psi suction",
    "pressure 344 psi discharge",
    "superheat 10 F",
    "subcooling 12 F",
  ]);
  expect(said("blower 3.8a on hi 3.1 on med lo")).toEqual(["current 3.8 A", "current 3.1 A"]);
  expect(said("hd 402 b4 hose, 340 aftr")).toEqual([
    "pressure 402 psi discharge",
    "pressure 340 psi discharge",
  ]);
});

test("a number that never was a measurement among such words is none", () => {
  expect(said("what size fuse do i need for a 40 amp unit, rtu 3")).toEqual([]);
  expect(said("found 3 blown fuses at the disco")).toEqual([]);
});

test("a place is filled in where such numbers have always had it", () => {
  expect(said("suct line 51F @ 124psi so sh 9")).toEqual([
    "temperature 51 F suction",
    "pressure 124 psi suction",
    "superheat 9 F",
  ]);
});

test("what is measured in two ways at its place, a lone row of figures and a mass are asked", () => {
  for (const text of ["liquid 150", "6.1 6.3 6.0", "put in 4"]) {
    const { readings, ask } = read(text, us);
    expect([text, readings.length, ask.length]).toEqual([text, 0, 1]);
  }
});

test("the odds of a number are shares of one", () => {
  const { items } = understand("comp 2 suct 118 head 342 amps 14.2 12", us).note;
  const looked = look(items, us);
  items.forEach((item, at) => {
    if (Number.isNaN(item.value)) return;
    const odds = oddsOf(looked, at, "^");
    expect(odds.kinds).toHaveLength(kinds.length);
    expect(odds.kinds.reduce((sum, odd) => sum + odd, 0)).toBeCloseTo(1, 9);
    const [quantity, sure] = likeliest(odds);
    expect(likelihood(odds, quantity)).toBeCloseTo(sure, 12);
    expect(traits(looked, at, "^")).toEqual(traits(looked, at, "^"));
  });
});
