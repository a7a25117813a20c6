import { test } from "vitest";
import { expectAsMeant } from "./support/drawn-checks.ts";
import { ofFahrenheit, ofPsi, type Want } from "./support/drawn-notes.ts";

/** Draws, and the share that may be read otherwise, and silently so. */
const DRAWS = 250;
const MOST_OTHERWISE = 0.09;
const MOST_SILENT = 0.055;

type Said = readonly [text: string, values: readonly Want[]];

/** One of a list, and a figure between two. */
interface Draw {
  readonly pick: <T>(list: readonly T[]) => T;
  readonly figure: (low: number, high: number, digits?: number) => number;
}

function drawFrom(random: () => number): Draw {
  return {
    pick: (list) => {
      const one = list[Math.floor(random() * list.length)];
      if (one === undefined) throw new Error("nothing to draw from");
      return one;
    },
    figure: (low, high, digits = 0) => Number((low + random() * (high - low)).toFixed(digits)),
  };
}

const line = (at: string, degrees: number): Want => ({
  quantity: "temperature",
  value: ofFahrenheit(degrees),
  at,
});

/** What is told of one circuit or compressor; common practice, no source. */
const ofMachine: readonly ((draw: Draw) => Said)[] = [
  ({ pick, figure }) => {
    const [low, high] = [figure(90, 140), figure(250, 420)];
    const text = pick([
      `${low}/${high}`,
      `suct ${low} head ${high}`,
      `sp ${low} hp ${high}`,
      `suction ${low} discharge ${high}`,
      `${low} over ${high}`,
    ]);
    return [text, [low, high].map((one) => ({ quantity: "pressure", value: ofPsi(one) }))];
  },
  ({ pick, figure }) => {
    const [heat, cool] = [figure(4, 22), figure(4, 18)];
    const text = pick([
      `sh ${heat} sc ${cool}`,
      `${heat} SH ${cool} SC`,
      `superheat ${heat} subcool ${cool}`,
      `${heat} superheat ${cool} subcooling`,
    ]);
    return [
      text,
      [
        { quantity: "superheat", value: heat / 1.8 },
        { quantity: "subcooling", value: cool / 1.8 },
      ],
    ];
  },
  ({ pick, figure }) => {
    const [gas, liquid] = [figure(40, 64), figure(84, 112)];
    const text = pick([
      `suct line ${gas} liq line ${liquid}`,
      `SLT ${gas} LLT ${liquid}`,
      `suction line ${gas}, liquid line ${liquid}`,
    ]);
    return [text, [line("suction", gas), line("liquid", liquid)]];
  },
  ({ pick, figure }) => {
    const one = figure(9, 24, 1);
    const [a, b, c] = [one, Number((one + 0.2).toFixed(1)), Number((one - 0.1).toFixed(1))];
    const text = pick([
      `amps ${a}/${b}/${c}`,
      `${a}/${b}/${c} amps`,
      `amps L1 ${a} L2 ${b} L3 ${c}`,
      `L1 ${a}A L2 ${b}A L3 ${c}A`,
    ]);
    return [text, [a, b, c].map((value) => ({ quantity: "current", value }))];
  },
  ({ pick, figure }) => {
    const one = figure(0.4, 2.8, 2);
    const [a, b] = [one, Number((one + 0.01).toFixed(2))];
    const text = pick([
      `windings ${a}/${b}/${a}`,
      `windings ${a} ${b} ${a}`,
      `${a}/${b}/${a} ohms`,
    ]);
    return [text, [a, b, a].map((value) => ({ quantity: "winding_resistance", value }))];
  },
];

/** What is told of the whole unit. */
const ofUnit: readonly ((draw: Draw) => Said)[] = [
  ({ pick, figure }) => {
    const [supply, back] = [figure(50, 62), figure(68, 80)];
    const text = pick([
      `sup ${supply} ret ${back}`,
      `SAT ${supply} RAT ${back}`,
      `return ${back} supply ${supply}`,
    ]);
    return [text, [line("supply_air", supply), line("return_air", back)]];
  },
  ({ pick, figure }) => {
    const degrees = figure(70, 104);
    const text = pick([`OAT ${degrees}`, `outside ${degrees}`, `ambient ${degrees}`]);
    return [text, [line("outdoor_air", degrees)]];
  },
  ({ pick, figure }) => {
    const inches = figure(0.3, 1.1, 2);
    const text = pick([`static ${inches}`, `TESP ${inches}`]);
    return [text, [{ quantity: "static_pressure", value: inches * 249.08891 }]];
  },
];

const pairs: readonly (readonly [first: string, second: string])[] = [
  ["comp 1", "comp 2"],
  ["ckt 1", "ckt 2"],
  ["cir A", "cir B"],
  ["compressor 1", "compressor 2"],
];

interface Wanted extends Want {
  /** of which of the two machines, none of the unit's own */
  readonly machine?: string;
}

function summary(random: () => number): { readonly text: string; readonly wanted: Wanted[] } {
  const draw = drawFrom(random);
  const some = <T>(list: readonly T[], least: number, most: number): readonly T[] =>
    list
      .map((one) => ({ one, order: random() }))
      .sort((a, b) => a.order - b.order)
      .slice(0, draw.figure(least, most))
      .map(({ one }) => one);
  const [told, mark, between] = [
    some(ofMachine, 1, 3),
    draw.pick(["", ":", " -"]),
    draw.pick([" ", ", ", "\n"]),
  ];
  const machines = draw.pick(pairs);
  const wanted: Wanted[] = [];
  const parts = machines.map((machine) => {
    const said = told.map((one) => one(draw));
    for (const [, values] of said)
      wanted.push(...values.map((value) => ({ ...value, machine: machine.slice(-1) })));
    return `${machine}${mark} ${said.map(([text]) => text).join(between)}`;
  });
  for (const [text, values] of some(ofUnit, 0, 2).map((one) => one(draw))) {
    parts.push(text);
    wanted.push(...values);
  }
  return { text: parts.join(draw.pick(["\n", ". ", "; "])), wanted };
}

test("what is told of two machines and their unit in one message is told of each of them", () => {
  expectAsMeant({
    name: "summaries",
    units: "us",
    draws: DRAWS,
    mostOtherwise: MOST_OTHERWISE,
    mostSilent: MOST_SILENT,
    draw: summary,
    also: (one, { machine }) => one.subject?.slice(-1) === machine,
  });
});
