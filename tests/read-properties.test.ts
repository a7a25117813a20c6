import fc from "fast-check";
import { expect, test } from "vitest";
import type { Span, Understood } from "../src/model.ts";
import { startContext } from "../src/read/context.ts";
import { explain } from "../src/read/explain.ts";
import { read } from "../src/read/read.ts";
import { mutated as sourcesMutated } from "./support/mutated.ts";
import { notesAtHand } from "./support/notes.ts";
import { sayings } from "./support/sayings.ts";

const context = startContext("us", "2026-05-12T10:05:00-05:00");
const seed = Number(process.env.READBACK_SEED ?? 20260512);
const runs = Number(process.env.READBACK_RUNS ?? 3000);
const notes = notesAtHand();

function allSpans(understood: Understood): Span[] {
  return [
    ...understood.readings.flatMap((reading) => reading.spans),
    ...understood.statements.flatMap((statement) => statement.spans),
    ...understood.unread_spans,
  ];
}

function inside(at: number, spans: readonly Span[]): boolean {
  return spans.some(([from, to]) => at >= from && at < to);
}

/** Spans lie in the text, cover it, and no digit is left to what was skipped. */
function covers(text: string): void {
  const understood = read(text, context);
  const spans = allSpans(understood);
  for (const [from, to] of [...spans, ...understood.skipped]) {
    expect(from).toBeGreaterThanOrEqual(0);
    expect(to).toBeLessThanOrEqual(text.length);
    expect(from).toBeLessThan(to);
  }
  for (let at = 0; at < text.length; at++)
    expect(inside(at, [...spans, ...understood.skipped]), `${at} of ${JSON.stringify(text)}`).toBe(
      true,
    );
  for (const digits of text.matchAll(/[0-9]/g))
    expect(inside(digits.index, spans), `digit at ${digits.index} of ${JSON.stringify(text)}`).toBe(
      true,
    );
  expect(understood.ask.length).toBeLessThanOrEqual(1);
  for (const one of [...understood.readings, ...understood.statements])
    expect(one.said).toBe(one.spans.map(([from, to]) => text.slice(from, to)).join(" "));
}

/** A note with a few of its letters changed, dropped, doubled or swapped. */
const mutated = fc
  .tuple(
    fc.constantFrom(...notes),
    fc.array(
      fc.tuple(
        fc.nat(400),
        fc.constantFrom("", " ", "0", ".", ",", "-", "/", "\n", "M", "½", "−", "é", "😀", ":", "'"),
      ),
      { maxLength: 6 },
    ),
  )
  .map(([note, changes]) =>
    changes.reduce((text, [at, put]) => {
      const i = at % (text.length + 1);
      return text.slice(0, i) + put + text.slice(i + (at % 3 === 0 ? 1 : 0));
    }, note),
  );

const pieces = fc.constantFrom(
  "1",
  "0.5",
  "208/211/206",
  "T1",
  "L2-G",
  "lead",
  "two",
  "point",
  "meg",
  "gig",
  "@500v",
  "suction",
  "head",
  "OL",
  "no",
  "same",
  "or",
  "to",
  "-",
  "½",
  "and a half",
  "at",
  "9:20",
  "psi",
  "#",
  "was",
  "now",
  "all three",
  "rated",
  "comp 2",
  "?",
  "\n",
  ".",
  "$",
  "555-0101",
  "code",
  "E4",
  "hundred",
  "oh",
  "minus",
  "%",
);
const jumbled = fc.array(pieces, { maxLength: 24 }).map((words) => words.join(" "));

test(`no number vanishes from a note, whole or mutated (seed ${seed})`, () => {
  for (const note of notes) covers(note);
  fc.assert(fc.property(mutated, covers), { seed, numRuns: runs });
  fc.assert(fc.property(jumbled, covers), { seed, numRuns: runs });
}, 240_000);

test(`nothing throws, whatever the text (seed ${seed})`, () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 300 }), (text) => {
      read(text, context);
    }),
    { seed, numRuns: runs },
  );
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(..."0123456789.,-/:@#%'\"°ohmgvatfck \n"), { maxLength: 200 }),
      (letters) => {
        read(letters.join(""), context);
      },
    ),
    { seed, numRuns: runs },
  );
});

test(`what is said in many ways is read back as it was meant (seed ${seed})`, () => {
  fc.assert(
    fc.property(sayings, ({ text, want }) => {
      const got = read(text, context).readings.map(
        ({ quantity, relation, value, points, at, rating }) => ({
          quantity,
          relation,
          value,
          points,
          at,
          rating,
        }),
      );
      const said = want.map(({ quantity, relation, value, points, at, rating }) => ({
        quantity,
        relation,
        value:
          typeof value === "number"
            ? expect.closeTo(value, Math.max(0, 8 - Math.ceil(Math.log10(Math.abs(value) + 1e-9))))
            : value,
        points,
        at,
        rating,
      }));
      expect(got, text).toEqual(said);
    }),
    { seed, numRuns: runs },
  );
});

test.skipIf(sourcesMutated)(
  "time grows linearly with length",
  () => {
    const one = notes.join(". ").slice(0, 16_384);
    const took = (text: string): number => {
      let best = Number.POSITIVE_INFINITY;
      for (let i = 0; i < 3; i++) {
        const start = process.cpuUsage();
        read(text, context);
        const used = process.cpuUsage(start);
        best = Math.min(best, used.user + used.system);
      }
      return Math.max(best, 500);
    };
    for (const text of [
      one,
      "1 ".repeat(8192),
      "L1 ".repeat(5461),
      "0.5.".repeat(4096),
      "1/2".repeat(5461),
      "five ".repeat(3276),
      "((".repeat(8192),
      "a1".repeat(8192),
      "-".repeat(16_384),
    ]) {
      const small = took(text);
      const large = took(text.repeat(4));
      expect(large / small, JSON.stringify(text.slice(0, 12))).toBeLessThan(12);
    }
  },
  240_000,
);

test("an explanation names tokens, items, rules, and what took what", () => {
  const why = explain("on site 8:05, suction 118 psi", context);
  expect(why.tokens.map((token) => token.text)).toContain("suction");
  expect(why.items.find((item) => item.text === "8:05")?.taken_by).toBe("<status> <time>");
  expect(why.rules.find((rule) => rule.name === "<status> <time>")).toEqual({
    name: "<status> <time>",
    due: true,
    took: 1,
  });
  expect(why.rules.find((rule) => rule.name === "undo")?.due).toBe(false);
  expect(why.understood).toEqual(read("on site 8:05, suction 118 psi", context));
});
