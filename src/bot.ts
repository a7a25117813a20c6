import { alertRow, boardRow } from "./bot/board.ts";
import { cautionedOf, note } from "./bot/cautioned.ts";
import { dueClocks, startOf } from "./bot/due-clocks.ts";
import { planDelete, planEdit } from "./bot/file-change.ts";
import { type Plan, planNote } from "./bot/file-note.ts";
import { judgeJob, lastJudgement } from "./bot/judge-job.ts";
import { learn, type Memory, relearn, remember } from "./bot/memory.ts";
import { mendingRows } from "./bot/mend.ts";
import { readNote } from "./bot/read-note.ts";
import { releaseDraft, releasedBy } from "./bot/release.ts";
import { replyInput, type Worked } from "./bot/reply-input.ts";
import type { Clock, Judgement, Message, Understood } from "./model.ts";
import { appendEntry } from "./record/entries-table.ts";
import {
  findMessage,
  type InboxRow,
  keepMessage,
  markMessage,
  moveCursor,
  nextMessage,
} from "./record/inbox.ts";
import { answersTo, findOut, type OutboxRow, putOut } from "./record/outbox.ts";
import { type Store, storeProblem, transact } from "./record/store.ts";
import { fileKey, putWords } from "./record/words-table.ts";
import { dangerGiven } from "./show/danger.ts";
import { replyTo } from "./show/reply.ts";

/** A bot at work on a store. `salt` gives fresh random text for each thing that is hashed. */
export interface Bot {
  readonly store: Store;
  readonly memory: Memory;
  readonly salt: () => string;
}

export function openBot(store: Store, salt: () => string): Bot {
  return { store, salt, memory: remember(store) };
}

export interface Arrival {
  readonly message: Message;
  /** the bytes of its files, in their order */
  readonly bytes?: readonly Uint8Array[];
  /** the platform's place after this message */
  readonly cursor?: {
    readonly platform: string;
    readonly conversation: string;
    readonly value: string;
  };
}

/**
 * First transaction: keeps the raw message, its files and the platform's place. Only when this
 * has returned may the platform be told that the message arrived.
 */
export function receive(bot: Bot, arrival: Arrival): "new" | "repeated" {
  const { store, salt } = bot;
  return transact(store, () => {
    const isNew = keepMessage(store, cleaned(arrival.message), salt());
    if (isNew) {
      arrival.message.files.forEach((file, index) => {
        const bytes = arrival.bytes?.[index];
        if (bytes !== undefined) {
          putWords(store, fileKey(file.sha256), { salt: salt(), content: Buffer.from(bytes) });
        }
      });
    }
    if (arrival.cursor !== undefined) moveCursor(store, arrival.cursor);
    return isNew ? "new" : "repeated";
  });
}

/** Half a surrogate pair cannot be stored; a mark of the same length takes its place. */
function cleaned(message: Message): Message {
  return { ...message, text: message.text.replace(/\p{Surrogate}/gu, "\uFFFD") };
}

export interface WorkResult {
  readonly message: Message;
  readonly job: number | null;
  readonly understood?: Understood;
  readonly judgement?: Judgement;
  readonly replies: readonly OutboxRow[];
  /** why it was parked */
  readonly error?: string;
}

/** Second transaction, once for each message that waits: entries, answers and the mark "done". */
export function work(bot: Bot): readonly WorkResult[] {
  const results: WorkResult[] = [];
  for (let row = nextMessage(bot.store); row !== undefined; row = nextMessage(bot.store)) {
    results.push(workOn(bot, row));
  }
  return results;
}

function workOn(bot: Bot, row: InboxRow): WorkResult {
  const { store, memory } = bot;
  try {
    return transact(store, () => workOne(bot, row.message));
  } catch (error) {
    // what was derived may hold half of it
    relearn(memory, store);
    // the disk's trouble is not the message's: it stays new and is tried again later
    if (storeProblem(error, store.path) !== undefined) throw error;
    return park(bot, row.message, error);
  }
}

/** A message whose work fails holds up nobody: it is kept aside and the operator is told. */
function park(bot: Bot, message: Message, error: unknown): WorkResult {
  const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
  transact(bot.store, () => {
    markMessage(bot.store, message, { state: "failed", error: text });
    putOut(bot.store, {
      id: `operator:${message.platform}:${message.id}`,
      platform: message.platform,
      channel: "operator",
      kind: "operator",
      answers: message.id,
      text: `Message ${message.id} in ${message.channel} could not be worked on and is kept aside: ${text.split("\n")[0]}`,
      files: [],
    });
  });
  return { message, job: null, replies: [], error: text };
}

