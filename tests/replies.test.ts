import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { everyJob } from "../src/bot/rest.ts";
import { openBot, receive, work } from "../src/bot.ts";
import { saidOf } from "../src/record/outbox.ts";
import { openStore } from "../src/record/store.ts";
import { figureWords } from "../src/show/figure-words.ts";
import { botFor, linesOfDay, playLine } from "./day-checks.ts";
import { lintReply } from "./support/lint-reply.ts";

const noteShape = z.object({
  text: z.union([z.string(), z.array(z.string())]),
  before: z.array(z.string()).optional(),
});

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
    const readings = [...everyJob(bot.memory)].flatMap((job) => job.readings);
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

describe("what is said to each note of the corpus, in a job of its own", () => {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const bot = openBot(opened.store, () => "salt");
  const notes = ["typed", "dictated", "mixed"].flatMap((name) =>
    readFileSync(`fixtures/notes/${name}.jsonl`, "utf8")
      .split("\n")
      .filter((line) => line !== ""),
  );

  function say(id: string, text: string, thread: string) {
    const at = "2026-05-12T10:00:00-05:00";
    const role = id.startsWith("open") ? ("dispatcher" as const) : ("tech" as const);
    const from = { platform: "x", channel: "c", thread, person: `person of ${thread}`, role };
    receive(bot, { message: { ...from, id, at, text, files: [] } });
    return work(bot)[0];
  }

  it.each(notes.map((line, index) => [noteShape.parse(JSON.parse(line)), index] as const))(
    "%j",
    (note, index) => {
      const thread = `t${index}`;
      say(`open ${index}`, `New job: Site ${index} RTU-${index}, warm`, thread);
      for (const [step, text] of [...(note.before ?? []), note.text].flat().entries()) {
        const done = say(`note ${index} ${step}`, text, thread);
        const reply = done?.replies.find((row) => row.kind === "reply" && row.edits === undefined);
        const cautions = done?.judgement?.cautions.map((caution) => caution.says) ?? [];
        const danger = cautions.some((says) => reply?.text.startsWith(says));
        const readings = done?.understood?.readings.length ?? 0;
        // a status said beside readings has a line of its own
        const status = done?.understood?.statements.some((one) => one.kind === "status") ?? false;
        const room = status ? { lines: 13, words: 90 } : {};
        expect(
          reply === undefined ? [] : lintReply(reply.text, { readings, danger, ...room }),
        ).toEqual([]);
      }
    },
  );
});
