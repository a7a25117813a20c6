import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { toldRowsAll } from "../src/judge/checks/told.ts";
import { lettersIn, lettersNeeded } from "../src/judge/letters.ts";
import { notesAtHand } from "./support/notes.ts";

const needed = (pattern: RegExp): string =>
  [..."abcdefghijklmnopqrstuvwxyz"]
    .filter((letter) => (lettersNeeded(pattern) & lettersIn(letter)) !== 0)
    .join("");

test.each([
  [/bulb/, "blu"],
  [/\b(?:hot|warm)er?\b/, "e"],
  [/\b(?:hot|shot)\b/, "hot"],
  [/new (?:fan)?\s*belt/, "belntw"],
  [/x{0,2}y{2}z+q*?/, "yz"],
  [/(?<!un)loose(?= cap)(?!s)/, "elos"],
  [/(?<part>fan) \k<part>/, "afn"],
  [/[abc]d\w\d\p{L}/u, "d"],
  [/\u0061b\x63d/, "bd"],
  [/Fan/i, "afn"],
  [/kw/iu, ""],
  [/a|/, ""],
])("%s cannot do without its letters", (pattern, letters) => {
  expect(needed(pattern)).toBe(letters);
});

/** The cases as they are written: a line holds all of its notes. */
function linesOfCases(): string[] {
  const folder = new URL("../fixtures/cases/", import.meta.url);
  return readdirSync(folder).flatMap((name) =>
    readFileSync(new URL(name, folder), "utf8").split("\n"),
  );
}

test("no note lacks a letter that a pattern which matches it needs", () => {
  const patterns = toldRowsAll.flatMap(({ words }) => words);
  const gates = patterns.map((pattern) => ({ pattern, needs: lettersNeeded(pattern) }));
  let matches = 0;
  const wrong = [...notesAtHand(), ...linesOfCases()].flatMap((text) => {
    const note = text.toLowerCase();
    const letters = lettersIn(note);
    return gates.flatMap(({ pattern, needs }) => {
      if (!pattern.test(note)) return [];
      matches++;
      return (letters & needs) === needs ? [] : [`${pattern}: ${note}`];
    });
  });
  expect(wrong).toEqual([]);
  expect(matches).toBeGreaterThan(100);
  // a gate that lets everything through spares nothing
  expect(gates.filter(({ needs }) => needs !== 0).length).toBeGreaterThan(gates.length / 2);
});
