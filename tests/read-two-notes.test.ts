import { expect, test } from "vitest";
import type { Reading, Understood } from "../src/model.ts";
import { startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";
import { labelledNotes } from "./support/notes.ts";
import { randomFrom } from "./support/random.ts";

/** Two notes sent as one, a line or a sentence each, hold what each of them holds alone. */

const random = randomFrom(20261127);
const readAlone = (text: string): Understood => read(text, startContext("us"));

const plain = labelledNotes()
  .filter(
    ({ text, before = [], units = "us" }) =>
      before.length === 0 && units === "us" && text.length < 140 && !text.includes("\n"),
  )
  .map(({ text }) => ({ text, understood: readAlone(text) }))
  .filter(
    ({ understood }) =>
      understood.readings.length > 0 &&
      understood.ask.length === 0 &&
      understood.unread.length === 0,
  );
type Plain = (typeof plain)[number];

function core({ quantity, relation, value, rating, action }: Reading): string {
  const figure = typeof value === "number" ? value.toPrecision(5) : String(value);
  return [quantity, relation, figure, rating ?? "", action ?? ""].join(" ");
}
const cores = (list: readonly Reading[]): string => list.map(core).sort().join("\n");

function pick(): Plain {
  const one = plain[Math.floor(random() * plain.length)];
  if (one === undefined) throw new Error("no labelled notes");
  return one;
}

test.each([
  ["a line each", "\n"],
  ["a sentence each", ". "],
])("two notes, %s: silently otherwise in at most 5 of 100", (_, joint) => {
  const other: string[] = [];
  const tried = 700;
  for (let at = 0; at < tried; at++) {
    const [first, second] = [pick(), pick()];
    // "same on 2", "no, 46": what speaks of the note before it is not alone
    if (/^(?:same|no|not|sorry|actually|wait|scratch)\b/i.test(second.text)) continue;
    const text = first.text.replace(/[.\s]+$/, "") + joint + second.text;
    const got = readAlone(text);
    if (got.ask.length > 0 || got.unread.length > 0) continue;
    const both = [...first.understood.readings, ...second.understood.readings];
    if (cores(got.readings) !== cores(both)) other.push(text);
  }
  expect(other.length, other.slice(0, 5).join("\n\n")).toBeLessThanOrEqual(tried * 0.05);
});
