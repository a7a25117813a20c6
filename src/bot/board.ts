import type { Job, Message } from "../model.ts";
import { equipmentOf } from "../record/case.ts";
import { limitsFor } from "../record/limits-for.ts";
import { type Outgoing, saidIn } from "../record/outbox.ts";
import type { Store } from "../record/store.ts";
import { alertText } from "../show/alert.ts";
import { type BoardKnown, boardText } from "../show/board.ts";
import { allJobs, type Memory } from "./memory.ts";
import { namesOf } from "./people.ts";

/** The first line tells the time; a board that differs in nothing else is not sent again. */
const withoutTime = (text: string): string => text.split("\n").slice(1).join("\n");

/** Names and the company's own limits for boxes. */
export function boardKnown(memory: Memory): BoardKnown {
  const { limits } = memory.registry;
  const names = namesOf(memory);
  if (!limits.some(({ limit }) => limit === "box_temperature")) return { names };
  return {
    names,
    boxLimitOf: (job) =>
      limitsFor(equipmentOf(job, memory.registry), job.site, limits).box_temperature,
  };
}

/** The dispatcher's board as an edit of the one before it, where it changed. */
export function boardRow(memory: Memory, store: Store, now: string): Outgoing | undefined {
  const { board_channel: channel, board_platform: platform } = memory.settings;
  if (channel === undefined || platform === undefined) return undefined;
  const text = boardText(allJobs(memory), now, boardKnown(memory));
  const { count, last } = saidIn(store, { kind: "board", platform, channel });
  if (last !== undefined && withoutTime(last.text) === withoutTime(text)) return undefined;
  return {
    id: `board:${channel}:${count + 1}`,
    platform,
    channel,
    kind: "board",
    text,
    files: [],
    ...(last === undefined ? {} : { edits: `board:${channel}:1` }),
  };
}

/** A post of its own for the dispatcher where a person must act now. */
export function alertRow(
  memory: Memory,
  message: Message,
  jobs: { readonly was: Job | undefined; readonly job: Job | undefined },
): Outgoing | undefined {
  const { board_channel: channel, board_platform: platform } = memory.settings;
  if (channel === undefined || platform === undefined || jobs.job === undefined) return undefined;
  const text = alertText(jobs.was, jobs.job, boardKnown(memory));
  if (text === undefined) return undefined;
  const id = `alert:${message.platform}:${message.id}`;
  return { id, platform, channel, kind: "alert", text, files: [] };
}
