import type { ChatPlatform } from "../chat-platform.ts";
import type { Log } from "./log.ts";

/** A store that does not take what is said: told in the room, since nothing else there would show it. */
export interface StoreTrouble {
  /** what was said in a channel could not be kept */
  readonly refused: (platform: ChatPlatform, channel: string, why: string) => void;
  /** the store took something again */
  readonly over: () => void;
  readonly problem: () => string | undefined;
}

/** The same channel hears of it again after so long; our choice, no source. */
const againMs = 30 * 60_000;

export function storeTrouble(log: Log, now: () => number): StoreTrouble {
  const told = new Map<string, number>();
  let problem: string | undefined;
  return {
    refused: (platform, channel, why) => {
      if (problem !== why) log.error("not_kept", { platform: platform.name, says: why });
      problem = why;
      const place = `${platform.name} ${channel}`;
      if (now() - (told.get(place) ?? Number.NEGATIVE_INFINITY) < againMs) return;
      told.set(place, now());
      // past the store, which cannot hold it
      const part = {
        key: `not-kept:${channel}:${now()}`,
        kind: "text",
        of: "alert",
        channel,
        text: "What is said here is not kept just now: the bot's store takes nothing. It is read and answered once that is mended; the operator has the reason in the log.",
      } as const;
      void platform
        .send(part, { keepBody: () => {} })
        .catch((error: unknown) => log.warn("not_told", { why: String(error) }));
    },
    over: () => {
      problem = undefined;
    },
    problem: () => problem,
  };
}
