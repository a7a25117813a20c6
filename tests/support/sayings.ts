import fc from "fast-check";
import { digit, say } from "./spoken.ts";

/** Readings said in many ways: the text and what it must be read as. */
export interface Saying {
  readonly text: string;
  readonly want: readonly {
    readonly quantity: string;
    readonly relation: string;
    readonly value: number | null;
    readonly points?: readonly string[];
    readonly at?: string;
    readonly rating?: string;
  }[];
}

interface Way {
  readonly typed: boolean;
  readonly style: number;
  readonly loud: boolean;
}
const way: fc.Arbitrary<Way> = fc.record({
  typed: fc.boolean(),
  style: fc.integer({ min: 0, max: 2 }),
  loud: fc.boolean(),
});

function number(n: number, { typed, style }: Way): string {
  return say(n, typed ? undefined : style);
}

function dressed(text: string, { typed, loud }: Way): string {
  return typed && loud ? text.toUpperCase() : text;
}

const tenths = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);

const psi = 6894.757293168361;
const fahrenheit = (f: number): number => (f - 32) / 1.8;

/** One pressure or temperature with its place, its unit said or left out. */
const placed: fc.Arbitrary<Saying> = fc
  .tuple(
    way,
    fc.constantFrom(["suction", "suction"], ["head", "discharge"], ["oil pressure", "oil"]),
    fc.integer({ min: 20, max: 420 }),
    fc.constantFrom(" psi", ""),
    fc.constantFrom(" is ", " ", " at "),
  )
  .map(([how, [label = "", at = ""], n, unit, verb]) => ({
    text: dressed(`${label}${verb}${number(n, how)}${unit}`, how),
    want: [{ quantity: "pressure", relation: "=", value: n * psi, at }],
  }));

const warm: fc.Arbitrary<Saying> = fc
  .tuple(
    way,
    fc.constantFrom(
      ["suction line", "suction"],
      ["liquid line", "liquid"],
      ["return air", "return_air"],
      ["supply air", "supply_air"],
      ["outdoor air", "outdoor_air"],
      ["box", "box"],
    ),
    fc.integer({ min: -15, max: 130 }),
    fc.constantFrom(" degrees", ""),
    fc.constantFrom(" is ", " "),
  )
  // "suction line 118" may be its pressure as well, and is asked about
  .map((one): typeof one =>
    one[1][1] === "suction" && one[2] >= 100 ? [one[0], one[1], one[2] - 60, one[3], one[4]] : one,
  )
  // "suction line one" may be that of suction as well
  .filter(([, , n, unit, verb]) => unit !== "" || verb !== " " || n !== 1)
  .map(([how, [label = "", at = ""], n, unit, verb]) => ({
    text: dressed(`${label}${verb}${number(n, how)}${unit}`, how),
    want: [{ quantity: "temperature", relation: "=", value: fahrenheit(n), at }],
  }));

const difference: fc.Arbitrary<Saying> = fc
  .tuple(
    way,
    fc.constantFrom(
      ["superheat", "superheat"],
      ["super heat", "superheat"],
      ["sub cooling", "subcooling"],
      ["subcooling", "subcooling"],
    ),
    tenths(0, 45),
  )
  .map(([how, [label = "", quantity = ""], n]) => ({
    text: dressed(`${label} ${number(n, how)}`, how),
    want: [{ quantity, relation: "=", value: n / 1.8 }],
  }));

const scales = [
  ["meg", 1e6],
  ["megohms", 1e6],
  ["gig", 1e9],
] as const;
const insulation: fc.Arbitrary<Saying> = fc
  .tuple(
    way,
    fc.integer({ min: 1, max: 3 }),
    tenths(1, 900),
    fc.constantFrom(...scales),
    fc.constantFrom(["=", ""], [">", "over "], ["<", "under "], ["~", "about "]),
    fc.boolean(),
  )
  .map(([how, lead, n, [unit, factor], [relation = "=", word], is]) => ({
    text: dressed(
      `lead ${how.typed ? lead : digit(lead)} to ground ${is ? "is " : ""}${word}${number(n, how)} ${unit}`,
      how,
    ),
    want: [
      {
        quantity: "insulation_resistance",
        relation,
        value: n * factor,
        points: [`lead ${lead}`, "ground"],
      },
    ],
  }));

const legs = [
  ["L1", "L2"],
  ["L2", "L3"],
  ["L1", "L3"],
] as const;
const supply: fc.Arbitrary<Saying> = fc
  .tuple(
    way,
    fc.array(fc.integer({ min: 200, max: 499 }), { minLength: 3, maxLength: 3 }),
    fc.constantFrom("-", " to "),
  )
  .map(([how, volts, joint]) => ({
    text: `${volts.map((n, at) => `${legs[at]?.[0]}${joint}${legs[at]?.[1]} ${number(n, how)}`).join(how.typed ? ", " : " ")} volts`,
    want: volts.map((n, at) => ({
      quantity: "voltage",
      relation: "=",
      value: n,
      points: legs[at] ?? [],
    })),
  }));

const three: fc.Arbitrary<Saying> = fc
  .tuple(
    tenths(10, 40),
    fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 3, maxLength: 3 }),
    fc.constantFrom("/", " ", ", "),
    fc.constantFrom("A", " amps", "a"),
  )
  .map(([middle, off, joint, unit]) => {
    const values = off.map((d) => Number((middle + d / 10).toFixed(1)));
    return {
      text: `${values.map((n) => n.toFixed(1)).join(joint)}${unit}`,
      want: values.map((value) => ({ quantity: "current", relation: "=", value })),
    };
  });

const rated: fc.Arbitrary<Saying> = fc
  .tuple(
    way,
    tenths(5, 80),
    tenths(5, 80),
    fc.constantFrom("rated", "label says"),
    fc.constantFrom("reads", "measures"),
  )
  .map(([how, nominal, n, plate, verb]) => ({
    text: dressed(
      `run cap ${plate} ${number(nominal, how)} ${verb} ${number(n, how)} ${how.typed ? "uf" : "micro farads"}`,
      how,
    ),
    want: [
      { quantity: "capacitance", relation: "=", value: nominal * 1e-6, rating: "nominal" },
      { quantity: "capacitance", relation: "=", value: n * 1e-6 },
    ],
  }));

const several = (one: fc.Arbitrary<Saying>): fc.Arbitrary<Saying> =>
  fc.array(one, { minLength: 2, maxLength: 4 }).map((list) => ({
    text: list.map((saying) => saying.text).join(", "),
    want: list.flatMap((saying) => saying.want),
  }));

export const sayings: fc.Arbitrary<Saying> = fc.oneof(
  placed,
  warm,
  difference,
  insulation,
  supply,
  three,
  rated,
  several(placed),
  several(warm),
  several(difference),
  several(fc.oneof(placed, difference)),
);
