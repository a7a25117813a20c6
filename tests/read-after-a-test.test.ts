import { expect, test } from "vitest";
import { follow, startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";

const start = startContext("us", "2026-05-12T08:00:00-05:00");
const after = (before: string, text: string) => read(text, follow(start, read(before, start)));
const leads = "comp 1 lead 1 84 lead 2 86 lead 3 91 megohm to ground at 500 V";

test.each([
  [leads, "suction 119 psi 51 F", ["pressure 119", "temperature 51"]],
  [leads, "suction 119, 51 F", ["pressure 119", "temperature 51"]],
  [
    leads,
    "suction 119 psi 51 F, liquid 338 psi 91 F, outdoor air 95 F",
    ["pressure 119", "temperature 51", "pressure 338", "temperature 91", "temperature 95"],
  ],
  ["windings T1-T2 0.74 ohm", "L1-L2 471 V 51 F", ["voltage 471", "temperature 51"]],
])("after %s the gas side keeps its temperatures: %s", (before, text, wanted) => {
  const { readings } = after(before, text);
  expect(readings.map(({ quantity, figure }) => `${quantity} ${figure?.number}`)).toEqual(wanted);
});

test.each(["lead 2 81 meg 92 F", "lead 2 81, 92 F", "lead 2 OL 92 F", "lead 2 81, shell 92 F"])(
  "the test itself goes on with its temperature: %s",
  (text) => {
    const { readings } = after(leads, text);
    expect(readings).toHaveLength(1);
    expect(readings[0]?.temperature).toBeCloseTo(33.33, 2);
  },
);
