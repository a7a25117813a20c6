import type { Bot } from "../../src/bot.ts";
import { markOut, type OutboxRow, type OutboxState } from "../../src/record/outbox.ts";
import { saidAt } from "../../src/record/said-when.ts";
import { type Lane, nextOut, waitingLanes } from "../../src/record/sending.ts";
import { storeProblem } from "../../src/record/store.ts";
import { fileKey, getWords, letSentGo, sentKey } from "../../src/record/words-table.ts";
import { zoneOf } from "../../src/show/local-time.ts";
import type { ChatPlatform, Outcome, Part } from "../chat-platform.ts";
import { isoWithOffset } from "../local-time.ts";
import type { Log } from "./log.ts";
import { attachedTo } from "./office.ts";
import { partsBefore, planParts, wireOf } from "./parts.ts";
import { type Waits, waits } from "./waits.ts";

/** Sends what waits in the outbox: one row after another in each lane, lanes side by side. */
export interface Sender {
  /** looks whether something waits */
  readonly kick: () => void;
  /** resolves when nothing is under way and nothing waits that could go now */
  readonly idle: () => Promise<void>;
  /** lets what is under way come to its end, and begins nothing more */
  readonly stop: () => Promise<void>;
}

export interface Sending {
  readonly bot: Bot;
  readonly platform: ChatPlatform;
  readonly log: Log;
  readonly now: () => number;
  readonly tell: (key: string, sentence: string) => void;
  /** whether an answer to a message of that time may be out without the store knowing */
  readonly mayBeForgotten: (saidAtMs: number) => boolean;
}

export function startSender(sending: Sending): Sender {
  const running = new Map<string, Promise<void>>();
  const waiting = waits();
  const keyOf = (lane: Lane): string => `${lane.channel}\n${lane.board}`;
  const run = async (lane: Lane): Promise<void> => {
    for (let failures = 1; !waiting.stopped(); ) {
      try {
        const row = nextOut(sending.bot.store, lane);
        if (row === undefined) return;
        await carry(sending, row, waiting);
        failures = 1;
      } catch (error) {
        // a full disk or a fault of ours: nothing is lost, it is tried again
        sending.log.error("sending_failed", { why: reasonOf(sending, error) });
        await waiting.pause(Math.min(30_000, 500 * 2 ** failures++));
      }
    }
  };
  return {
    kick: () => {
      if (waiting.stopped()) return;
      for (const lane of waitingLanes(sending.bot.store, sending.platform.name)) {
        const key = keyOf(lane);
        if (running.has(key)) continue;
        const done = run(lane).finally(() => running.delete(key));
        running.set(key, done);
      }
    },
    idle: async () => {
      while (running.size > 0) await Promise.all(running.values());
    },
    stop: async () => {
      waiting.stop();
      await Promise.all(running.values());
    },
  };
}

const reasonOf = ({ bot }: Sending, error: unknown): string =>
  storeProblem(error, bot.store.path) ?? (error instanceof Error ? error.message : String(error));

/** No platform asks to wait longer than this; our choice, no source. */
const mostDelayMs = 3600_000;

/** One row, until it is out, refused, or the program stops. */
async function carry(sending: Sending, row: OutboxRow, waiting: Waits): Promise<void> {
  const { bot, platform, now } = sending;
  if (row.channel === "operator" && platform.operatorChannel === undefined) {
    // it was logged when it was put there
    markOut(bot.store, row.id, { state: "sent" });
    return;
  }
  const nowIso = isoWithOffset(new Date(now()));
  const zone = bot.memory.settings.time_zone ?? zoneOf(nowIso);
  const scene = { store: bot.store, platform, now: nowIso, zone };
  const carrying: Carrying = {
    sending,
    row,
    waiting,
    parts: [...(partsBefore(row) ?? planParts(scene, { ...row, ...(await attachedTo(bot, row)) }))],
    ...beginning(sending, row),
  };
  const waitMs = row.not_before === undefined ? 0 : Date.parse(row.not_before) - now();
  // a clock that was set back since would hold the row up for as long
  if (waitMs > 0 && waitMs <= mostDelayMs) await waiting.pause(waitMs);
  for (let index = 0; index < carrying.parts.length; index++) {
    const end = await carryPart(carrying, index);
    if (end === "stopped") return;
    if (end === "refused") return mark(carrying, "failed");
  }
  mark(carrying, "sent");
  if (carrying.parts.some(({ file }) => file !== undefined)) letSentGo(bot.store);
  sending.log.info("sent", { platform: platform.name, id: row.id, answers: row.answers });
}

/** Where the program died in the middle, or forgot, the row may be out already: it is looked for first. */
function beginning({ bot, now, mayBeForgotten }: Sending, row: OutboxRow) {
  if (row.state === "sending" && row.attempt_at !== undefined) {
    return { look: true, since: Date.parse(row.attempt_at) };
  }
  const said =
    row.wire !== undefined || row.answers === undefined
      ? undefined
      : saidAt(bot.store, row.platform, row.answers);
  const saidMs = said === undefined ? now() : Date.parse(said);
  return said !== undefined && mayBeForgotten(saidMs)
    ? { look: true, since: saidMs }
    : { look: false, since: now() };
}

interface Carrying {
  readonly sending: Sending;
  readonly row: OutboxRow;
  readonly waiting: Waits;
  readonly parts: Part[];
  look: boolean;
  /** when the attempt began that may have got through, ms */
  since: number;
}

