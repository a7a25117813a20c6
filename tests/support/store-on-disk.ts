import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { messageOf, replayShape } from "../../adapters/command-line/replay-line.ts";
import { allJobs } from "../../src/bot/memory.ts";
import { showJob } from "../../src/bot/show-job.ts";
import { type Bot, openBot, receive, tick, work } from "../../src/bot.ts";
import { readCursor } from "../../src/record/inbox.ts";
import { saidOf } from "../../src/record/outbox.ts";
import { openStore } from "../../src/record/store.ts";
import { verifyStore } from "../../src/record/verify.ts";

/** A bot on a store on the disk that a platform brings numbered messages to, and its end to compare. */
export function botAt(path: string): Bot {
  const opened = openStore(path, { patience_ms: 20 });
  if (!opened.ok) throw new Error(opened.problem);
  return openBot(opened.store, () => "salt");
}

export const freshPath = (): string => join(mkdtempSync(join(tmpdir(), "on-disk-")), "a.db");

/** Line number `at` of a script comes in, together with the platform's place. */
export function bring(bot: Bot, line: string, at: number): void {
  const { message, bytes } = messageOf(replayShape.parse(JSON.parse(line)));
  const cursor = { platform: message.platform, conversation: "script", value: String(at) };
  receive(bot, { message, bytes, cursor });
}

/** Clocks that came due before a line are asked for. */
export function lookAtClocks(bot: Bot, line: string): void {
  tick(bot, messageOf(replayShape.parse(JSON.parse(line))).message.at);
}

export function workAll(bot: Bot): void {
  for (const { error } of work(bot)) if (error !== undefined) throw new Error(error);
}

export function playAll(bot: Bot, lines: readonly string[]): void {
  lines.forEach((line, at) => {
    lookAtClocks(bot, line);
    bring(bot, line, at);
    workAll(bot);
  });
}

/** How many lines the platform knows as taken. */
export const taken = ({ store }: Bot): number =>
  Number(readCursor(store, "replay", "script") ?? -1) + 1;

export const inboxCount = ({ store }: Bot): number =>
  Number(store.db.prepare("SELECT count(*) FROM inbox").pluck().get());

/** Everything that was recorded and said, and the digest over all entries; fails where the chain does. */
export function endOf(bot: Bot) {
  const { faults, digest } = verifyStore(bot.store);
  if (faults.length > 0) throw new Error(faults.join("\n"));
  const kinds = ["reply", "clock", "alert", "board", "operator"] as const;
  return {
    digest,
    jobs: allJobs(bot.memory).map((job) => showJob(bot.memory, job)),
    said: kinds.flatMap((kind) =>
      saidOf(bot.store, kind).map(({ id, channel, text, edits }) => ({ id, channel, text, edits })),
    ),
  };
}
