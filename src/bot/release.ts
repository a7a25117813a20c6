import type { Message } from "../model.ts";
import type { Draft } from "../record/entries-table.ts";
import { type InboxRow, messagesIn } from "../record/inbox.ts";
import { findOut } from "../record/outbox.ts";
import type { Store } from "../record/store.ts";
import { draftFor, noteFacts } from "./filing.ts";
import { locateWords } from "./locate.ts";
import type { Memory } from "./memory.ts";
import { readNote } from "./read-note.ts";
import { jobAt } from "./rest.ts";

/** What waited for an answer, and the job that the answer names. */
export interface Release {
  readonly job: number;
  readonly rows: readonly InboxRow[];
}

/** An answer is short: a name or a number, not a new report. */
const mostWords = 8;

/** Whether a message answers the question whose job its author's waiting messages are. */
export function releasedBy(
  known: { readonly store: Store; readonly memory: Memory },
  message: Message,
): Release | undefined {
  const { store, memory } = known;
  const words = message.text.trim().split(/\s+/);
  if (words.length > mostWords || message.text.trim() === "") return undefined;
  const rows = messagesIn(store, "waiting").filter(
    (row) =>
      row.message.person === message.person &&
      row.message.channel === message.channel &&
      row.message.thread === message.thread &&
      Date.parse(row.message.at) <= Date.parse(message.at),
  );
  if (rows.length === 0) return undefined;
  const job = jobSaid(memory, message) ?? jobOffered(store, message, rows);
  return job === undefined ? undefined : { job, rows };
}

const yes = /^\s*(?:yes|yep|yeah|yup|ya|y|correct|right|that one|it is)\s*[.!]?\s*$/i;

/** "Yes" to "for job 3 RTU-2?", which the last answer offered alone. */
function jobOffered(store: Store, message: Message, rows: readonly InboxRow[]): number | undefined {
  const last = rows.at(-1)?.message;
  if (last === undefined || !yes.test(message.text)) return undefined;
  const offered = findOut(store, `reply:${last.platform}:${last.id}:0`);
  const number = /: for job (\d+) [^?]*\?/.exec(offered?.text ?? "")?.[1];
  return number === undefined ? undefined : Number(number);
}

function jobSaid(memory: Memory, message: Message): number | undefined {
  const bare = /^\s*(?:job|no\.?|number|#)?\s*(\d{1,6})\s*[.!]?\s*$/i.exec(message.text)?.[1];
  if (bare !== undefined && jobAt(memory, Number(bare)) !== undefined) return Number(bare);
  const named = locateWords(memory, message, { words: message.text, job: -1 });
  return named?.kind === "job" ? named.job : undefined;
}

/** The entries of what waited, each read in the job's context and at its own time. */
export function releaseDraft(memory: Memory, row: InboxRow, job: number): Draft {
  const understood = readNote(memory, row.message, job);
  return draftFor(row.message, job, noteFacts(memory, row.message, { understood, job }));
}
