import type { Message } from "../model.ts";
import type { Draft } from "../record/entries-table.ts";
import { findMessage } from "../record/inbox.ts";
import type { Store } from "../record/store.ts";
import type { Plan } from "./file-note.ts";
import { draftFor, noteFacts, nothingRead } from "./filing.ts";
import { lastSaid } from "./last-said.ts";
import { locateWords } from "./locate.ts";
import type { Memory } from "./memory.ts";
import { readNote } from "./read-note.ts";
import { jobAt } from "./rest.ts";

const sayings = [
  /^\s*(?:no,?\s+)?(?:please\s+)?(?:move|put|file)\s+(?:that|it|this|the last(?:\s+(?:one|reading|message))?)\s+(?:to|on|under|with)\s+(.+)$/i,
  /^\s*(?:no,?\s+|sorry,?\s+)?(?:that|this|it|the last(?:\s+(?:one|reading))?)\s+(?:was|is|goes|belongs|should be)\s+(?:for|to|on|at|under|with)\s+(.+)$/i,
];

/** "Move that to 42", "that was for the daycare": the author's last message goes to another job. */
export function planMove(
  known: { readonly store: Store; readonly memory: Memory },
  message: Message,
): Plan | undefined {
  const { store, memory } = known;
  const words = sayings
    .map((saying) => saying.exec(message.text)?.[1])
    .find((text) => text !== undefined);
  if (words === undefined) return undefined;
  const target = targetOf(memory, message, words);
  const last = lastSaid(memory, message);
  if (target === undefined || last === undefined || last.job === target) return undefined;
  const row = findMessage(store, message.platform, last.message);
  if (row === undefined) return undefined;
  const understood = readNote(memory, row.message, target);
  const drafts: readonly Draft[] = [
    draftFor(message, last.job, { kind: "move", message: last.message, to: target }),
    draftFor(row.message, target, noteFacts(memory, row.message, { understood, job: target })),
  ];
  return { understood: nothingRead, job: target, opened: false, drafts, moved: row };
}

function targetOf(memory: Memory, message: Message, words: string): number | undefined {
  const bare = /^(?:job\s*)?#?(\d{1,6})\s*[.!]?$/i.exec(words.trim())?.[1];
  if (bare !== undefined)
    return jobAt(memory, Number(bare)) !== undefined ? Number(bare) : undefined;
  const named = locateWords(memory, message, { words, job: -1 });
  return named?.kind === "job" ? named.job : undefined;
}
