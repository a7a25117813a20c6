import type { Message } from "../model.ts";
import type { Entry } from "../record/entry.ts";
import { standingOf } from "../record/standing.ts";
import type { Memory } from "./memory.ts";

/** "That" is what its author said last, this short a while ago; our choice, no source. */
const reachMs = 60 * 60_000;

/** The author's last standing entry in this channel, of any job. */
export function lastSaid(memory: Memory, message: Message): Entry | undefined {
  const instant = Date.parse(message.at);
  const own = [...memory.entries.values()].flatMap((entries) =>
    standingOf(entries).filter(
      ({ entry, note, fate, instant: when }) =>
        fate === "stands" &&
        note.opens === undefined &&
        entry.who === message.person &&
        entry.channel === message.channel &&
        when <= instant &&
        instant - when <= reachMs,
    ),
  );
  return own.sort((a, b) => a.instant - b.instant).at(-1)?.entry;
}