function mark(
  carrying: Carrying,
  state: OutboxState,
  more: { readonly not_before?: string } = {},
): void {
  const { sending, row, parts } = carrying;
  const first = parts.find((part) => part.kind === "text")?.remote ?? parts[0]?.remote;
  markOut(sending.bot.store, row.id, {
    state,
    wire: wireOf(parts),
    ...(state === "sending" ? { attempt_at: new Date(carrying.since).toISOString() } : {}),
    ...(first === undefined ? {} : { remote_id: first }),
    ...more,
  });
}

type End = "done" | "refused" | "stopped";

async function carryPart(carrying: Carrying, index: number): Promise<End> {
  const { sending, waiting } = carrying;
  for (let failures = 0; ; ) {
    const part = carrying.parts[index];
    if (part === undefined || part.remote !== undefined) return "done";
    if (waiting.stopped()) return "stopped";
    const outcome = carrying.look
      ? await lookForIt(carrying, part, index)
      : await attempt(carrying, part, index);
    if (outcome === undefined) continue;
    if (outcome.kind === "sent") return posted(carrying, index, outcome.remote);
    if (outcome.kind === "refused") return refused(carrying, part, outcome.why);
    if (outcome.kind === "gone") {
      if (!anew(carrying, index)) return refused(carrying, part, outcome.why);
      continue;
    }
    failures += 1;
    const {
      row,
      sending: { log, platform },
    } = carrying;
    log.warn("not_sent", {
      platform: platform.name,
      id: row.id,
      kind: outcome.kind,
      why: outcome.why,
    });
    if (outcome.kind === "later") {
      const until = sending.now() + outcome.retryMs;
      mark(carrying, "pending", { not_before: new Date(until).toISOString() });
      await waiting.pause(outcome.retryMs);
    } else {
      carrying.look = true;
      if (failures > 1) await waiting.pause(Math.min(30_000, 500 * 2 ** failures));
    }
  }
}

/** A post shows in a channel's history a moment after it was taken. */
async function lookForIt(
  carrying: Carrying,
  part: Part,
  index: number,
): Promise<Outcome | undefined> {
  const { sending, waiting } = carrying;
  // the attempt was never later than now, whatever the clock showed then
  const since = Math.min(carrying.since, sending.now());
  const settleMs = since + (sending.platform.settleMs ?? 0) - sending.now();
  if (settleMs > 0) await waiting.pause(settleMs);
  if (waiting.stopped()) return undefined;
  const found = await sending.platform.find(part, since, contextOf(carrying, part, index));
  if (found.kind === "found") return { kind: "sent", remote: found.remote };
  if (found.kind === "unclear") return found;
  carrying.look = false;
  return undefined;
}

async function attempt(carrying: Carrying, part: Part, index: number): Promise<Outcome> {
  const { sending } = carrying;
  carrying.since = sending.now();
  mark(carrying, "sending");
  return sending.platform.send(part, contextOf(carrying, part, index));
}

/** What the bot made itself, else what was sent to it. */
function bytesOf({ sending: { bot } }: Carrying, sha256: string): Uint8Array | undefined {
  const made = getWords(bot.store, sentKey(sha256)) ?? getWords(bot.store, fileKey(sha256));
  return made?.bytes;
}

function contextOf(carrying: Carrying, part: Part, index: number) {
  const before = carrying.parts[index - 1]?.remote;
  const bytes =
    part.kind === "upload" && part.file !== undefined
      ? bytesOf(carrying, part.file.sha256)
      : undefined;
  return {
    keepBody: (body: string) => {
      carrying.parts[index] = { ...part, body };
      mark(carrying, "sending");
    },
    ...(before === undefined ? {} : { before }),
    ...(bytes === undefined ? {} : { bytes }),
  };
}

function posted(carrying: Carrying, index: number, remote: string): End {
  const part = carrying.parts[index];
  if (part === undefined) return "done";
  carrying.look = false;
  // what was changed in place keeps its id, and is pinned already
  const stands = part.replaces ?? remote;
  carrying.parts[index] = { ...part, remote: stands };
  const next = carrying.parts[index + 1];
  if (next?.kind === "pin" && part.replaces !== undefined) {
    carrying.parts[index + 1] = { ...next, remote: stands };
  }
  if (index + 1 < carrying.parts.length) mark(carrying, "pending");
  return "done";
}

/** Without what it should change, or the thread it should stand in, it is a post of its own. */
function anew(carrying: Carrying, index: number): boolean {
  const part = carrying.parts[index];
  if (part === undefined) return false;
  const { replaces, thread, body: _, ...plain } = part;
  if (replaces === undefined && thread === undefined) return false;
  const kept = replaces !== undefined && thread !== undefined ? { thread } : {};
  carrying.parts[index] = { ...plain, ...kept };
  return true;
}

function refused(carrying: Carrying, part: Part, why: string): End {
  const { sending, row } = carrying;
  const { name } = sending.platform;
  sending.tell(
    `${name}:${part.kind}:${part.channel}:${why}`,
    `${row.id} could not be sent: ${why}`,
  );
  if (part.kind !== "pin") return "refused";
  // a board that is not pinned is still a board
  const index = carrying.parts.indexOf(part);
  carrying.parts[index] = { ...part, remote: "not pinned" };
  return "done";
}
