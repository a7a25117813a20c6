import { existsSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { z } from "zod";
import type { Reading } from "../src/model.ts";
import { startContext } from "../src/read/context.ts";
import { readNumber } from "../src/read/numbers.ts";
import { read } from "../src/read/read.ts";
import { atHand } from "./support/at-hand.ts";

/** Other parsers' own cases stand beside the project, never in it. */
const folder = new URL("../../shared/peers/", import.meta.url);

const NumberCase = z.object({ phrase: z.string(), value: z.number() });
const QuantityCase = z.object({ text: z.string(), value: z.number(), unit: z.string() });

function linesOf(file: string): unknown[] {
  return readFileSync(new URL(file, folder), "utf8")
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line));
}

/** Their unit in ours: canonical unit, factor, offset. */
const units: Readonly<Record<string, readonly [unit: string, factor: number, offset?: number]>> = {
  V: ["V", 1],
  kV: ["V", 1e3],
  mV: ["V", 1e-3],
  A: ["A", 1],
  mA: ["A", 1e-3],
  Ohm: ["Ohm", 1],
  kOhm: ["Ohm", 1e3],
  MOhm: ["Ohm", 1e6],
  mOhm: ["Ohm", 1e-3],
  uOhm: ["Ohm", 1e-6],
  Cel: ["Cel", 1],
  "[degF]": ["Cel", 1 / 1.8, -32 / 1.8],
  K: ["Cel", 1, -273.15],
  bar: ["Pa", 1e5],
  mbar: ["Pa", 100],
  Pa: ["Pa", 1],
  kPa: ["Pa", 1e3],
  MPa: ["Pa", 1e6],
  GPa: ["Pa", 1e9],
  atm: ["Pa", 101_325],
  "[in_i'H2O]": ["Pa", 249.08891],
  kg: ["kg", 1],
  g: ["kg", 1e-3],
  mg: ["kg", 1e-6],
  ug: ["kg", 1e-9],
  t: ["kg", 1000],
  "[lb_av]": ["kg", 0.45359237],
  "[oz_av]": ["kg", 0.028349523125],
  Hz: ["Hz", 1],
  kHz: ["Hz", 1e3],
  MHz: ["Hz", 1e6],
  W: ["W", 1],
  kW: ["W", 1e3],
  MW: ["W", 1e6],
  mW: ["W", 1e-3],
  "[HP]": ["W", 745.69987158],
  F: ["F", 1],
  mF: ["F", 1e-3],
  uF: ["F", 1e-6],
  nF: ["F", 1e-9],
  pF: ["F", 1e-12],
  "{rev}/min": ["1/min", 1],
  "[ppm]": ["ppm", 1],
};

function near(got: unknown, want: number): boolean {
  return (
    typeof got === "number" &&
    Math.abs(got - want) <= 1e-6 * Math.max(Math.abs(want), 1e-12) + 1e-15
  );
}

function holds(reading: Reading, unit: string, want: number): boolean {
  const same = reading.unit === unit || (unit === "Cel" && reading.unit === "K");
  return (
    same &&
    [reading.value, reading.high, ...(reading.series ?? [])].some((value) => near(value, want))
  );
}

if (atHand("peers", existsSync(new URL("peer-numbers.jsonl", folder)))) {
  test("other parsers' numbers are read, 98 of 100 or better", () => {
    const cases = linesOf("peer-numbers.jsonl").map((line) => NumberCase.parse(line));
    const good = cases.filter(
      ({ phrase, value }) =>
        near(readNumber(phrase), value) ||
        Math.abs((readNumber(phrase) ?? Number.NaN) - value) < 1e-9,
    );
    console.info(`peers' numbers: ${good.length} of ${cases.length}`);
    expect(good.length / cases.length).toBeGreaterThanOrEqual(0.98);
  });

  test("other parsers' quantities of our kinds are read as well as they were", () => {
    const cases = linesOf("peer-quantities.jsonl")
      .map((line) => QuantityCase.parse(line))
      .filter(({ unit }) => units[unit] !== undefined);
    const context = startContext("si");
    const good = cases.filter(({ text, value, unit }) => {
      const [ours = "", factor = 1, offset = 0] = units[unit] ?? [];
      return read(text, context).readings.some((reading) =>
        holds(reading, ours, value * factor + offset),
      );
    });
    console.info(`peers' quantities of our kinds, times apart: ${good.length} of ${cases.length}`);
    expect(good.length / cases.length).toBeGreaterThanOrEqual(0.93);
  });
}
