import type { Message, Understood } from "../model.ts";
import { type InboxRow, waitingAfter } from "../record/inbox.ts";
import { answersTo } from "../record/outbox.ts";
import { messageBefore } from "../record/said-when.ts";
import type { Bot } from "./desk.ts";
import type { Plan } from "./file-note.ts";
import { locate } from "./locate.ts";
import { readNote } from "./read-note.ts";

/** Arrivals so close together, as when signal returns, get one answer; our choice, no source. */
const burstMs = 3000;
/** What waited longer than this was not seen while the bot was away; our choice, no source. */
const staleMs = 10 * 60_000;

/**
 * Whether the answer to a message is left to a later one that waits already: readings alone, of one
 * job, that came in a burst or while nobody was there to answer. `nowMs`: absent, nothing is stale.
 */
export function isHeld(bot: Bot, message: Message, plan: Plan, nowMs?: number): boolean {
  if (bot.answersTogether !== true) return false;
  if (plan.job === undefined || !isPlain(plan.understood, message)) return false;
  if (plan.says !== undefined || plan.problem !== undefined || plan.opened) return false;
  const until = isStale(message, nowMs)
    ? Number.MAX_SAFE_INTEGER
    : Date.parse(message.at) + burstMs;
  const [next] = waitingAfter(bot.store, message, until);
  return next !== undefined && answersOn(bot, next, plan.job);
}

const isStale = ({ at }: Pick<Message, "at">, nowMs: number | undefined): boolean =>
  nowMs !== undefined && nowMs - Date.parse(at) > staleMs;

/** Nothing but readings: nothing is asked, left unread, begun or told. */
function isPlain(understood: Understood, message: Message): boolean {
  const { readings, statements, unread, ask } = understood;
  const plain = readings.every(({ doubtful, corrects }) => doubtful !== true && corrects !== true);
  const isChange = message.edits !== undefined || message.deletes !== undefined;
  return (
    readings.length > 0 &&
    plain &&
    !isChange &&
    statements.length + unread.length + ask.length + message.files.length === 0
  );
}

/** Whether a waiting message will be answered on this job. */
function answersOn({ memory }: Bot, { message }: InboxRow, job: number | undefined): boolean {
  const found = locate(memory, message);
  if (found.kind !== "job" || found.job !== job) return false;
  return isPlain(readNote(memory, message, job), message);
}

/** Ids of the messages that left their answer to this one. */
export function heldBefore(
  { store }: Bot,
  message: Message,
  known: { readonly job: number; readonly nowMs: number | undefined },
): readonly string[] {
  const { platform, person, id, channel, thread } = message;
  const of = { platform, person, id, job: known.job };
  const ids: string[] = [];
  let since = Date.parse(message.at);
  // what was said in the same moment may stand behind it
  let earlier = messageBefore(store, of, { instant: since, seq: Number.MAX_SAFE_INTEGER });
  for (; earlier !== undefined; earlier = messageBefore(store, of, earlier)) {
    const same = earlier.channel === channel && (earlier.thread ?? undefined) === thread;
    const near = since - earlier.instant <= burstMs || isStale(earlier, known.nowMs);
    if (!same || !near) break;
    // its answer told of those before it
    if (answersTo(store, platform, earlier.id).length > 0) break;
    since = earlier.instant;
    ids.push(earlier.id);
  }
  return ids;
}
