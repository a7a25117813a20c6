import { test } from "vitest";
import { expectAsMeant } from "./support/drawn-checks.ts";
import type { Want } from "./support/drawn-notes.ts";

/** Draws, and the share that may be read otherwise, and silently so. */
const DRAWS = 300;
const MOST_OTHERWISE = 0.065;
const MOST_SILENT = 0.045;

type Said = readonly [text: string, values: readonly Want[]];

/** One of a list; a figure between two, and as it is written: with a decimal comma or a point. */
interface Draw {
  readonly pick: <T>(list: readonly T[]) => T;
  readonly figure: (low: number, high: number, digits?: number) => number;
  readonly write: (value: number) => string;
}

function drawFrom(random: () => number): Draw {
  const comma = random() < 0.65;
  return {
    pick: (list) => {
      const one = list[Math.floor(random() * list.length)];
      if (one === undefined) throw new Error("nothing to draw from");
      return one;
    },
    figure: (low, high, digits = 0) => Number((low + random() * (high - low)).toFixed(digits)),
    write: (value) => (comma ? String(value).replace(".", ",") : String(value)),
  };
}

const bar = (value: number, at?: string): Want => ({
  quantity: "pressure",
  value: value * 1e5,
  ...(at === undefined ? {} : { at }),
});
const warm = (value: number, at: string): Want => ({ quantity: "temperature", value, at });

/** Three of one size, as legs and windings have them. */
function row({ figure }: Draw, low: number, high: number, digits: number): readonly number[] {
  const one = figure(low, high, digits);
  const step = 10 ** -digits;
  return [one, one + step, one - step].map((value) => Number(value.toFixed(digits)));
}

/** What a crew in a metric house tells of one machine; common practice, no source. */
const ofMachine: readonly ((draw: Draw) => Said)[] = [
  ({ pick, figure, write }) => {
    const [low, high] = [figure(1.2, 9.5, 1), figure(16, 32, 1)];
    const [a, b] = [write(low), write(high)];
    const text = pick([
      `LP ${a} HP ${b}`,
      `LP ${a} bar, HP ${b} bar`,
      `suction ${a} discharge ${b} bar`,
      `${a}/${b} bar`,
      `${a} / ${b} bar`,
      `low pressure ${a} high pressure ${b}`,
      `Po ${a} Pc ${b}`,
    ]);
    return [text, [bar(low, "suction"), bar(high, "discharge")]];
  },
  ({ pick, figure, write }) => {
    const [heat, cool] = [figure(3, 14, 1), figure(2, 12, 1)];
    const [a, b] = [write(heat), write(cool)];
    const text = pick([
      `SH ${a} SC ${b}`,
      `SH ${a} K, SC ${b} K`,
      `superheat ${a}K subcooling ${b}K`,
      `${a} K SH, ${b} K SC`,
    ]);
    return [
      text,
      [
        { quantity: "superheat", value: heat },
        { quantity: "subcooling", value: cool },
      ],
    ];
  },
  ({ pick, figure, write }) => {
    const [gas, liquid] = [figure(2, 16, 1), figure(24, 44, 1)];
    const [a, b] = [write(gas), write(liquid)];
    const text = pick([
      `suction pipe ${a} liquid pipe ${b}`,
      `suction line ${a} °C liquid line ${b} °C`,
      `gas pipe ${a}, liquid pipe ${b}`,
    ]);
    return [text, [warm(gas, "suction"), warm(liquid, "liquid")]];
  },
  ({ pick, figure }) => {
    const [boils, condenses] = [figure(-28, 2), figure(30, 48)];
    const text = pick([
      `t0 ${boils} tc ${condenses}`,
      `evap ${boils}°C cond ${condenses}°C`,
      `SST ${boils} SCT ${condenses}`,
    ]);
    return [text, [warm(boils, "suction_saturation"), warm(condenses, "discharge_saturation")]];
  },
  (draw) => {
    const legs = row(draw, 3, 29, 1);
    const [a, b, c] = legs.map(draw.write);
    const text = draw.pick([
      `amps ${a}/${b}/${c}`,
      `${a} / ${b} / ${c} A`,
      `L1 ${a} L2 ${b} L3 ${c} A`,
      `U ${a} A, V ${b} A, W ${c} A`,
    ]);
    return [text, legs.map((value) => ({ quantity: "current", value }))];
  },
  (draw) => {
    const pairs = row(draw, 0.4, 2.9, 2);
    const [a, b, c] = pairs.map(draw.write);
    const text = draw.pick([
      `windings ${a} ${b} ${c} ohm`,
      `windings U-V ${a} V-W ${b} W-U ${c}`,
      `U-V ${a} ohm, V-W ${b} ohm, U-W ${c} ohm`,
    ]);
    return [text, pairs.map((value) => ({ quantity: "winding_resistance", value }))];
  },
  ({ pick, figure }) => {
    const [a, b, c] = [figure(20, 700), figure(20, 700), figure(20, 700)];
    const text = pick([
      `insulation U-PE ${a} V-PE ${b} W-PE ${c} Mohm`,
      `insulation ${a}/${b}/${c} Mohm 500 V`,
      `iso ${a} ${b} ${c} MOhm`,
    ]);
    return [
      text,
      [a, b, c].map((value) => ({ quantity: "insulation_resistance", value: value * 1e6 })),
    ];
  },
];

