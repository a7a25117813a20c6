import { boardKnown } from "../../src/bot/board.ts";
import { allJobs } from "../../src/bot/memory.ts";
import type { Bot } from "../../src/bot.ts";
import { putOut } from "../../src/record/outbox.ts";
import { forgetBoards, lastBoard, standingBoard } from "../../src/record/sending.ts";
import { boardText } from "../../src/show/board.ts";
import type { ChatPlatform } from "../chat-platform.ts";
import { isoWithOffset } from "../local-time.ts";

/** Keeps one message of a channel true: the open jobs, edited in place. */
export interface BoardLoop {
  /** puts a new state into the outbox where it changed and the last one is out long enough */
  readonly refresh: () => void;
  /** the message was removed: the next refresh comes at once */
  readonly gone: () => void;
}

/** Even an unchanged board is sent now and then, to renew its time and to notice that it was removed. */
const atLeastEveryMs = 10 * 60_000;

/** A board that the platform refused is tried again this much later; our choice, no source. */
const refusedMs = 60_000;

/** The board as it stands. */
export function boardNow(bot: Bot, nowMs: number): string {
  return boardText(allJobs(bot.memory), isoWithOffset(new Date(nowMs)), boardKnown(bot.memory));
}

export function boardLoop(
  bot: Bot,
  platform: ChatPlatform & { readonly boardChannel: string },
  now: () => number,
): BoardLoop {
  const { name, boardChannel: channel, boardEveryMs } = platform;
  let lastAt = 0;
  let forced = false;
  return {
    gone: () => {
      forced = true;
    },
    refresh: () => {
      const at = now();
      // a clock that was set back does not hold up the board
      const passedMs = Math.abs(at - lastAt);
      if (passedMs < boardEveryMs) return;
      const last = lastBoard(bot.store, name, channel);
      // the latest state wins: nothing is put behind one that is still on its way
      if (last?.state === "pending" || last?.state === "sending") return;
      // what was refused is not asked for again and again
      if (last?.state === "failed" && passedMs < refusedMs) return;
      const text = boardNow(bot, at);
      const old = passedMs >= atLeastEveryMs;
      if (last?.state === "sent" && body(last.text) === body(text) && !old && !forced) return;
      const standing = standingBoard(bot.store, name, channel);
      lastAt = at;
      forced = false;
      forgetBoards(bot.store, name, channel);
      putOut(bot.store, {
        // a moment never comes twice, so a store that was set back gives no id again
        id: `board:${channel}:${at}`,
        platform: name,
        channel,
        kind: "board",
        text,
        files: [],
        ...(standing === undefined ? {} : { edits: standing.id }),
      });
    },
  };
}

/** All but the first line, which holds the time. */
const body = (text: string): string => text.slice(text.indexOf("\n") + 1);
