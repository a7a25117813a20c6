import { expect, test } from "vitest";
import { follow, startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";
import { randomFrom } from "./support/random.ts";

/** Draws, and the share that may be read otherwise, and silently so. */
const DRAWS = 600;
const MOST_OTHERWISE = 0.04;
const MOST_SILENT = 0.015;

interface Told {
  readonly before: readonly string[];
  readonly text: string;
  readonly quantity: string;
  readonly values: readonly number[];
  readonly subject?: string;
}

interface Test {
  readonly quantity: string;
  readonly announced: readonly string[];
  readonly ofFirst: string;
  readonly value: readonly [low: number, high: number, digits: number];
  readonly scale: number;
  readonly units: readonly string[];
}

const tests: readonly Test[] = [
  {
    quantity: "insulation_resistance",
    announced: ["megging at 500", "meg test, 500v", "megger on 500 V", "going to meg it at 500"],
    ofFirst: "comp 1 megged at 500",
    value: [60, 300, 0],
    scale: 1e6,
    units: ["", " meg", " megohm"],
  },
  {
    quantity: "current",
    announced: [
      "running amps",
      "checking amps on the comp",
      "comp amps next",
      "amps at full speed",
    ],
    ofFirst: "comp 1 amps",
    value: [9, 27, 1],
    scale: 1,
    units: ["", " A", " amps"],
  },
  {
    quantity: "winding_resistance",
    announced: ["windings next", "ohming the windings", "winding resistance"],
    ofFirst: "comp 1 windings",
    value: [0.4, 2.9, 2],
    scale: 1,
    units: ["", " ohm", " ohms"],
  },
];

const legs: readonly (readonly string[])[] = [
  ["L1", "L2", "L3"],
  ["A", "B", "C"],
  ["U", "V", "W"],
  ["1", "2", "3"],
  ["T1", "T2", "T3"],
  ["lead 1", "lead 2", "lead 3"],
  ["leg 1", "leg 2", "leg 3"],
];

/** How one leg is told in a message of its own; common practice, no source. */
const alone: readonly ((leg: string, value: string) => string)[] = [
  (leg, value) => `${leg} ${value}`,
  (leg, value) => `${leg}: ${value}`,
  (leg, value) => `${leg} is ${value}`,
  (leg, value) => `${leg} reads ${value}`,
  (leg, value) => `ok ${leg} ${value}`,
  (leg, value) => `and ${leg} ${value}`,
];

/** How a row is told at once; common practice, no source. */
const atOnce: readonly ((names: readonly string[], values: readonly string[]) => string)[] = [
  (names, values) => names.map((name, i) => `${name} ${values[i]}`).join(" "),
  (names, values) => names.map((name, i) => `${name} ${values[i]}`).join(", "),
  (_, values) => values.join(" "),
  (_, values) => values.join("/"),
  (_, [a, b, c]) => `${a} ${b} and ${c}`,
];

const turns = ["comp 2", "now comp 2", "on to comp 2", "ok comp 2 now", "next comp", "other comp"];

function drawn(random: () => number): Told {
  const pick = <T>(list: readonly T[]): T => {
    const one = list[Math.floor(random() * list.length)];
    if (one === undefined) throw new Error("nothing to draw from");
    return one;
  };
  const { quantity, announced, ofFirst, value, scale, units } = pick(tests);
  const [low, high, digits] = value;
  const figure = (): string => (low + random() * (high - low)).toFixed(digits);
  const [names, unit] = [pick(legs), pick(units)];
  const told = [figure(), figure(), figure()];
  const values = told.map((one) => Number(one) * scale);
  const way = random();
  if (way < 0.4) {
    // message by message, up to the one that is looked at
    const say = pick(alone);
    const rows = names.map((name, i) => say(name, `${told[i]}${unit}`));
    const at = Math.floor(random() * 3);
    const before = [pick(announced), ...rows.slice(0, at)];
    return { before, text: rows[at] ?? "", quantity, values: values.slice(at, at + 1) };
  }
  const say = pick(atOnce);
  if (way < 0.6)
    return { before: [pick(announced)], text: `${say(names, told)}${unit}`, quantity, values };
  const first = `${ofFirst} ${say(names, [figure(), figure(), figure()])}`;
  const [turn, row] = [pick(turns), say(names, told)];
  const [before, text] = way < 0.8 ? [[first, turn], row] : [[first], `${turn} ${row}`];
  return { before, text, quantity, values, subject: "compressor 2" };
}

test("what a message turns to, and a test in hand, hold for the messages behind", () => {
  const seed = Number(process.env.READBACK_SEED ?? Date.now() % 100000);
  const random = randomFrom(seed);
  const otherwise: string[] = [];
  const silent: string[] = [];
  for (let draw = 0; draw < DRAWS; draw++) {
    const { before, text, quantity, values, subject } = drawn(random);
    let context = startContext("us");
    for (const said of before) context = follow(context, read(said, context));
    const { readings, ask, unread } = read(text, context);
    const same =
      readings.length === values.length &&
      readings.every(
        (one, i) =>
          one.quantity === quantity &&
          Math.abs(Number(one.value) / (values[i] ?? 0) - 1) < 1e-6 &&
          (subject === undefined || one.subject === subject),
      );
    if (same) continue;
    const line = `${before.join(" | ")} || ${text}`;
    otherwise.push(line);
    if (ask.length === 0 && unread.length === 0) silent.push(line);
  }
  console.log(
    `seed ${seed}: of ${DRAWS} turns ${otherwise.length} otherwise, ${silent.length} silently`,
  );
  expect(silent.length, silent.slice(0, 9).join("\n")).toBeLessThanOrEqual(DRAWS * MOST_SILENT);
  expect(otherwise.length, otherwise.slice(0, 9).join("\n")).toBeLessThanOrEqual(
    DRAWS * MOST_OTHERWISE,
  );
});
