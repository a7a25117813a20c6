import type { Arrival } from "../../src/bot.ts";
import type { Door } from "../chat-platform.ts";
import { laterTs } from "./ids.ts";

/** The first `ts` that counts in a channel: what was said before the bot came is nobody's reading. */
export const firstMark = (channel: string): string => `first ${channel}`;

/** A channel's place after a message; with it the channel's beginning, where there is none yet. */
export function markPlace(
  door: Pick<Door, "cursor" | "moveCursor">,
  channel: string,
  ts: string,
): NonNullable<Arrival["cursor"]> {
  if (door.cursor(firstMark(channel)) === undefined) door.moveCursor(firstMark(channel), ts);
  const place = laterTs(door.cursor(channel) ?? ts, ts);
  return { platform: "slack", conversation: channel, value: place };
}

const directsKey = "directs";

/** Direct channels in which somebody spoke to the bot: nobody names them in the configuration. */
export function knownDirects(door: Pick<Door, "cursor">): readonly string[] {
  return door.cursor(directsKey)?.split(" ") ?? [];
}

export function noteDirect(door: Pick<Door, "cursor" | "moveCursor">, channel: string): void {
  const known = knownDirects(door);
  if (!channel.startsWith("D") || known.includes(channel)) return;
  door.moveCursor(directsKey, [...known, channel].join(" "));
}
