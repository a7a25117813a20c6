import type { Message, Understood } from "../model.ts";
import type { UndoFacts } from "../record/entry.ts";
import { standingOf } from "../record/standing.ts";
import type { Memory } from "./memory.ts";
import { entriesAt } from "./rest.ts";

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
