import type { Bot } from "./bot/desk.ts";
import { dueClocks, startOf, wasMissed } from "./bot/due-clocks.ts";
import { learn, relearn } from "./bot/memory.ts";
import { type WorkResult, workOne } from "./bot/work-one.ts";
import type { Clock, Message } from "./model.ts";
import { appendEntry } from "./record/entries-table.ts";
import {
  findMessage,
  type InboxRow,
  keepMessage,
  markMessage,
  moveCursor,
  nextMessage,
} from "./record/inbox.ts";
import { putOut } from "./record/outbox.ts";
import { storeProblem, transact } from "./record/store.ts";
import { storable } from "./record/well-formed.ts";
import { fileKey, putFile } from "./record/words-table.ts";

export type { Bot } from "./bot/desk.ts";
export { openBot } from "./bot/open-bot.ts";
export type { WorkResult } from "./bot/work-one.ts";

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
    const message = storable(arrival.message);
    const isNew = keepMessage(store, message, salt());
    if (isNew) {
      message.files.forEach((file, index) => {
        const bytes = arrival.bytes?.[index];
        if (bytes !== undefined) {
          putFile(store, fileKey(file.sha256), { salt: salt(), content: Buffer.from(bytes) });
        }
      });
    }
    if (arrival.cursor !== undefined) moveCursor(store, arrival.cursor);
    return isNew ? "new" : "repeated";
  });
}

/**
 * Second transaction, once for each message that waits: entries, answers and the mark "done".
 * `nowMs`: the clock of who answers at once; what is much older then was not seen, and is answered
 * together.
 */
export function work(
  bot: Bot,
  most = Number.POSITIVE_INFINITY,
  nowMs?: number,
): readonly WorkResult[] {
  const results: WorkResult[] = [];
  while (results.length < most) {
    const row = nextMessage(bot.store);
    if (row === undefined) break;
    results.push(workOn(bot, row, nowMs));
  }
  return results;
}

function workOn(bot: Bot, row: InboxRow, nowMs: number | undefined): WorkResult {
  const { store, memory } = bot;
  try {
    return transact(store, () => workOne(bot, row.message, nowMs));
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

/**
 * Asks for what clocks that came due by `now` (ISO) wait for; each asks once. `when`: "now" where the
 * clock is looked at all the time, so that a short test long overdue was missed and is not asked about.
 */
export function tick(bot: Bot, now: string, when: "now" | "script" = "script"): readonly Clock[] {
  const due = dueClocks(bot.memory, now);
  if (due.length === 0) return [];
  const missed = (clock: Clock): boolean => when === "now" && wasMissed(clock, now);
  try {
    return transact(bot.store, () => {
      for (const clock of due.filter(missed)) close(bot, clock, "missed");
      return due.filter((clock) => !missed(clock)).map((clock) => ring(bot, clock));
    });
  } catch (error) {
    relearn(bot.memory, bot.store);
    throw error;
  }
}

/** Keeps what became of a clock; says where its question goes. */
function close(bot: Bot, clock: Clock, outcome: "asked" | "missed"): string {
  const { platform, who } = startOf(bot.memory, clock);
  const draft = {
    job: clock.job,
    at: clock.due,
    who,
    platform,
    message: clock.id,
    text: "",
    facts: { kind: "clock", clock: clock.id, outcome },
  } as const;
  learn(bot.memory, [appendEntry(bot.store, draft, bot.salt())]);
  return platform;
}

function ring(bot: Bot, clock: Clock): Clock {
  const platform = close(bot, clock, "asked");
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
