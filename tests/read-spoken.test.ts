import { test } from "vitest";
import { expectAsMeant } from "./support/drawn-checks.ts";
import { ofFahrenheit, ofPsi, type Want } from "./support/drawn-notes.ts";

/** Draws, and the share that may be read otherwise, and silently so. */
const DRAWS = 250;
const MOST_OTHERWISE = 0.08;
const MOST_SILENT = 0.06;

type Said = readonly [text: string, values: readonly Want[]];

const ones =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const tens = " ten twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

/** Words of a whole number below a hundred. */
function upToHundred(value: number): string {
  const [ten, one] = [tens[Math.floor(value / 10)] ?? "", ones[value % 10] ?? ""];
  if (value < 20) return ones[value] ?? "";
  return value % 10 === 0 ? ten : `${ten} ${one}`;
}

/** "one eighteen", "three oh five", "two hundred": hundreds as crews say them. */
function hundreds(value: number): string {
  const [count, rest] = [Math.floor(value / 100), value % 100];
  if (count === 0) return upToHundred(rest);
  if (rest === 0) return `${upToHundred(count)} hundred`;
  return `${upToHundred(count)} ${rest < 10 ? `oh ${ones[rest]}` : upToHundred(rest)}`;
}

/** "fourteen point two", "point four one" */
function spoken(value: number): string {
  const [whole = "0", part] = String(value).split(".");
  const digits = [...(part ?? "")].map((digit) => (digit === "0" ? "oh" : ones[Number(digit)]));
  if (digits.length === 0) return hundreds(value);
  const tail = `point ${digits.join(" ")}`;
  return whole === "0" ? tail : `${hundreds(Number(whole))} ${tail}`;
}

/** One of a list, a figure between two, and how a phone writes it. */
interface Draw {
  readonly pick: <T>(list: readonly T[]) => T;
  readonly figure: (low: number, high: number, digits?: number) => number;
  readonly say: (value: number) => string;
}

/** All in words, all in digits, or now this and now that. */
type Phone = "words" | "digits" | "both";

function drawFrom(random: () => number, phone: Phone): Draw {
  return {
    pick: (list) => {
      const one = list[Math.floor(random() * list.length)];
      if (one === undefined) throw new Error("nothing to draw from");
      return one;
    },
    figure: (low, high, digits = 0) => Number((low + random() * (high - low)).toFixed(digits)),
    say: (value) =>
      phone === "digits" || (phone === "both" && random() < 0.5) ? String(value) : spoken(value),
  };
}

/** Figures a little apart, as three legs or leads have them, none with a zero that phones leave out. */
function alike({ figure }: Draw, low: number, high: number, digits: number): readonly number[] {
  const step = 10 ** -digits;
  const rounded = (value: number): number => Number(value.toFixed(digits));
  for (;;) {
    const one = figure(low, high, digits);
    const row = [one, rounded(one + 2 * step), rounded(one - step)];
    if (row.every((value) => value % 1 === 0 || String(value).split(".")[1]?.length === digits))
      if (digits === 0 || row.every((value) => value % 1 !== 0)) return row;
  }
}

const all = (quantity: string, values: readonly number[]): Want[] =>
  values.map((value) => ({ quantity, value }));

