import { expect, test } from "vitest";
import { startContext } from "../src/read/context.ts";
import { isKnown } from "../src/read/odds/odds.ts";
import { understand } from "../src/read/read.ts";

/** Numbers that a rule makes into what such numbers have never been: what they have been stands against it. */
const contradicted: readonly (readonly [text: string, said: string])[] = [
  ["hd was 465 w one fan, 335 w both", "pressure"],
  ["clean coil 14.6 bar / dirty 21.3", "pressure"],
  ["low volt 27.1 at board 25.9 w coil pulled in", "voltage"],
];

test.each(contradicted)("%s", (text, quantity) => {
  const { note, understood } = understand(text, startContext("us"));
  expect(note.trace.filter((line) => line.startsWith("<odds>")).length).toBeGreaterThan(0);
  expect([...new Set(understood.readings.map((one) => one.quantity))]).toEqual([quantity]);
});

test("what the labelled notes hardly hold is left to the rules", () => {
  expect(isKnown("power_factor")).toBe(false);
  expect(isKnown("pressure")).toBe(true);
  const { understood } = understand("62 Hz, 14.3 A, 5.9 kW, cos phi 0.92", startContext("si"));
  expect(understood.readings.map((one) => one.quantity)).toContain("power_factor");
});

test("a word right before a number is believed against them", () => {
  const { understood } = understand(
    "comp 1 suction line 41 discharge line 165",
    startContext("us"),
  );
  expect(understood.readings.map((one) => one.quantity)).toEqual(["temperature", "temperature"]);
});
