import { expect, test } from "vitest";
import type { Reading } from "../src/model.ts";
import { follow, startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";
import { labelledNotes } from "./support/notes.ts";
import { randomFrom } from "./support/random.ts";

/** What says nothing changes no reading: words around a note, a pause within it, a slip of the thumb. */

const random = randomFrom(20260512);
const pick = (list: readonly string[]): string => list[Math.floor(random() * list.length)] ?? "";
const lines = labelledNotes().filter((_, i) => i % 4 === 0);
type Line = (typeof lines)[number];

function readingsOf(line: Line, text: string): readonly Reading[] {
  let context = startContext(line.units ?? "us", line.at);
  for (const earlier of line.before ?? []) context = follow(context, read(earlier, context));
  return read(text, context).readings;
}

/** Readings without where and how they were said. */
function bare(readings: readonly Reading[]): string[] {
  return readings
    .map(
      ({ said: _said, spans: _spans, rule: _rule, assumed: _assumed, figure: _figure, ...rest }) =>
        JSON.stringify(Object.entries(rest).sort(([a], [b]) => (a < b ? -1 : 1))),
    )
    .sort();
}

/** A pause before one of the note's readings; undefined where there is no place for one. */
function paused({ text }: Line, readings: readonly Reading[]): string | undefined {
  const starts = readings.flatMap(({ spans }) => spans.map(([from]) => from));
  const at = starts.filter((from) => from > 0 && text[from - 1] === " ")[0];
  if (at === undefined) return undefined;
  return `${text.slice(0, at)}${pick(["um", "uh", "umm"])} ${text.slice(at)}`;
}

/** One of its longer words with two letters swapped, doubled or one left out. */
function slipped({ text }: Line): string | undefined {
  const words = [...text.matchAll(/[a-z]{7,}/gi)];
  const word = words[Math.floor(random() * words.length)];
  if (word === undefined) return undefined;
  const [letters] = word;
  const i = 2 + Math.floor(random() * (letters.length - 4));
  const slip = pick([
    letters.slice(0, i) + letters.slice(i + 1),
    letters.slice(0, i) + letters[i] + letters.slice(i),
    letters.slice(0, i) + letters[i + 1] + letters[i] + letters.slice(i + 2),
  ]);
  return text.slice(0, word.index) + slip + text.slice(word.index + letters.length);
}

const around: readonly (readonly [
  name: string,
  most: number,
  say: (line: Line, readings: readonly Reading[]) => string | undefined,
])[] = [
  ["words that open it", 0.01, ({ text }) => pick(["ok so ", "hey ", "um ", "morning. "]) + text],
  [
    "words that close it",
    0.02,
    ({ text }) =>
      text.replace(/[.\s]+$/, "") + pick([" thanks", ". will let you know", ". more in a minute"]),
  ],
  ["a pause", 0.03, paused],
  ["a slip in a long word", 0.025, slipped],
];

test.each(around)("%s changes what is read in at most %f of the notes", (name, most, say) => {
  const other: string[] = [];
  let tried = 0;
  for (const line of lines) {
    const plainly = readingsOf(line, line.text);
    const text = say(line, plainly);
    if (text === undefined) continue;
    tried++;
    const got = bare(readingsOf(line, text));
    if (got.join("\n") !== bare(plainly).join("\n")) other.push(text);
  }
  console.info(`${name}: ${other.length} of ${tried} read otherwise\n${other.join("\n")}`);
  expect(tried).toBeGreaterThan(500);
  expect(other.length / tried).toBeLessThanOrEqual(most);
});
