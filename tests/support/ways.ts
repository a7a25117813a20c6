import { say } from "./spoken.ts";

/** Ways of attaching values to what they are of, each tried on every kind of reading. */

/** A name of what is measured, typed and spoken, and what the reading must say of it. */
interface Name {
  readonly typed: string;
  readonly spoken: string;
  readonly points?: readonly string[];
  readonly at?: string;
  readonly subject?: string;
  readonly quantity?: string;
}

interface Family {
  readonly quantity: string;
  /** a value, and one near it */
  readonly first: (random: Random) => number;
  readonly step: number;
  readonly typedUnits: readonly string[];
  readonly spokenUnits: readonly string[];
  readonly toCanonical: (value: number) => number;
  readonly names: readonly Name[];
}

type Random = () => number;

function pick<T>(random: Random, list: readonly T[]): T {
  const found = list[Math.floor(random() * list.length)];
  if (found === undefined) throw new Error("nothing to pick from");
  return found;
}

const tenths = (from: number, to: number) => (random: Random) =>
  Math.round(10 * (from + random() * (to - from))) / 10;
const wholes = (from: number, to: number) => (random: Random) =>
  Math.round(from + random() * (to - from));
const ground = (points: readonly [string, string, string], spoken: string): Name[] =>
  points.map((typed, at) => ({
    typed,
    spoken: `${spoken} ${["one", "two", "three"][at]}`,
    points: [typed, "ground"],
  }));
const pairs = (typed: readonly string[], spoken: readonly string[]): Name[] =>
  typed.map((pair, at) => ({ typed: pair, spoken: spoken[at] ?? pair, points: pair.split("-") }));
const machines = (typed: string, spoken: string): Name[] =>
  [1, 2, 3].map((n) => ({
    typed: `${typed} ${n}`,
    spoken: `${spoken} ${["one", "two", "three"][n - 1]}`,
    subject: `${spoken} ${n}`,
  }));
const places = (...list: (readonly [string, string])[]): Name[] =>
  list.map(([typed, at]) => ({ typed, spoken: typed, at }));

const psi = 6894.757293168361;
const fahrenheit = (value: number): number => (value - 32) / 1.8;
const amps = { quantity: "current", step: 0.3, spokenUnits: [" amps"], toCanonical: Number };
const warm = {
  quantity: "temperature",
  step: 2,
  typedUnits: ["F", " deg"],
  spokenUnits: [" degrees"],
  toCanonical: fahrenheit,
};

const families: readonly Family[] = [
  {
    quantity: "insulation_resistance",
    first: wholes(60, 900),
    step: 7,
    typedUnits: ["meg", " meg", "M", " Mohm"],
    spokenUnits: [" meg", " megs", " megohms"],
    toCanonical: (value) => value * 1e6,
    names: ground(["T1", "T2", "T3"], "T"),
  },
  {
    quantity: "voltage",
    first: wholes(205, 485),
    step: 2,
    typedUnits: ["v", " v", "V", " volts"],
    spokenUnits: [" volts"],
    toCanonical: Number,
    names: pairs(
      ["L1-L2", "L2-L3", "L1-L3"],
      ["L one to L two", "L two to L three", "L one to L three"],
    ),
  },
  {
    ...amps,
    first: tenths(8, 60),
    typedUnits: ["a", " a", "A", " amps"],
    names: ["L1", "L2", "L3"].map((typed, at) => ({
      typed,
      spoken: `leg ${["one", "two", "three"][at]}`,
      points: [typed],
    })),
  },
  {
    ...amps,
    first: tenths(8, 40),
    typedUnits: ["a", " a", " amps"],
    names: machines("comp", "compressor"),
  },
  { ...amps, first: tenths(2, 6), typedUnits: ["a", " amps"], names: machines("fan", "fan") },
  {
    quantity: "winding_resistance",
    first: tenths(0.6, 5),
    step: 0.2,
    typedUnits: [" ohm", " ohms", "ohm"],
    spokenUnits: [" ohms"],
    toCanonical: Number,
    names: pairs(["C-S", "C-R", "R-S"], ["common to start", "common to run", "run to start"]),
  },
  {
    quantity: "diode_drop",
    first: (random) => wholes(38, 50)(random) / 100,
    step: 0.02,
    typedUnits: ["v"],
    spokenUnits: [" volts"],
    toCanonical: Number,
    names: ["U", "V", "W"].map((letter) => ({
      typed: `${letter} to +`,
      spoken: `${letter} to plus`,
      points: [letter, "DC+"],
    })),
  },
  {
    ...warm,
    first: wholes(34, 70),
    names: places(
      ["return air", "return_air"],
      ["supply air", "supply_air"],
      ["outdoor", "outdoor_air"],
    ),
  },
  {
    ...warm,
    first: wholes(66, 88),
    names: ["room 204", "room 206", "room 210"].map((typed) => ({ typed, spoken: typed })),
  },
  {
    quantity: "pressure",
    first: wholes(60, 420),
    step: 5,
    typedUnits: [" psi", "psi", "#"],
    spokenUnits: [" psi", " pounds"],
    toCanonical: (value) => value * psi,
    names: places(["low side", "suction"], ["high side", "discharge"]),
  },
  {
    quantity: "superheat",
    first: wholes(5, 28),
    step: 2,
    typedUnits: ["F", " deg"],
    spokenUnits: [" degrees"],
    toCanonical: (value) => value / 1.8,
    names: [
      { typed: "sh", spoken: "superheat" },
      { typed: "sc", spoken: "subcool", quantity: "subcooling" },
    ],
  },
  {
    quantity: "capacitance",
    first: tenths(5, 60),
    step: 0.6,
    typedUnits: ["uf", " uF", " mfd"],
    spokenUnits: [" microfarads", " mics"],
    toCanonical: (value) => value * 1e-6,
    names: ["herm", "fan side"].map((typed) => ({ typed, spoken: typed })),
  },
];

