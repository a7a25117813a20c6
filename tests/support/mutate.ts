import { randomFrom } from "./random.ts";

/** Seeded mutators: text, bytes and JSON are spoiled in the ways that people, phones and attackers spoil them. */
export interface Chance {
  /** a whole number from 0 to below `most` */
  readonly upTo: (most: number) => number;
  readonly oneOf: <T>(some: readonly T[]) => T;
}

export function chanceFrom(seed: number): Chance {
  const next = randomFrom(seed);
  const upTo = (most: number): number => Math.floor(next() * most);
  return {
    upTo,
    oneOf: (some) => oneAt(some, upTo(some.length)),
  };
}

function oneAt<T>(some: readonly T[], index: number): T {
  for (const [at, one] of some.entries()) if (at === index) return one;
  throw new Error("nothing to choose from");
}

const pieces = [
  "",
  " ",
  "\n",
  "\r",
  "\t",
  "\0",
  "0",
  "-0",
  "1e999",
  "NaN",
  "9".repeat(40),
  ".",
  ",",
  "-",
  "/",
  "½",
  "−",
  "°",
  "µ",
  "Ω",
  "é",
  "😀",
  "\ud800",
  "\udc00",
  "\u202e",
  "\u200b",
  "\ufeff",
  "İ",
  "ß",
  "'",
  '"',
  "`",
  "=",
  "@",
  "+",
  "#",
  "$",
  "%",
  "<",
  ">",
  "&",
  "&amp;",
  "<@U0SORREL>",
  "<!channel>",
  "@room",
  "(",
  ")",
  "[",
  "]",
  "{",
  "}",
  "\\",
  "../",
  "__proto__",
  "constructor",
  "toString",
  "psi",
  " meg ",
  " no ",
  "scratch that",
  "done",
  "New job: ",
  "job 1",
  "same",
  "a".repeat(300),
  "1 ".repeat(200),
];

/** Some changes at random places: put in, cut out, doubled, swapped. */
export function mutateText(chance: Chance, text: string): string {
  let changed = text;
  for (let turns = chance.upTo(6); turns >= 0; turns--) {
    const at = chance.upTo(changed.length + 1);
    const to = Math.min(changed.length, at + chance.upTo(12));
    const piece = changed.slice(at, to);
    const put = chance.oneOf([
      chance.oneOf(pieces),
      chance.oneOf(pieces),
      piece + piece,
      "",
      [...piece].reverse().join(""),
      String.fromCharCode(chance.upTo(0x10000)),
    ]);
    changed = changed.slice(0, at) + put + changed.slice(chance.upTo(2) === 0 ? to : at);
  }
  return changed.slice(0, 20_000);
}

export function mutateBytes(chance: Chance, bytes: Uint8Array): Uint8Array {
  let changed = Buffer.from(bytes);
  for (let turns = chance.upTo(8); turns >= 0; turns--) {
    const at = chance.upTo(changed.length + 1);
    const kind = chance.upTo(5);
    if (kind === 0) changed = changed.subarray(0, at);
    else if (kind === 1)
      changed = Buffer.concat([
        changed.subarray(0, at),
        changed.subarray(Math.min(changed.length, at + chance.upTo(64))),
      ]);
    else if (kind === 2)
      changed = Buffer.concat([
        changed.subarray(0, at),
        Buffer.from(chance.oneOf(pieces)),
        changed.subarray(at),
      ]);
    else if (at < changed.length) {
      changed = Buffer.from(changed);
      changed[at] = chance.oneOf([0, 0xff, 0x7f, 0x80, chance.upTo(256)]);
    }
  }
  return changed;
}

const values: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  1e308,
  2 ** 53,
  "",
  "0",
  [],
  {},
  [[]],
  "\ud800",
  "x".repeat(5000),
  { "": null },
];

/** Some values of a JSON tree are put away, doubled, moved or are another's kind. */
export function mutateJson(chance: Chance, value: unknown): unknown {
  if (chance.upTo(14) === 0) return chance.oneOf(values);
  if (typeof value === "string") return chance.upTo(5) === 0 ? mutateText(chance, value) : value;
  if (Array.isArray(value)) {
    const items: readonly unknown[] = value;
    const kept = items.flatMap((one) =>
      chance.upTo(15) === 0 ? [] : chance.upTo(15) === 0 ? [one, one] : [mutateJson(chance, one)],
    );
    return kept;
  }
  if (typeof value === "object" && value !== null) {
    return Object.fromEntries(
      Object.entries(value).flatMap(([key, one]): [string, unknown][] =>
        chance.upTo(15) === 0
          ? []
          : [[chance.upTo(30) === 0 ? mutateText(chance, key) : key, mutateJson(chance, one)]],
      ),
    );
  }
  return value;
}
