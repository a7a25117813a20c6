import { expect, test } from "vitest";
import { type Context, follow, startContext } from "../src/read/context.ts";
import { measure } from "../src/read/measure.ts";
import type { Note, Rule } from "../src/read/note.ts";
import { begin, read } from "../src/read/read.ts";
import { applyRules, asides, isDue, remarks } from "../src/read/rules/list.ts";
import { labelledNotes } from "./support/notes.ts";

/** What a rule that found something leaves behind in a note. */
function stateOf(note: Note): string {
  const { statements, readings, ask, unread, trace, measuredAt, items } = note;
  const lists = [statements, readings, ask, unread, trace, measuredAt];
  const owners = items.map(({ owner = "" }) => owner);
  return [...lists.map(({ length }) => length), note.open?.missing, ...owners].join("|");
}

/** Their words decide what a figure is, they don't only spare time: elsewhere it is something else. */
const decides = new Set(["<kilohms> at <degrees>", "<number> hours labor", "<month>/<day>"]);

/** Tries every rule of a list, those too that the note seems to give no chance; names of such that found something. */
function hidden(rules: readonly Rule[], note: Note): readonly string[] {
  return rules.flatMap((rule) => {
    if (isDue(rule, note)) {
      rule.apply(note);
      return [];
    }
    if (decides.has(rule.name)) return [];
    const before = stateOf(note);
    rule.apply(note);
    return stateOf(note) === before ? [] : [rule.name];
  });
}

function hiddenIn(text: string, context: Context): readonly string[] {
  const { note } = begin(text, context);
  const first = hidden(asides, note);
  measure(note);
  return [...first, ...hidden(remarks, note)];
}

test("what a rule asks for before it is tried hides nothing that it would find", () => {
  const notes = labelledNotes();
  const found = notes.flatMap(({ text, before = [], units, at }) => {
    let context = startContext(units ?? "us", at);
    for (const earlier of before) context = follow(context, read(earlier, context));
    return hiddenIn(text, context).map((rule) => `${rule}: ${text}`);
  });
  expect(notes.length).toBeGreaterThan(2_000);
  expect(found).toEqual([]);
});

test("every rule whose words decide is one that waits for words", () => {
  const waiting = [...asides, ...remarks].filter(({ heads }) => heads !== undefined);
  expect(waiting.map(({ name }) => name)).toEqual(expect.arrayContaining([...decides]));
});

/** What is measured in a note; `every`: by every pass, whatever words it waits for. */
function measured(text: string, context: Context, every: boolean): string {
  const { note } = begin(text, context);
  applyRules(asides, note);
  if (every) note.heads.fill(1);
  measure(note);
  return `${stateOf(note)} ${JSON.stringify([note.readings, note.ask, note.trace])}`;
}

test("what a pass over the values waits for hides nothing that it would find", () => {
  for (const { text, before = [], units, at } of labelledNotes()) {
    let context = startContext(units ?? "us", at);
    for (const earlier of before) context = follow(context, read(earlier, context));
    expect([text, measured(text, context, false)]).toEqual([text, measured(text, context, true)]);
  }
});
