import type { Message } from "../model.ts";
import { type Draft, jobsFiling } from "../record/entries-table.ts";
import { findMessage, type InboxRow, messagesIn } from "../record/inbox.ts";
import { findOut } from "../record/outbox.ts";
import type { Store } from "../record/store.ts";
import { namesAnotherUnit } from "../record/strange-unit.ts";
import { draftFor, noteFacts, nothingRead } from "./filing.ts";
import { locate, locateWords } from "./locate.ts";
import type { Memory } from "./memory.ts";
import { readNote } from "./read-note.ts";
import { jobAt } from "./rest.ts";
import { namesOther } from "./talk-to.ts";

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
  filed: number | undefined,
): Release | undefined {
  const { store, memory } = known;
  const words = message.text.trim().split(/\s+/);
  if (message.text.trim() === "") return undefined;
  const waiting = waitingOf(store, message);
  if (words.length > mostWords) return arrivalsOf(memory, message, { waiting, filed });
  // an edit whose message has not come waits for that
  const rows = waiting.filter((row) => row.message.edits === undefined || editedBy(store, row));
  if (rows.length === 0) return undefined;
  const job = jobSaid(memory, message);
  if (job === undefined) return offeredTo(store, message, rows);
  const unit = jobAt(memory, job)?.equipment ?? "";
  const own = rows.filter((row) => isAnswer(message) || !namesAnotherUnit(row.message.text, unit));
  return own.length === 0 ? undefined : { job, rows: own };
}