/** What one reading must be. */
export interface Wanted {
  readonly quantity: string;
  readonly relation: string;
  readonly value: number;
  readonly high?: number;
  readonly name: Name | undefined;
  readonly corrects?: true;
}

export interface SaidWay {
  readonly way: string;
  readonly before: readonly string[];
  readonly text: string;
  readonly want: readonly Wanted[];
}

/** Three names with their values, said in one way. */
interface Scene {
  readonly names: readonly string[];
  readonly values: readonly string[];
  readonly unit: string;
  readonly and: string;
  readonly random: Random;
}

/** A way of saying it: the words before this message, this message, and which value is of which name (-1 of none). */
interface Way {
  readonly name: string;
  readonly least: 1 | 2 | 3;
  readonly only?: "points" | "subject";
  readonly say: (scene: Scene) => string | readonly [string, string];
  readonly want: readonly (readonly [name: number, value: number])[];
  readonly relation?: string;
  readonly corrects?: true;
}

const all3 = [0, 1, 2].map((at) => [at, at] as const);
const first = ({ names: [a], values: [x], unit }: Scene): string => `${a} ${x}${unit}`;

const ways: readonly Way[] = [
  {
    name: "each with its unit",
    least: 1,
    say: ({ names, values, unit, and }) =>
      names.map((name, at) => `${name} ${values[at]}${unit}`).join(and),
    want: all3,
  },
  {
    name: "the unit at the end",
    least: 1,
    say: ({ names, values, unit, and }) =>
      names.map((name, at) => `${name} ${values[at]}`).join(and) + unit,
    want: all3,
  },
  {
    name: "the unit with the first",
    least: 1,
    say: ({ names, values, unit, and }) =>
      names.map((name, at) => `${name} ${values[at]}${at === 0 ? unit : ""}`).join(and),
    want: all3,
  },
  {
    name: "a value on a name",
    least: 1,
    say: ({ names, values, unit, and }) =>
      names.map((name, at) => `${values[at]}${unit} on ${name}`).join(and),
    want: all3,
  },
  {
    name: "same on",
    least: 3,
    say: (scene) =>
      `${first(scene)} ${pick(scene.random, ["same on", "same for", "same with"])} ${scene.names[1]} and ${scene.names[2]}`,
    want: [
      [0, 0],
      [1, 0],
      [2, 0],
    ],
  },
  {
    name: "is the same",
    least: 3,
    say: (scene) =>
      `${first(scene)}, ${scene.names[1]} ${pick(scene.random, ["same", "is the same"])}, ${scene.names[2]} ${scene.values[2]}`,
    want: [
      [0, 0],
      [1, 0],
      [2, 2],
    ],
  },
  {
    name: "both",
    least: 3,
    say: (scene) =>
      `${first(scene)}, ${scene.names[1]} and ${scene.names[2]} ${pick(scene.random, ["both ", "are both ", ""])}${scene.values[1]}`,
    want: [
      [0, 0],
      [1, 1],
      [2, 1],
    ],
  },
  {
    name: "the other two",
    least: 3,
    only: "points",
    say: (scene) =>
      `${first(scene)} ${pick(scene.random, ["and the other two", "other two", "the other two are"])} ${scene.values[1]}`,
    want: [
      [0, 0],
      [-1, 1],
      [-1, 1],
    ],
  },
  {
    name: "the next of the job",
    least: 3,
    say: (scene) => [
      first(scene),
      `${scene.names[1]}${pick(scene.random, [" ", " is ", "'s ", " comes in at "])}${scene.values[1]}`,
    ],
    want: [[1, 1]],
  },
  {
    name: "the same again",
    least: 3,
    say: (scene) => [
      first(scene),
      pick(scene.random, [
        `same on ${scene.names[1]}`,
        `${scene.names[1]} is the same`,
        `${scene.names[1]} ditto`,
      ]),
    ],
    want: [[1, 0]],
  },
  {
    name: "next one",
    least: 3,
    say: (scene) => [
      first(scene),
      `${pick(scene.random, ["next one", "second one", "next one is"])} ${scene.values[1]}`,
    ],
    want: [[-1, 1]],
  },
  {
    name: "a slip",
    least: 1,
    say: (scene) => [
      first(scene),
      `${pick(scene.random, ["make that", "sorry", "no,", "meant", "correction", "oops"])} ${scene.values[1]}`,
    ],
    want: [[0, 1]],
    corrects: true,
  },
  {
    name: "taken back at once",
    least: 1,
    say: ({ names: [a], values: [x, y], unit, random }) =>
      `${a} ${x} ${pick(random, ["no", "no wait", "scratch that", "I mean", "make that", "actually"])} ${y}${unit}`,
    want: [[0, 1]],
  },
  ...(
    [
      ["~", ["about", "around", "roughly", "call it", "maybe"]],
      [">", ["over", "above", "more than"]],
      ["<", ["under", "below", "less than"]],
    ] as const
  ).map(
    ([relation, words]): Way => ({
      name: words[0],
      least: 1,
      say: ({ names: [a], values: [x], unit, random }) => `${a} ${pick(random, words)} ${x}${unit}`,
      want: [[0, 0]],
      relation,
    }),
  ),
  {
    name: "with talk around it",
    least: 1,
    say: (scene) =>
      `${pick(scene.random, ["ok so ", "yeah ", "got here 8:10, ", "quick update: "])}${first(scene)}${pick(scene.random, [", that's low", " before it cut out", ", call me at 555 0134", ", ordering part 4471-22", ", will recheck in 20 minutes"])}`,
    want: [[0, 0]],
  },
];

