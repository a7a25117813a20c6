import type { Message, Understood } from "../model.ts";
import type { AnswerFacts, UndoFacts } from "../record/entry.ts";
import { isCurrent } from "../record/readings.ts";
import type { Route } from "../record/route.ts";
import { standingOf } from "../record/standing.ts";
import { lastSaid } from "./last-said.ts";
import type { Memory } from "./memory.ts";
import { entriesAt, jobAt } from "./rest.ts";

/** "Undo" takes back the author's last entries of the job that still stand; said again, the one before. */
export function undoFacts(
  memory: Memory,
  message: Message,
  note: { readonly understood: Understood; readonly job: number },
): UndoFacts | undefined {
  const undo = note.understood.statements.find((statement) => statement.kind === "undo");
  if (undo === undefined) return undefined;
  const instant = Date.parse(message.at);
  const own = standingOf(entriesAt(memory, note.job)).filter(
    ({ entry, note: facts, fate, instant: when }) =>
      fate === "stands" &&
      entry.who === message.person &&
      when <= instant &&
      facts.opens === undefined &&
      (facts.readings.length > 0 || facts.statements.length > 0 || facts.files.length > 0),
  );
  const count = Math.max(1, Math.min(undo.count ?? 1, own.length));
  return { kind: "undo", places: own.slice(-count).map(({ entry }) => entry.place) };
}

/** "Scratch the 0.9": of what its author read on this job the newest so written no longer stands. */
export function figureUndone(
  memory: Memory,
  message: Message,
  note: { readonly understood: Understood; readonly job: number },
): AnswerFacts | undefined {
  const undo = note.understood.statements.find((statement) => statement.kind === "undo");
  if (undo?.kind !== "undo" || undo.taken === undefined) return undefined;
  const told = (jobAt(memory, note.job)?.readings ?? []).filter(
    (reading) =>
      isCurrent(reading) &&
      reading.figure.number === undo.taken &&
      Date.parse(reading.received) <= Date.parse(message.at),
  );
  const last = told.findLast(({ who }) => who === message.person) ?? told.at(-1);
  return last === undefined ? undefined : { kind: "answer", readings: [last.id], stands: false };
}

/**
 * "Undo" that names nothing and stands in no job's thread means its author's last word, whichever
 * job that was filed on: what is in hand by now may be another.
 */
export function undoneAt(
  memory: Memory,
  message: Message,
  said: { readonly understood: Understood; readonly located: Route },
): Extract<Route, { kind: "job" }> | undefined {
  const { understood, located } = said;
  if (!understood.statements.some(({ kind }) => kind === "undo")) return undefined;
  if (located.kind === "job" && located.by !== "hand") return undefined;
  const last = lastSaid(memory, message);
  return last === undefined ? undefined : { kind: "job", job: last.job, by: "hand" };
}