function workOne(bot: Bot, message: Message): WorkResult {
  const { store, memory } = bot;
  const plan = planFor(bot, message);
  const was = plan.job === undefined ? undefined : memory.jobs.get(plan.job);
  const before = was === undefined ? undefined : lastJudgement(memory, was);
  learn(
    memory,
    plan.drafts.map((draft) => appendEntry(store, draft, bot.salt())),
  );
  for (const row of plan.released ?? []) file(bot, row, plan.job);
  const job = plan.job === undefined ? undefined : memory.jobs.get(plan.job);
  const now =
    job === undefined
      ? undefined
      : plan.drafts.length === 0
        ? before
        : judgeJob(memory, job, message.at);
  const worked: Worked = {
    message,
    plan,
    was,
    before,
    now,
    cautioned: cautionedOf(memory, message, plan.job),
  };
  const input = replyInput(memory, worked);
  const text = replyTo(input);
  if (text !== undefined) answer(bot, worked, { text, caution: dangerGiven(input) });
  for (const row of mendingRows(store, message, input)) putOut(store, row);
  const alert = alertRow(memory, message, { was, job });
  if (alert !== undefined) putOut(store, alert);
  const board = boardRow(memory, store, message.at);
  if (board !== undefined) putOut(store, board);
  markMessage(store, message, {
    state: plan.problem === undefined ? "done" : "waiting",
    job: plan.job ?? null,
  });
  return {
    message,
    job: plan.job ?? null,
    understood: plan.understood,
    ...(now === undefined ? {} : { judgement: now }),
    replies: answersTo(store, message.platform, message.id),
  };
}

/** Files a message that waited, at its own time. */
function file(bot: Bot, row: InboxRow, job: number | undefined): void {
  if (job === undefined) return;
  const draft = releaseDraft(bot.memory, row, job);
  learn(bot.memory, [appendEntry(bot.store, draft, bot.salt())]);
  markMessage(bot.store, row.message, { state: "done", job });
}

function planFor(bot: Bot, message: Message): Plan {
  if (message.deletes !== undefined) return planDelete(bot.memory, message, message.deletes);
  if (message.edits !== undefined) {
    return planEdit(bot.memory, message, { store: bot.store, original: message.edits });
  }
  const released = releasedBy(bot, message);
  if (released === undefined) return planNote(bot.memory, message);
  const { job, rows } = released;
  return {
    understood: readNote(bot.memory, message, job),
    job,
    opened: false,
    drafts: [],
    released: rows,
  };
}

/** Puts the reply in the outbox; to an edit or a deletion it is an edit of the reply before it. */
function answer(
  bot: Bot,
  worked: Worked,
  said: { readonly text: string; readonly caution: string | undefined },
): void {
  const { message, plan } = worked;
  const changed = message.edits ?? message.deletes;
  const earlier = changed === undefined ? undefined : `reply:${message.platform}:${changed}:0`;
  const mends = earlier !== undefined && findOut(bot.store, earlier) !== undefined;
  const detail = {
    job: plan.job,
    person: message.person,
    day: message.at.slice(0, 10),
    caution: said.caution,
  };
  note(bot.memory.cautioned, detail);
  putOut(bot.store, {
    id: `reply:${message.platform}:${message.id}:0`,
    platform: message.platform,
    channel: message.channel,
    ...(message.thread === undefined ? {} : { thread: message.thread }),
    kind: "reply",
    answers: message.id,
    text: said.text,
    files: [],
    ...(mends ? { edits: earlier } : {}),
    detail: JSON.stringify(detail),
  });
}

/** Asks for what clocks that came due by `now` (ISO) wait for; each asks once. */
export function tick(bot: Bot, now: string): readonly Clock[] {
  const due = dueClocks(bot.memory, now);
  if (due.length === 0) return [];
  try {
    return transact(bot.store, () => due.map((clock) => ring(bot, clock)));
  } catch (error) {
    relearn(bot.memory, bot.store);
    throw error;
  }
}

function ring(bot: Bot, clock: Clock): Clock {
  const { platform, who } = startOf(bot.memory, clock);
  const draft = {
    job: clock.job,
    at: clock.due,
    who,
    platform,
    message: clock.id,
    text: "",
    facts: { kind: "clock", clock: clock.id, outcome: "asked" },
  } as const;
  learn(bot.memory, [appendEntry(bot.store, draft, bot.salt())]);
  putOut(bot.store, {
    id: `clock:${clock.id}`,
    platform,
    channel: clock.channel,
    ...(clock.thread === undefined ? {} : { thread: clock.thread }),
    kind: "clock",
    text: clock.text,
    files: [],
    detail: JSON.stringify({ job: clock.job, due: clock.due }),
  });
  const { id, due, job, channel, thread, text } = clock;
  return { id, due, job, channel, ...(thread === undefined ? {} : { thread }), text };
}

/** What became of a message that had come before. */
export function jobOf(bot: Bot, message: Pick<Message, "platform" | "id">): number | null {
  return findMessage(bot.store, message.platform, message.id)?.job ?? null;
}
