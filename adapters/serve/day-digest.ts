import { z } from "zod";
import type { Bot } from "../../src/bot.ts";
import { moveCursor, readCursor } from "../../src/record/inbox.ts";
import { putOut } from "../../src/record/outbox.ts";
import { transact } from "../../src/record/store.ts";
import { storeDigest } from "../../src/record/store-digest.ts";
import { localTime } from "../../src/show/local-time.ts";
import { isoWithOffset } from "../local-time.ts";

/** Where the day's digest is posted, and when. */
export interface DigestPost {
  readonly platform: string;
  readonly channel: string;
  /** "18:00" on the company's clock */
  readonly at: string;
}

const key = { platform: "serve", conversation: "digest" } as const;
const lastShape = z.object({ day: z.string(), digest: z.string().optional() });

/**
 * Looks whether a day ended, and then puts the record's digest into the outbox: once a day, also
 * after a restart, and only where something was written since the last one. Kept in the channel,
 * where nobody can rewrite it, it proves later what was written by then. A day whose end was slept
 * through is told in the morning. True where something was put.
 */
export function dayDigest(bot: Bot, post: DigestPost): (nowMs: number) => boolean {
  let looked = "";
  return (nowMs) => {
    const day = endedDay(bot, post.at, nowMs);
    if (day === looked) return false;
    const put = transact(bot.store, () => putDigest(bot, post, day));
    looked = day;
    return put;
  };
}

const dayMs = 86_400_000;

/** The last day whose hour has come. */
function endedDay({ memory }: Bot, hour: string, nowMs: number): string {
  const iso = isoWithOffset(new Date(nowMs));
  const zone = memory.settings.time_zone ?? iso.slice(-6);
  const { date, time } = localTime(iso, zone) ?? { date: iso.slice(0, 10), time: "" };
  return time >= hour ? date : new Date(Date.parse(date) - dayMs).toISOString().slice(0, 10);
}

function putDigest({ store }: Bot, { platform, channel }: DigestPost, day: string): boolean {
  const kept = readCursor(store, key.platform, key.conversation);
  const last = kept === undefined ? undefined : lastShape.parse(JSON.parse(kept));
  // a clock that was set back tells no day twice
  if (last !== undefined && day <= last.day) return false;
  const digest = storeDigest(store);
  // when it is first switched on, the days before it are nobody's question
  const due = last !== undefined && digest !== undefined && digest !== last.digest;
  if (due) {
    putOut(store, {
      id: `digest:${platform}:${channel}:${day}`,
      ...{ platform, channel },
      kind: "alert",
      text: `Digest of the record, end of ${day}: ${digest}\nIt proves later what was written by now.`,
      files: [],
    });
  }
  const value = JSON.stringify({ day, ...(due ? { digest } : { digest: last?.digest }) });
  moveCursor(store, { ...key, value });
  return due;
}
