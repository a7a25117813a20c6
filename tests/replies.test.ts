import { describe, expect, it } from "vitest";
import { allJobs } from "../src/bot/memory.ts";
import { saidOf } from "../src/record/outbox.ts";
import { figureWords } from "../src/show/figure-words.ts";
import { botFor, linesOfDay, playLine } from "./day-checks.ts";
import { lintReply } from "./support/lint-reply.ts";

/** Longest answer of all: a summary or a whole sheet, under a caution. */
const mostLines = 13;

describe.each(["day-a", "day-b"] as const)("what was said on %s", (day) => {
  const bot = botFor(day);
  for (const line of linesOfDay(day)) playLine(bot, line);
  // what a mended answer became is told apart: it names what changed below its old words
  const replies = saidOf(bot.store, "reply").filter((row) => row.edits === undefined);

  it("keeps the rules of a reply, every line of it", () => {
    const faults = replies.flatMap(({ answers, text }) =>
      lintReply(text, { lines: mostLines, words: 170 }).map((fault) => `${answers}: ${fault}`),
    );
    expect(replies.length).toBeGreaterThan(40);
    expect(faults).toEqual([]);
  });

  it("says back every figure that it filed, in the digits that were typed", () => {
    const readings = allJobs(bot.memory).flatMap((job) => job.readings);
    const silent = readings.flatMap((reading) => {
      const answer = saidOf(bot.store, "reply").find((row) => row.answers === reading.message);
      const { number } = figureWords(reading);
      return answer?.text.includes(number) ? [] : [`${reading.message}: ${number}`];
    });
    expect(readings.length).toBeGreaterThan(30);
    expect(silent).toEqual([]);
  });

  it("says every clock, alert and board in plain letters too", () => {
    const rest = (["clock", "alert"] as const).flatMap((kind) => saidOf(bot.store, kind));
    const faults = rest.flatMap(({ text }) => lintReply(text, { lines: 3, words: 40 }));
    expect(faults).toEqual([]);
  });

  it("speaks to no banter and repeats itself to nobody", () => {
    const messages = replies.map((row) => row.answers);
    expect(new Set(messages).size).toBe(messages.length);
  });
});
