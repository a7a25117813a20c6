import { expect, test } from "vitest";
import { contextSoFar } from "../src/bot/context-so-far.ts";
import { type Context, follow, startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";
import type { NoteFacts } from "../src/record/entry.ts";
import type { Standing } from "../src/record/standing.ts";

const at = "2026-05-12T12:00:00Z";

/** Notes of a job as they stand, each read behind those before it. */
function standing(...texts: readonly string[]): readonly Standing[] {
  let context = startContext("us");
  return texts.map((text, order) => {
    const understood = read(text, context);
    context = follow(context, understood);
    const note: NoteFacts = {
      kind: "note",
      role: "tech",
      readings: understood.readings,
      statements: understood.statements,
      unread: understood.unread_spans,
      ...(understood.ask[0] === undefined ? {} : { asked: understood.ask[0] }),
      ...(understood.open === undefined ? {} : { open: understood.open }),
      files: [],
      replaces: [],
    };
    const ids = { job: 1, place: order + 1, who: "ife", platform: "test", message: `m${order}` };
    const entry = { ...ids, at, text, facts: note };
    return { entry, note, instant: order, at, fate: "stands" };
  });
}

/** Folded from the first note on, whatever was folded before. */
const anew = (units: Context["units"], notes: readonly Standing[]): Context =>
  contextSoFar(
    units,
    notes.map((one) => ({ ...one, note: { ...one.note } })),
  );

const notes = standing(
  "megging at 500 volts",
  "lead 1 84 meg",
  "lead 2 81 meg",
  "no, 18 meg",
  "suction 118 psi",
  "charged 2 lb",
);

test("each note more leaves what all of them leave", () => {
  for (let count = 0; count <= notes.length; count++)
    expect(contextSoFar("us", notes.slice(0, count))).toEqual(anew("us", notes.slice(0, count)));
  expect(contextSoFar("us", notes).readings.length).toBeGreaterThan(3);
});

test("a note that was taken back, changed, or came late is not left in it", () => {
  contextSoFar("us", notes);
  const without = notes.filter((_, order) => order !== 2);
  expect(contextSoFar("us", without)).toEqual(anew("us", without));
  expect(contextSoFar("us", notes)).toEqual(anew("us", notes));
  const [edited] = standing("lead 1 48 meg");
  const changed = notes.map((one, order) => (order === 1 && edited ? edited : one));
  expect(contextSoFar("us", changed)).toEqual(anew("us", changed));
  expect(contextSoFar("us", changed)).not.toEqual(anew("us", notes));
  const late = [...notes.slice(0, 3), ...standing("head 340 psi"), ...notes.slice(3)];
  expect(contextSoFar("us", late)).toEqual(anew("us", late));
  expect(contextSoFar("us", notes.slice(0, 2))).toEqual(anew("us", notes.slice(0, 2)));
});

test("another habit of units begins anew", () => {
  contextSoFar("us", notes);
  expect(contextSoFar("si", notes)).toEqual(anew("si", notes));
  expect(contextSoFar("si", notes).units).toBe("si");
});
