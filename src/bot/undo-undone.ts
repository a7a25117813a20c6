import type { Message } from "../model.ts";
import type { Entry } from "../record/entry.ts";
import { compareEntries } from "../record/standing.ts";
import { clipped, sentence, unitName } from "../show/wording.ts";
import type { Plan } from "./file-note.ts";
import { draftFor, nothingRead } from "./filing.ts";
import type { Memory } from "./memory.ts";
import { entriesAt, jobAt } from "./rest.ts";

const again =
  /\b(?:undo|scratch|cancel|reverse|take back|forget) (?:the|that|my|this) (?:last )?undo\b|\bundo (?:an? |the )?undo\b/i;
/** So many words of what stands again are said back. */
const mostWords = 12;

/** "Undo that undo": what its author took back last stands again, and nothing else goes. */
export function undoUndone(memory: Memory, message: Message, job: number): Plan | undefined {
  if (!again.test(message.text)) return undefined;
  const entries = entriesAt(memory, job);
  const gone = new Set(
    entries.flatMap(({ facts }) => (facts.kind === "delete" ? [facts.message] : [])),
  );
  const last = entries
    .filter(
      ({ facts, who, message: id, at }) =>
        facts.kind === "undo" &&
        who === message.person &&
        !gone.has(id) &&
        Date.parse(at) <= Date.parse(message.at),
    )
    .sort(compareEntries)
    .at(-1);
  const known = jobAt(memory, job);
  const unit = known === undefined ? "" : `${unitName(known)}: `;
  const plan = { understood: nothingRead, job, opened: false } as const;
  if (last === undefined) {
    return { ...plan, drafts: [], says: sentence(`${unit}nothing of yours was taken back here`) };
  }
  const words = clipped(wordsOf(last, entries), mostWords);
  return {
    ...plan,
    drafts: [draftFor(message, job, { kind: "delete", message: last.message })],
    says: sentence(`${unit}put back, ${words}`),
  };
}

function wordsOf({ facts }: Entry, entries: readonly Entry[]): string {
  const places = facts.kind === "undo" ? facts.places : [];
  return entries
    .filter(({ place }) => places.includes(place))
    .map(({ text }) => text ?? "[erased]")
    .join("; ");
}