/** Each way with each family once, typed or spoken. */
export function saidWays(random: Random): SaidWay[] {
  const out: SaidWay[] = [];
  for (const way of ways)
    for (const family of families) {
      if (way.least > family.names.length) continue;
      if (way.only !== undefined && family.names[0]?.[way.only] === undefined) continue;
      const style = Math.floor(random() * 3);
      const spoken = random() < 0.5;
      const base = family.first(random);
      const values = [0, 1, 2].map((n) => Number((base + n * family.step).toFixed(2)));
      const said = way.say({
        names: family.names.map((name) => (spoken ? name.spoken : name.typed)),
        values: values.map((value) => say(value, spoken ? style : undefined)),
        unit: pick(random, spoken ? family.spokenUnits : family.typedUnits),
        and: spoken ? pick(random, [" ", " and "]) : pick(random, [", ", " "]),
        random,
      });
      const [before, text] = typeof said === "string" ? [[], said] : [[said[0]], said[1]];
      const want = way.want
        .filter(([name]) => name < family.names.length)
        .map(([name, value]) => ({
          quantity: family.names[name]?.quantity ?? family.quantity,
          relation: way.relation ?? "=",
          value: family.toCanonical(values[value] ?? Number.NaN),
          name: family.names[name],
          ...(way.corrects ? { corrects: way.corrects } : {}),
        }));
      out.push({ way: way.name, before, text, want });
    }
  return out;
}
