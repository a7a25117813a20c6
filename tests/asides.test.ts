import { describe, expect, test } from "vitest";
import { relearn } from "../src/bot/memory.ts";
import { everyJob } from "../src/bot/rest.ts";
import { showJob } from "../src/bot/show-job.ts";
import { type Bot, openBot, receive, tick, work } from "../src/bot.ts";
import type { Message } from "../src/model.ts";
import { readEntries } from "../src/record/entries-table.ts";
import { answersTo, saidOf } from "../src/record/outbox.ts";
import { writeSetting } from "../src/record/settings.ts";
import { openStore } from "../src/record/store.ts";

function open(): Bot {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const bot: Bot = { ...openBot(opened.store, () => "salt"), answersTogether: true };
  hear(bot, "o", "08:00:00", "New job: Gull Wharf OU-3, leaks. Bram", "maren");
  hear(bot, "h", "08:20:00", "on site gull wharf");
  work(bot);
  return bot;
}

function hear(bot: Bot, ...said: readonly [id: string, time: string, text: string, who?: string]) {
  const [id, time, text, person = "bram"] = said;
  const message: Message = {
    platform: "test",
    id,
    at: `2026-05-12T${time}-05:00`,
    channel: "south",
    person,
    role: person === "maren" ? "dispatcher" : "tech",
    text,
    files: [],
  };
  receive(bot, { message });
}

const answers = (bot: Bot, id: string): readonly string[] =>
  answersTo(bot.store, "test", id).map(({ text }) => text);

const at = (time: string): number => Date.parse(`2026-05-12T${time}-05:00`);

describe("a near miss", () => {
  const planted = "the grinder kicked back toward my knee";
  const bot = open();
  writeSetting(bot.store, "safety_channel", "safety");
  relearn(bot.memory, bot.store);
  hear(bot, "n", "09:00:00", `near miss: ${planted}`);
  work(bot);

  test("goes to the safety person alone", () => {
    const told = saidOf(bot.store, "alert").filter(({ text }) => text.includes(planted));
    expect(told.map(({ channel }) => channel)).toEqual(["safety"]);
    expect(told[0]?.text).not.toMatch(/bram/i);
  });

  test("stands in no job, entry or answer", () => {
    const shown = JSON.stringify([...everyJob(bot.memory)].map((job) => showJob(bot.memory, job)));
    expect(shown + JSON.stringify(readEntries(bot.store))).not.toContain(planted);
    expect(answers(bot, "n").join()).not.toContain(planted);
  });
});

describe("readings that come together", () => {
  const all = (bot: Bot, ids: readonly string[]): readonly number[] =>
    ids.map((id) => answers(bot, id).length);

  test("in a burst have one answer, with every figure", () => {
    const bot = open();
    hear(bot, "a", "09:00:00", "suction 122 psig");
    hear(bot, "b", "09:00:02", "suction line 54");
    hear(bot, "c", "09:00:05", "head 355 psig");
    work(bot);
    expect(all(bot, ["a", "b", "c"])).toEqual([0, 0, 1]);
    for (const figure of ["122", "54", "355"]) expect(answers(bot, "c")[0]).toContain(figure);
  });

  test("further apart have an answer each", () => {
    const bot = open();
    hear(bot, "a", "09:00:00", "suction 122 psig");
    hear(bot, "b", "09:00:04", "suction line 54");
    work(bot);
    expect(all(bot, ["a", "b"])).toEqual([1, 1]);
  });

  test("a burst leaves no question, doubt or other job unanswered", () => {
    const bot = open();
    hear(bot, "a", "09:00:00", "suction 122 psig");
    hear(bot, "b", "09:00:01", "recovered 12");
    hear(bot, "c", "09:00:02", "head 355 psig");
    work(bot);
    expect(all(bot, ["a", "b", "c"])).toEqual([1, 1, 1]);
    expect(answers(bot, "b")[0]).toContain("?");
  });

  test("after an outage have one answer a job, at their own times", () => {
    const bot = open();
    hear(bot, "a", "09:00:00", "suction 122 psig");
    hear(bot, "b", "09:20:00", "suction line 54");
    hear(bot, "c", "10:05:00", "head 355 psig");
    work(bot, 100, at("12:00:00"));
    expect(all(bot, ["a", "b", "c"])).toEqual([0, 0, 1]);
    for (const figure of ["122", "54", "355"]) expect(answers(bot, "c")[0]).toContain(figure);
    expect([...everyJob(bot.memory)][0]?.readings.map(({ taken }) => taken.slice(11, 16))).toEqual([
      "09:00",
      "09:20",
      "10:05",
    ]);
  });
});

test("a short clock that came due while the bot was away is closed, not asked", () => {
  const bot = open();
  hear(bot, "v", "09:00:00", "vacuum isolated at 380 microns");
  work(bot);
  expect(tick(bot, "2026-05-12T09:12:00-05:00", "now")).toHaveLength(1);
  const other = open();
  hear(other, "v", "09:00:00", "vacuum isolated at 380 microns");
  work(other);
  const rung = tick(other, "2026-05-12T12:00:00-05:00", "now");
  expect(rung.filter(({ text }) => /micron/i.test(text))).toEqual([]);
  const closed = readEntries(other.store).filter(
    ({ facts }) => facts.kind === "clock" && facts.outcome === "missed",
  );
  expect(closed).toHaveLength(1);
});

test("two people's values on one point both stand until one is chosen, and one question is put", () => {
  const bot = open();
  hear(bot, "a", "09:00:00", "comp 1 lead 2 84 meg at 500");
  hear(bot, "b", "09:00:03", "OU-3 comp 1 lead 2 12 meg at 500", "tamsin");
  work(bot);
  const rows = () =>
    ([...everyJob(bot.memory)][0]?.readings ?? []).filter(
      ({ replaced_by }) => replaced_by === undefined,
    );
  expect(rows().map(({ who }) => who)).toEqual(["bram", "tamsin"]);
  const asked = [...answers(bot, "a"), ...answers(bot, "b")].filter((text) => text.includes("?"));
  expect(asked).toHaveLength(1);
  hear(bot, "c", "09:01:00", "bram's", "tamsin");
  work(bot);
  expect(rows().map(({ who }) => who)).toEqual(["bram"]);
});