/** What is told of one circuit or compressor; common practice, no source. */
const ofMachine: readonly ((draw: Draw) => Said)[] = [
  ({ pick, figure, say }) => {
    const [low, high] = [figure(90, 140), figure(250, 420)];
    const [a, b] = [say(low), say(high)];
    const text = pick([
      `${a} over ${b}`,
      `suction ${a} head ${b}`,
      `suction is ${a} and discharge is ${b}`,
      `low side is at ${a} high side is at ${b}`,
      `suction's ${a} and head's ${b}`,
    ]);
    return [text, all("pressure", [low, high].map(ofPsi))];
  },
  ({ pick, figure, say }) => {
    const [heat, cool] = [figure(4, 22), figure(4, 18)];
    const [a, b] = [say(heat), say(cool)];
    const text = pick([
      `superheat ${a} subcool ${b}`,
      `super heat's ${a} sub cooling's ${b}`,
      `superheat is ${a} and subcooling is ${b}`,
      `${a} superheat and ${b} subcooling`,
    ]);
    return [
      text,
      [
        { quantity: "superheat", value: heat / 1.8 },
        { quantity: "subcooling", value: cool / 1.8 },
      ],
    ];
  },
  ({ pick, figure, say }) => {
    const [gas, liquid] = [figure(40, 64), figure(84, 112)];
    const [a, b] = [say(gas), say(liquid)];
    const text = pick([
      `suction line ${a} liquid line ${b}`,
      `suction line is at ${a} and liquid line is at ${b}`,
      `suction line temp ${a} liquid line temp ${b}`,
    ]);
    return [
      text,
      [
        { quantity: "temperature", value: ofFahrenheit(gas), at: "suction" },
        { quantity: "temperature", value: ofFahrenheit(liquid), at: "liquid" },
      ],
    ];
  },
  (draw) => {
    const row = alike(draw, 11, 24, 1);
    const [a, b, c] = row.map(draw.say);
    const text = draw.pick([
      `amps ${a} ${b} and ${c}`,
      `amps are ${a} ${b} ${c}`,
      `drawing ${a} ${b} and ${c} amps`,
      `leg one ${a} leg two ${b} leg three ${c} amps`,
    ]);
    return [text, all("current", row)];
  },
  (draw) => {
    const row = alike(draw, 212, 217, 0);
    const [a, b, c] = row.map(draw.say);
    const text = draw.pick([
      `megs ${a} ${b} and ${c} at ${draw.say(500)}`,
      `megged ${a} ${b} ${c} at ${draw.say(500)} volts`,
      `to ground ${a} ${b} and ${c} meg`,
    ]);
    const values = row.map((value) => value * 1e6);
    return [text, all("insulation_resistance", values)];
  },
  (draw) => {
    const row = alike(draw, 0.4, 2.8, 2);
    const [a, b, c] = row.map(draw.say);
    const text = draw.pick([
      `windings ${a} ${b} and ${c}`,
      `windings are ${a} ${b} ${c} ohms`,
      `T1 to T2 ${a} T2 to T3 ${b} T1 to T3 ${c} ohms`,
    ]);
    return [text, all("winding_resistance", row)];
  },
  ({ pick, figure, say }) => {
    const volts = figure(610, 670);
    const text = pick([`dc bus ${say(volts)} volts`, `bus is at ${say(volts)} volts`]);
    return [text, [{ quantity: "voltage", value: volts, at: "dc_bus" }]];
  },
];

/** What is told of the whole unit. */
const ofUnit: readonly ((draw: Draw) => Said)[] = [
  ({ pick, figure, say }) => {
    const [supply, back] = [figure(50, 62), figure(68, 80)];
    const text = pick([
      `supply ${say(supply)} return ${say(back)}`,
      `return's ${say(back)} and supply's ${say(supply)}`,
    ]);
    return [
      text,
      [
        { quantity: "temperature", value: ofFahrenheit(supply), at: "supply_air" },
        { quantity: "temperature", value: ofFahrenheit(back), at: "return_air" },
      ],
    ];
  },
  ({ pick, figure, say }) => {
    const degrees = figure(70, 104);
    const text = pick([`outside is ${say(degrees)}`, `it's ${say(degrees)} outside`]);
    return [text, [{ quantity: "temperature", value: ofFahrenheit(degrees), at: "outdoor_air" }]];
  },
];

const machines: readonly (readonly [first: string, second: string])[] = [
  ["comp one", "comp two"],
  ["compressor one", "compressor two"],
  ["circuit one", "circuit two"],
  ["number one compressor", "number two compressor"],
];

interface Wanted extends Want {
  /** of which of the two machines, none of the unit's own */
  readonly machine?: string;
}

function summary(random: () => number): { readonly text: string; readonly wanted: Wanted[] } {
  const phones: readonly Phone[] = ["words", "words", "digits", "both"];
  const phone = phones[Math.floor(random() * phones.length)] ?? "words";
  const draw = drawFrom(random, phone);
  const some = <T>(list: readonly T[], least: number, most: number): readonly T[] =>
    list
      .map((one) => ({ one, order: random() }))
      .sort((a, b) => a.order - b.order)
      .slice(0, draw.figure(least, most))
      .map(({ one }) => one);
  const told = some(ofMachine, 1, 3);
  const joint = draw.pick([" ", " and ", " then ", " uh "]);
  const wanted: Wanted[] = [];
  const parts = draw.pick(machines).map((machine, order) => {
    const said = told.map((one) => one(draw));
    for (const [, values] of said)
      wanted.push(...values.map((value) => ({ ...value, machine: String(order + 1) })));
    const lead = draw.pick(
      order === 0 ? ["", "on ", "okay "] : ["on ", "and on ", "now ", "then "],
    );
    return `${lead}${machine} ${said.map(([text]) => text).join(joint)}`;
  });
  for (const [text, values] of some(ofUnit, 0, 2).map((one) => one(draw))) {
    parts.push(text);
    wanted.push(...values);
  }
  const stops = random() < 0.35;
  const capital = (part: string): string => part.charAt(0).toUpperCase() + part.slice(1);
  const text = stops ? `${parts.map(capital).join(". ")}.` : parts.join(" ");
  return { text, wanted };
}

test("what is spoken of two machines and their unit, as a phone writes it, is told of each of them", () => {
  expectAsMeant({
    name: "spoken",
    units: "us",
    draws: DRAWS,
    mostOtherwise: MOST_OTHERWISE,
    mostSilent: MOST_SILENT,
    draw: summary,
    also: (one, { machine }) => one.subject?.slice(-1) === machine,
  });
});