/** "1", "job 1": an answer to the question, and no report that names its own unit. */
const isAnswer = ({ text }: Message): boolean =>
  /^\s*(?:job|no\.?|number|#)?\s*\d{1,6}\s*[.!]?\s*$/i.test(text);

/**
 * "Just pulled up at quill", where two jobs of his wait, then "rack A suct 9 disch 188 …": a report that names
 * one of the two tells as well at which he is.
 */
function arrivalsOf(
  memory: Memory,
  message: Message,
  told: { readonly waiting: readonly InboxRow[]; readonly filed: number | undefined },
): Release | undefined {
  const { waiting, filed } = told;
  if (filed === undefined || waiting.length === 0) return undefined;
  const named = locateWords(memory, message, { words: message.text, job: -1 });
  if (named?.kind !== "job" || named.job !== filed) return undefined;
  const rows = waiting.filter(
    (row) => row.message.edits === undefined && isArrival(memory, row, filed),
  );
  return rows.length === 0 ? undefined : { job: filed, rows };
}

/** "Off to the school" that waits between two of its units, and then "at the school, ahu first": the way led there. */
export function comingsOf(
  { store, memory }: { readonly store: Store; readonly memory: Memory },
  message: Message,
  filed: number | undefined,
): Release | undefined {
  if (filed === undefined || message.edits !== undefined) return undefined;
  const there = isThere(memory, message, filed);
  const rows = waitingOf(store, message).filter(
    (row) =>
      row.message.edits === undefined &&
      (isArrival(memory, row, filed) ||
        (there &&
          isRecent(
            row,
            message,
            jobOffered(store, row) === filed && locate(memory, row.message).kind === "none",
          ))),
  );
  return rows.length === 0 ? undefined : { job: filed, rows };
}

/** Figures that came before somebody said where he is wait so long for it; our choice, no source. */
const beforeComingMs = 60 * 60_000;

/** "suction 58", "for job 2?", and then "on site dental": the one job that he was asked about is where he is. */
const isRecent = ({ message: { at } }: InboxRow, message: Message, offered: boolean): boolean =>
  offered && Date.parse(message.at) - Date.parse(at) <= beforeComingMs;

function isThere(memory: Memory, message: Message, job: number): boolean {
  return readNote(memory, message, job).statements.some(
    (one) => one.kind === "status" && /^(?:on_site|done|left_site)$/.test(one.status),
  );
}

/** He came or was coming, and could have come to this job; nothing else is told. */
function isArrival(memory: Memory, { message }: InboxRow, job: number): boolean {
  const { readings, unread, statements } = readNote(memory, message, undefined);
  const came = statements.some((one) => one.kind === "status" && /^on_/.test(one.status));
  const only = statements.every(({ kind }) => kind === "status" || kind === "note");
  if (!came || !only || readings.length + unread.length > 0) return false;
  const place = locate(memory, message);
  return place.kind === "ask" && place.candidates.includes(job);
}

/** What its author said there before, and nobody could file yet. */
export function waitingOf(store: Store, message: Message): readonly InboxRow[] {
  return messagesIn(store, "waiting").filter(
    ({ message: { id, platform, person, channel, thread, deletes, at } }) =>
      person === message.person &&
      channel === message.channel &&
      thread === message.thread &&
      deletes === undefined &&
      !(id === message.id && platform === message.platform) &&
      Date.parse(at) <= Date.parse(message.at),
  );
}

/** The message that an edit rewrites, where it has come and was filed nowhere. */
function editedBy(store: Store, { message }: InboxRow): Message | undefined {
  const { platform, edits } = message;
  const first = edits === undefined ? undefined : findMessage(store, platform, edits)?.message;
  return first !== undefined && jobsFiling(store, first.id).length === 0 ? first : undefined;
}

const yes = /^\s*(?:yes|yep|yeah|yup|ya|y|correct|right|that one|it is)\s*[.!]?\s*$/i;

/**
 * "Yes" to "for job 3 RTU-2?", which the last answer offered alone; a "yes" on one answer is for what
 * that answer offered.
 */
function offeredTo(store: Store, message: Message, rows: readonly InboxRow[]): Release | undefined {
  if (!yes.test(message.text)) return undefined;
  const { answers } = message;
  const asked =
    answers === undefined
      ? rows.at(-1)
      : rows.find(({ message: { id, edits } }) => id === answers || edits === answers);
  const job = jobOffered(store, asked);
  if (job === undefined) return undefined;
  const meant = rows.filter((row) => jobOffered(store, row) === job);
  return { job, rows: answers === undefined ? rows : meant };
}

/** The one job that the answer to a message asked about. */
function jobOffered(store: Store, row: InboxRow | undefined): number | undefined {
  if (row === undefined) return undefined;
  const { platform, id } = row.message;
  const offered = findOut(store, `reply:${platform}:${id}:0`)?.text ?? "";
  const [, first, again] =
    /: (?:for job (\d+) [^?]*\?|kept too, for job (\d+) )/.exec(offered) ?? [];
  const number = first ?? again;
  return number === undefined ? undefined : Number(number);
}

/** "Both parts for the school are in": a report of its own that names the job, no answer. */
const report =
  /\b(?:is|are|was|were|came|got|has|have|went|'s|s)\b.{0,20}\b(?:in|here|ready|arrived|on|off|back|done|ordered|gone|fixed|running|down|up|cold|warm|hot|open|closed|dead)\s*[.!]?\s*$/i;

/** A question, or words to somebody else, that happen to name a job. */
const asksPeople =
  /\?|^\s*(?:any(?:one|body)?|some(?:one|body)|who|whos|what|whats|when|whens|where|wheres|why|how|hows|is|are|was|were|parts? used|hours|did|does|do|has|have|can|could|should|would|will|status|summary|history)\b/i;

function jobSaid(memory: Memory, message: Message): number | undefined {
  const bare = /^\s*(?:job|no\.?|number|#)?\s*(\d{1,6})\s*[.!]?\s*$/i.exec(message.text)?.[1];
  if (bare !== undefined && jobAt(memory, Number(bare)) !== undefined) return Number(bare);
  if (report.test(message.text) || asksPeople.test(message.text)) return undefined;
  if (namesOther(memory, message)) return undefined;
  const named = locateWords(memory, message, { words: message.text, job: -1 });
  return named?.kind === "job" ? named.job : undefined;
}

/** What its author made of it last: of a message and its edits, the newest edit alone says something. */
export function isNewest({ message }: InboxRow, rows: readonly InboxRow[]): boolean {
  const root = message.edits ?? message.id;
  return rows.findLast(({ message: { id, edits } }) => (edits ?? id) === root)?.message === message;
}

/**
 * The entries of what waited, each read in the job's context and at its own time. A message that was
 * rewritten meanwhile keeps its place and its files; its newest words stand for it.
 */
export function releaseDrafts(
  memory: Memory,
  row: InboxRow,
  { job, rows }: Release,
): readonly Draft[] {
  const { message } = row;
  const { edits } = message;
  if (edits === undefined && isNewest(row, rows)) {
    const understood = readNote(memory, message, job);
    return [draftFor(message, job, noteFacts(memory, message, { understood, job }))];
  }
  if (edits === undefined) return [placeDraft(memory, message, job)];
  if (!isNewest(row, rows)) return [];
  const first = editedBy(memory.store, row);
  const understood = readNote(memory, { ...message, at: first?.at ?? message.at }, job);
  const draft = draftFor(message, job, noteFacts(memory, message, { understood, job, edits }));
  // its message was talk, and waits no more
  return first === undefined ? [draft] : [placeDraft(memory, first, job), draft];
}

/** The entry of a message whose edit was filed before it: its time and its files, and no word of it. */
export function placeDraft(memory: Memory, message: Message, job: number): Draft {
  return draftFor(message, job, noteFacts(memory, message, { understood: nothingRead, job }));
}