/** What is told of the whole unit. */
const ofUnit: readonly ((draw: Draw) => Said)[] = [
  ({ pick, figure, write }) => {
    const into = figure(9, 16, 1);
    const out = Number((into - figure(3, 6, 1)).toFixed(1));
    const text = pick([
      `water in ${write(into)} out ${write(out)}`,
      `EWT ${write(into)} LWT ${write(out)}`,
      `chilled water in ${write(into)} out ${write(out)}`,
    ]);
    return [text, [warm(into, "water_in"), warm(out, "water_out")]];
  },
  ({ pick, figure }) => {
    const pascals = figure(40, 320);
    const text = pick([`static ${pascals} Pa`, `ESP ${pascals} Pa`, `filter dp ${pascals} Pa`]);
    return [text, [{ quantity: "static_pressure", value: pascals }]];
  },
  ({ pick, figure }) => {
    const flow = figure(24, 98) * 50;
    const text = pick([`airflow ${flow} m3/h`, `air flow ${flow} m³/h`]);
    return [text, [{ quantity: "airflow", value: flow / 3600 }]];
  },
  (draw) => {
    const volts = row(draw, 388, 412, 0);
    const text = draw.pick([`mains ${volts.join(" ")} V`, `${volts.join("/")} V`]);
    return [text, volts.map((value) => ({ quantity: "voltage", value }))];
  },
  ({ pick, figure, write }) => {
    const [kilograms, grams] = [figure(1, 12, 1), figure(5, 90) * 10];
    const recovered = { quantity: "mass", value: kilograms, action: "recovered" };
    const charged = { quantity: "mass", value: grams / 1000, action: "charged" };
    return pick<Said>([
      [`recovered ${write(kilograms)} kg`, [recovered]],
      [`added ${grams} g`, [charged]],
      // what is short of the plate is a difference, nothing that was weighed
      [`recovered ${write(kilograms)} kg, ${grams} g short`, [recovered]],
    ]);
  },
];

/** A message before, and one that goes on with it. */
const turns: readonly ((draw: Draw) => readonly [before: string, said: Said])[] = [
  ({ pick, figure, write }) => {
    const [low, high] = [figure(2, 8, 1), figure(15, 26, 1)];
    const [a, b] = [write(low), write(high)];
    const text = pick([`now ${a} / ${b}`, `LP ${a} HP ${b} now`, `10 min later ${a} / ${b}`]);
    const before = `LP ${write(Number((low * 1.1).toFixed(1)))} HP ${write(Number((high * 0.93).toFixed(1)))}`;
    return [before, [text, [bar(low, "suction"), bar(high, "discharge")]]];
  },
  ({ pick, figure, write }) => {
    const into = figure(9, 16, 1);
    const out = Number((into - figure(3, 6, 1)).toFixed(1));
    const text = pick([
      `in ${write(into)}, out ${write(out)} now`,
      `now in ${write(into)} out ${write(out)}`,
    ]);
    return ["water in 14 out 9", [text, [warm(into, "water_in"), warm(out, "water_out")]]];
  },
  ({ pick, figure, write }) => {
    const vacuum = figure(0.2, 3, 1);
    const text = pick([
      `now ${write(vacuum)}`,
      `after 30 min ${write(vacuum)}`,
      `14:40 ${write(vacuum)}`,
    ]);
    return ["vacuum 2,4 mbar", [text, [{ quantity: "vacuum", value: vacuum * 100 }]]];
  },
  ({ pick, figure, write }) => {
    const high = figure(12, 30, 1);
    const text = pick([`no ${write(high)}`, `${write(high)} sorry`, `HP was ${write(high)}`]);
    return [
      `LP 4,1 HP ${write(Number((high * 1.05).toFixed(1)))}`,
      [text, [bar(high, "discharge")]],
    ];
  },
];

const machines = [
  ["comp 1", "comp 2"],
  ["circuit A", "circuit B"],
  ["", ""],
] as const;

function summary(random: () => number): readonly [before: string, said: Said] {
  const draw = drawFrom(random);
  if (random() < 0.3) return draw.pick(turns)(draw);
  const some = <T>(list: readonly T[], least: number, most: number): readonly T[] =>
    list
      .map((one) => ({ one, order: random() }))
      .sort((a, b) => a.order - b.order)
      .slice(0, draw.figure(least, most))
      .map(({ one }) => one);
  const told = some(ofMachine, 1, 3);
  const names = draw.pick(machines);
  const values: Want[] = [];
  const say = (list: readonly ((draw: Draw) => Said)[]): string[] =>
    list.map((one) => {
      const [text, more] = one(draw);
      values.push(...more);
      return text;
    });
  const parts =
    names[0] === ""
      ? say(told)
      : names.map((name) => `${name}${draw.pick([":", " -", ""])} ${say(told).join(", ")}`);
  parts.push(...say(some(ofUnit, 0, 2)));
  return ["", [parts.join(draw.pick(["\n", ". ", "; "])), values]];
}

test("what a metric crew tells is read as it was meant", () => {
  expectAsMeant({
    name: "metric notes",
    units: "si",
    draws: DRAWS,
    mostOtherwise: MOST_OTHERWISE,
    mostSilent: MOST_SILENT,
    draw: (random) => {
      const [before, [text, wanted]] = summary(random);
      return { before, text, wanted };
    },
    also: (one, { quantity, action }) => quantity !== "mass" || one.action === action,
  });
});
