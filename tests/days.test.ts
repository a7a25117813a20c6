import { expect, test } from "vitest";
import { relearn } from "../src/bot/memory.ts";
import { everyJob } from "../src/bot/rest.ts";
import { showJob } from "../src/bot/show-job.ts";
import { saidOf } from "../src/record/outbox.ts";
import { botFor, linesOfDay, playLine, scoreDay } from "./day-checks.ts";

/** How many of each day's expectations hold: none may get worse. */
const pinned = {
  "day-a": 228,
  "day-b": 233,
  "day-j": 316,
  "day-k": 264,
  "day-l": 454,
  "day-m": 225,
  "day-n": 337,
  "day-o": 329,
  "day-p": 306,
  "day-q": 363,
  "day-r": 271,
  "day-s": 248,
  "day-t": 416,
  "day-u": 429,
  "day-v": 420,
  "day-w": 329,
  "day-x": 290,
  "day-y": 257,
  "day-z": 432,
  "day-aa": 233,
} as const;

for (const day of [
  "day-a",
  "day-b",
  "day-j",
  "day-k",
  "day-l",
  "day-m",
  "day-n",
  "day-o",
  "day-p",
  "day-q",
  "day-r",
  "day-s",
  "day-t",
  "day-u",
  "day-v",
  "day-w",
  "day-x",
  "day-y",
  "day-z",
  "day-aa",
] as const) {
  test(`${day}: the expectations that held still hold`, () => {
    const { total, failed } = scoreDay(day);
    console.log(`${day}: ${total - failed.length} of ${total} expectations hold`);
    if (failed.length > 0) console.log(failed.join("\n"));
    expect(total - failed.length).toBeGreaterThanOrEqual(pinned[day]);
  });

  test(`${day}: read back from the store, the records are the same`, () => {
    const bot = botFor(day);
    for (const line of linesOfDay(day)) playLine(bot, line);
    const records = (): string =>
      JSON.stringify(
        [...everyJob(bot.memory)].map((job) => showJob(bot.memory, job)),
        null,
        1,
      );
    const before = records();
    relearn(bot.memory, bot.store);
    expect(JSON.parse(records())).toEqual(JSON.parse(before));
  });

  test(`${day}: played twice into one store changes nothing`, () => {
    const bot = botFor(day);
    const lines = linesOfDay(day);
    for (const line of lines) playLine(bot, line);
    const jobs = JSON.stringify([...everyJob(bot.memory)].map((job) => showJob(bot.memory, job)));
    const said = saidOf(bot.store, "reply");
    for (const line of lines) playLine(bot, line);
    expect(JSON.stringify([...everyJob(bot.memory)].map((job) => showJob(bot.memory, job)))).toBe(
      jobs,
    );
    expect(saidOf(bot.store, "reply")).toEqual(said);
  });
}
