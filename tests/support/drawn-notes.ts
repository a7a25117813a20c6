import { startContext } from "../../src/read/context.ts";
import { read } from "../../src/read/read.ts";
import { randomFrom } from "./random.ts";
import { say } from "./spoken.ts";

/** Notes drawn by machine, each with what it has to be read as. */

export interface Want {
  readonly quantity: string;
  /** in the reading's own unit */
  readonly value: number;
  readonly at?: string;
  readonly action?: string;
  readonly rating?: string;
}
/** A piece of a note: its way of saying it, its words, and what they come to. */
export interface Piece {
  readonly way: string;
  readonly text: string;
  readonly reads: readonly Want[];
  readonly status?: string;
  readonly time?: string;
}
/** Who says it: in figures or in words, with numbers drawn for him. */
export interface Voice {
  readonly typed: boolean;
  readonly n: (value: number) => string;
  readonly pick: <T>(...list: readonly T[]) => T;
  readonly int: (least: number, most: number) => number;
  readonly tenths: (least: number, most: number) => number;
}

export const ofPsi = (psi: number): number => psi * 6894.757293168;
export const ofFahrenheit = (degrees: number): number => (degrees - 32) / 1.8;
export const ofPounds = (pounds: number): number => pounds * 0.45359237;
export const ofMicrons = (microns: number): number => microns * 0.1333223684210526;

function voiceOf(random: () => number): Voice {
  const style = Math.floor(random() * 3);
  const typed = random() < 0.5;
  return {
    typed,
    n: (value) => say(value, typed ? undefined : style),
    pick: (...list) => {
      const one = list[Math.floor(random() * list.length)];
      if (one === undefined) throw new Error("nothing to draw from");
      return one;
    },
    int: (least, most) => least + Math.floor(random() * (most - least + 1)),
    tenths: (least, most) => Math.round((least + random() * (most - least)) * 10) / 10,
  };
}

/** Something measured that its own words settle. */
export function reading({ n, typed, pick, int, tenths }: Voice): Piece {
  const [low, high, heat, cool] = [int(60, 140), int(220, 420), int(6, 20), int(5, 15)];
  const [supply, back, amps] = [int(50, 62), int(70, 80), tenths(4, 28)];
  const suction = { quantity: "pressure", value: ofPsi(low), at: "suction" };
  return pick<Piece>(
    { way: "suction", text: `suction ${n(low)}`, reads: [suction] },
    {
      way: "both gauges",
      text: `suction ${n(low)} head ${n(high)}`,
      reads: [suction, { quantity: "pressure", value: ofPsi(high), at: "discharge" }],
    },
    {
      way: "superheat and subcooling",
      text: typed ? `sh ${heat} sc ${cool}` : `superheat ${n(heat)} subcooling ${n(cool)}`,
      reads: [
        { quantity: "superheat", value: heat / 1.8 },
        { quantity: "subcooling", value: cool / 1.8 },
      ],
    },
    {
      way: "supply and return",
      text: `supply ${n(supply)} return ${n(back)}`,
      reads: [
        { quantity: "temperature", value: ofFahrenheit(supply), at: "supply_air" },
        { quantity: "temperature", value: ofFahrenheit(back), at: "return_air" },
      ],
    },
    {
      way: "amps",
      text: typed ? pick(`comp ${amps} amps`, `comp ${amps}A`) : `comp ${n(amps)} amps`,
      reads: [{ quantity: "current", value: amps }],
    },
  );
}

const ones = "zero one two three four five six seven eight nine ten eleven twelve".split(" ");

/** A time of day: its words, and how it is filed. */
export function clock({ typed, int, pick }: Voice): { readonly text: string; readonly is: string } {
  const [hour, minutes] = [int(1, 12), pick(5, 10, 15, 20, 30, 40, 45, 50)];
  const is = `${String(hour).padStart(2, "0")}:${String(minutes).padStart(2, "0")}`;
  if (typed) return { text: `${hour}:${String(minutes).padStart(2, "0")}`, is };
  const name = ones[hour] ?? "";
  if (minutes === 15) return { text: `quarter past ${name}`, is };
  return { text: `${name} ${minutes < 10 ? `oh ${ones[minutes]}` : say(minutes, 0)}`, is };
}

function near(got: unknown, want: number): boolean {
  return typeof got === "number" && Math.abs(got - want) <= 1e-4 * Math.abs(want) + 1e-9;
}

type Outcome = "as meant" | "asked" | "silently";

function outcome(text: string, pieces: readonly Piece[]): Outcome {
  const { readings, statements, ask, unread } = read(text, startContext("us", undefined));
  // what rose or fell is told as one reading or as several
  const left = readings.flatMap((one) =>
    (one.series ?? [one.value]).map((value) => ({ ...one, value })),
  );
  let same = true;
  for (const want of pieces.flatMap(({ reads }) => reads)) {
    const i = left.findIndex(
      (got) =>
        got.quantity === want.quantity &&
        near(got.value, want.value) &&
        got.rating === want.rating &&
        (want.at === undefined || got.at === want.at) &&
        (want.action === undefined || got.action === want.action),
    );
    if (i < 0) same = false;
    else left.splice(i, 1);
  }
  const told = statements.flatMap((one) => (one.kind === "status" ? [one] : []));
  for (const { status, time } of pieces)
    if (status !== undefined)
      same &&= told.some(
        (one) => one.status === status && (time === undefined || one.time === time),
      );
  if (same && left.length === 0 && ask.length + unread.length === 0) return "as meant";
  return ask.length + unread.length > 0 ? "asked" : "silently";
}

export interface Drawn {
  readonly text: string;
  readonly ways: string;
  readonly is: Outcome;
}

/** So many notes, each of a piece drawn from `ways`, alone or beside something measured. */
export function drawn(
  ways: readonly ((voice: Voice) => Piece)[],
  count: number,
  seed: number,
): readonly Drawn[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => {
    const voice = voiceOf(random);
    const piece = voice.pick(...ways)(voice);
    const other = random() < 0.75 ? [reading(voice)] : [];
    const pieces = random() < 0.65 ? [piece, ...other] : [...other, piece];
    const joint = voice.typed
      ? voice.pick(", ", ". ", "\n", "; ")
      : voice.pick(", ", ". ", " and ");
    const text = pieces.map((one) => one.text).join(joint);
    return { text, ways: pieces.map(({ way }) => way).join(" + "), is: outcome(text, pieces) };
  });
}

/** What was read otherwise, for whoever runs the test. */
export function report(name: string, seed: number, notes: readonly Drawn[]): string {
  const wrong = notes.filter(({ is }) => is !== "as meant");
  const silent = wrong.filter(({ is }) => is === "silently").length;
  return [
    `${name}, seed ${seed}: ${notes.length} notes, ${wrong.length - silent} asked, ${silent} silently otherwise`,
    ...wrong.map(({ is, ways, text }) => `  (${is}) ${ways}: ${JSON.stringify(text)}`),
  ].join("\n");
}
