import { expect, test } from "vitest";
import { startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";
import { randomFrom } from "./support/random.ts";
import { say } from "./support/spoken.ts";

/** Rows of each kind, and the share that may be read otherwise, and silently so. */
const DRAWS = 12;
const MOST_OTHERWISE = 0.03;
const MOST_SILENT = 0.02;

type Row = (values: readonly string[]) => string;
const named =
  (...names: readonly string[]): Row =>
  (values) =>
    values.map((value, i) => `${names[i]} ${value}`).join(" ");
const commas =
  (row: Row): Row =>
  (values) =>
    row(values.map((value, i) => (i < values.length - 1 ? `${value},` : value)));

/** How three legs are told one after the other; common practice, no source. */
const ofLegs: readonly Row[] = [
  named("l one", "l two", "l three"),
  named("lead one", "lead two", "lead three"),
  commas(named("lead one", "lead two", "lead three")),
  named("phase a", "phase b", "phase c"),
  named("u", "v", "w"),
  commas(named("u", "v", "w")),
  named("t one", "t two", "t three"),
  named("one's", "two's", "three's"),
  commas(named("one", "two", "three")),
  named("leg one", "leg two", "leg three"),
  ([a, b, c]) => `${a} on one ${b} on two and ${c} on three`,
  ([a, b, c]) => `${a}, ${b} and ${c}`,
];
const ofPairs: readonly Row[] = [
  named("u to v", "v to w", "u to w"),
  named("l one to l two", "l two to l three", "l one to l three"),
  named("l one l two", "l two l three", "l one l three"),
  named("t one t two", "t two t three", "t one t three"),
  named("a to b", "b to c", "a to c"),
  ([a, b, c]) => `${a}, ${b} and ${c}`,
];

const typedLegs: readonly Row[] = [
  named("L1", "L2", "L3"),
  named("L1:", "L2:", "L3:"),
  commas(named("L1", "L2", "L3")),
  named("T1", "T2", "T3"),
  named("A", "B", "C"),
  commas(named("A:", "B:", "C:")),
  commas(named("lead 1", "lead 2", "lead 3")),
  commas(named("phase A", "phase B", "phase C")),
  named("#1", "#2", "#3"),
  named("1)", "2)", "3)"),
  (values) => values.map((value, i) => `\nL${i + 1} ${value}`).join(""),
  (values) => values.map((value, i) => `${value} on L${i + 1}`).join(", "),
  (values) => values.join("/"),
  (values) => values.join(" "),
  (values) => values.join(", "),
];
const typedPairs: readonly Row[] = [
  named("L1-L2", "L2-L3", "L1-L3"),
  commas(named("L1-L2:", "L2-L3:", "L1-L3:")),
  named("AB", "BC", "AC"),
  commas(named("A-B", "B-C", "A-C")),
  named("1-2", "2-3", "1-3"),
  named("U-V", "V-W", "U-W"),
  (values) => values.join("/"),
  (values) => values.join(" "),
];

interface Kind {
  readonly quantity: string;
  readonly heads: readonly string[];
  readonly tails: readonly string[];
  readonly rows: readonly Row[];
  readonly typed: readonly Row[];
  /** of a figure to the reading's own unit */
  readonly scale: number;
  readonly draw: (random: () => number) => number;
}

const tenth = (value: number): number => Math.round(value * 10) / 10;
const kinds: readonly Kind[] = [
  {
    quantity: "current",
    heads: ["amps", "running amps", "comp one amps"],
    tails: ["", " amps"],
    rows: ofLegs,
    typed: typedLegs,
    scale: 1,
    draw: (random) => tenth(5 + random() * 40),
  },
  {
    quantity: "voltage",
    heads: ["volts", "line volts", "supply volts"],
    tails: ["", " volts"],
    rows: ofPairs,
    typed: typedPairs,
    scale: 1,
    draw: (random) => Math.round(455 + random() * 30),
  },
  {
    quantity: "insulation_resistance",
    heads: [
      "megged at five hundred",
      "megger at five hundred volts",
      "comp two megged at five hundred",
    ],
    tails: ["", " meg", " megohms"],
    rows: ofLegs,
    typed: typedLegs,
    scale: 1e6,
    draw: (random) => Math.round(30 + random() * 900),
  },
  {
    quantity: "winding_resistance",
    heads: ["windings", "winding ohms", "comp two windings", "windings comp one"],
    tails: ["", " ohms"],
    rows: ofPairs,
    typed: typedPairs,
    scale: 1,
    draw: (random) => Math.round((0.3 + random() * 0.6) * 100) / 100,
  },
];

interface Said {
  readonly text: string;
  readonly quantity: string;
  readonly values: readonly number[];
}

/** Three like values: the first drawn, the others within some percent of it. */
function threeLike(kind: Kind, random: () => number): readonly number[] {
  const first = kind.draw(random);
  const like = (): number => {
    const value = first * (0.98 + random() * 0.04);
    return first < 5
      ? Math.round(value * 100) / 100
      : first < 60
        ? tenth(value)
        : Math.round(value);
  };
  return [first, like(), like()];
}

function rows(random: () => number, how: "rows" | "typed"): readonly Said[] {
  return kinds.flatMap((kind) =>
    kind[how].flatMap((row) =>
      Array.from({ length: DRAWS }, (): Said => {
        const pick = <T>(list: readonly [T, ...T[]] | readonly T[]): T | undefined =>
          list[Math.floor(random() * list.length)];
        const values = threeLike(kind, random);
        const style = how === "typed" ? undefined : Math.floor(random() * 3);
        const said = row(values.map((value) => say(value, style)));
        const text = `${pick(kind.heads) ?? ""} ${said}${pick(kind.tails) ?? ""}`;
        return { text, quantity: kind.quantity, values: values.map((one) => one * kind.scale) };
      }),
    ),
  );
}

function otherwise({ text, quantity, values }: Said): "no" | "yes" | "silently" {
  const { readings, ask } = read(text, startContext("us", undefined));
  const same =
    readings.length === values.length &&
    readings.every(
      ({ quantity: got, value }, i) =>
        got === quantity &&
        typeof value === "number" &&
        Math.abs(value - (values[i] ?? 0)) <= 1e-6 * Math.abs(values[i] ?? 0),
    );
  if (same && ask.length === 0) return "no";
  return readings.length > 0 && ask.length === 0 ? "silently" : "yes";
}

test.each([
  { how: "rows" as const, name: "in words" },
  { how: "typed" as const, name: "in figures" },
])("three values $name are the three that were told, however their legs are named", ({ how }) => {
  const seed = Number(process.env.READBACK_SEED ?? 31);
  const all = rows(randomFrom(seed), how).map((said) => ({ ...said, is: otherwise(said) }));
  const wrong = all.filter(({ is }) => is !== "no");
  const silent = wrong.filter(({ is }) => is === "silently");
  console.info(
    [
      `seed ${seed}: ${all.length} rows, ${wrong.length} otherwise than told, ${silent.length} of them silently`,
      ...wrong.map(({ text, is }) => `  (${is}) ${text}`),
    ].join("\n"),
  );
  expect(wrong.length).toBeLessThanOrEqual(all.length * MOST_OTHERWISE);
  expect(silent.length).toBeLessThanOrEqual(all.length * MOST_SILENT);
});
