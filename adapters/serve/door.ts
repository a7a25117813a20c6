import { stillAsks } from "../../src/bot/confirm.ts";
import { type Arrival, type Bot, receive } from "../../src/bot.ts";
import { findMessage, moveCursor, readCursor } from "../../src/record/inbox.ts";
import { putOut } from "../../src/record/outbox.ts";
import { isLatestAnswer, messagesSince, outByRemote } from "../../src/record/sending.ts";
import type { ChatPlatform, Door } from "../chat-platform.ts";
import type { Log } from "./log.ts";
import { officeOrder } from "./office-order.ts";
import { sentenceOf } from "./pump.ts";
import type { StoreTrouble } from "./store-trouble.ts";

/** What happens at the other side of the door. */
export interface Inside {
  readonly bot: Bot;
  readonly log: Log;
  readonly now: () => number;
  /** something was kept or put: work and send */
  readonly wake: () => void;
  readonly ordered: () => void;
  readonly connected: (platform: string, is: boolean) => void;
  readonly fatal: (sentence: string) => void;
  readonly boardGone: (platform: string) => void;
  readonly board: () => string;
  readonly trouble: StoreTrouble;
}

export function doorFor(inside: Inside, platform: ChatPlatform): Door {
  const { bot, log, now, wake } = inside;
  const { store } = bot;
  const { name } = platform;
  return {
    deliver: (arrival) => {
      const outcome = taken(inside, platform, arrival);
      if (officeOrder(arrival.message, "UTC") !== undefined) inside.ordered();
      wake();
      return outcome;
    },
    cursor: (conversation) => readCursor(store, name, conversation),
    moveCursor: (conversation, value) => moveCursor(store, { platform: name, conversation, value }),
    kept: (id) => findMessage(store, name, id),
    keptSince: (channel, since) =>
      messagesSince(store, { platform: name, channel }, Date.parse(since)),
    posted: (remoteId) => outByRemote(store, name, remoteId),
    isLatest: (row) => isLatestAnswer(store, row),
    stillAsks: (id) => stillAsks(bot, name, id),
    tell: tellerFor(inside, name),
    sayThere: (key, { channel, thread }, text) => {
      const there = { channel, ...(thread === undefined ? {} : { thread }) };
      const id = `said:${name}:${key}`;
      putOut(store, { id, platform: name, ...there, kind: "alert", text, files: [] });
      wake();
    },
    boardGone: () => inside.boardGone(name),
    board: inside.board,
    storePath: store.path,
    connected: (is) => inside.connected(name, is),
    fatal: (sentence) => inside.fatal(sentence),
    log,
    now,
  };
}

/** What cannot be kept is not lost for it: the platform brings it again. */
function taken(inside: Inside, platform: ChatPlatform, arrival: Arrival): "new" | "repeated" {
  const { bot, trouble } = inside;
  try {
    const outcome = receive(bot, arrival);
    trouble.over();
    return outcome;
  } catch (error) {
    const why = sentenceOf(error, bot.store.path);
    trouble.refused(platform, arrival.message.channel, why);
    throw error;
  }
}

/** One sentence for the operator, once a day for the same trouble. */
export function tellerFor(
  { bot, log, now, wake }: Pick<Inside, "bot" | "log" | "now" | "wake">,
  platform: string,
): (key: string, sentence: string) => void {
  return (key, sentence) => {
    log.error("operator", { platform, says: sentence });
    const day = new Date(now()).toISOString().slice(0, 10);
    putOut(bot.store, {
      id: `operator:${platform}:${key}:${day}`,
      platform,
      channel: "operator",
      kind: "operator",
      text: sentence,
      files: [],
    });
    wake();
  };
}
