import { type Context, follow, startContext } from "../read/context.ts";
import type { NoteFacts } from "../record/entry.ts";
import type { Standing } from "../record/standing.ts";

/** What the notes of a job leave for the next one, and the notes that it was folded from. */
interface SoFar {
  readonly notes: readonly NoteFacts[];
  readonly units: Context["units"];
  readonly context: Context;
}

/** By a job's first note: it goes with the job. */
const known = new WeakMap<NoteFacts, SoFar>();

/**
 * The context that standing notes leave, oldest first. A job's notes are the same at each of its
 * messages but for the last: those are not folded again. Where a note was changed, taken back or
 * came late, the list is another one from there on, and all of it is folded anew.
 */
export function contextSoFar(units: Context["units"], standing: readonly Standing[]): Context {
  const notes = standing.map(({ note }) => note);
  const [first] = notes;
  const had = first === undefined ? undefined : known.get(first);
  const goesOn =
    had !== undefined &&
    had.units === units &&
    had.notes.length <= notes.length &&
    had.notes.every((note, order) => note === notes[order]);
  let context = goesOn ? had.context : startContext(units);
  for (const { note, entry } of standing.slice(goesOn ? had.notes.length : 0))
    context = follow(context, understoodOf(note, entry.text ?? ""));
  if (first !== undefined) known.set(first, { notes, units, context });
  return context;
}

/** What a kept note understood, as the reader gave it. */
function understoodOf(note: NoteFacts, text: string): Parameters<typeof follow>[1] {
  return {
    readings: note.readings,
    statements: note.statements,
    unread: note.unread.map(([from, to]) => text.slice(from, to)),
    unread_spans: note.unread,
    ask: note.asked === undefined ? [] : [note.asked],
    skipped: [],
    ...(note.open === undefined ? {} : { open: note.open }),
  };
}
