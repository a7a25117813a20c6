import { expect, test } from "vitest";
import { jobAt } from "../src/bot/rest.ts";
import { openBot, receive, tick, work } from "../src/bot.ts";
import type { Message } from "../src/model.ts";
import { findOut } from "../src/record/outbox.ts";
import { isCurrent } from "../src/record/readings.ts";
import { openStore } from "../src/record/store.ts";

/** What was corrected stays corrected, whatever is rewritten or removed later on. */
function crew() {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  let salts = 0;
  const bot = openBot(opened.store, () => `salt ${salts++}`);
  let count = 0;
  const say = (text: string, change: Pick<Message, "edits" | "deletes"> = {}): string => {
    const id = `m${++count}`;
    const at = `2026-05-12T09:${String(count).padStart(2, "0")}:00Z`;
    const message = { platform: "terminal", id, at, channel: "south", person: "bram", text };
    receive(bot, { message: { ...message, role: "tech", files: [], ...change } });
    tick(bot, at);
    work(bot);
    return id;
  };
  say("New job: Gull Wharf OU-3, not cooling");
  const stand = (): readonly string[] =>
    (jobAt(bot.memory, 1)?.readings ?? [])
      .filter(isCurrent)
      .map(({ figure }) => `${figure.number} ${figure.unit}`);
  const charged = (): number => (jobAt(bot.memory, 1)?.refrigerant.charged_kg ?? 0) / 0.45359237;
  const doubted = (): number =>
    (jobAt(bot.memory, 1)?.readings ?? []).filter((one) => isCurrent(one) && one.doubtful === true)
      .length;
  const newest = (): string | undefined => findOut(bot.store, `reply:terminal:m${count}:0`)?.text;
  return { say, stand, charged, doubted, newest };
}

test("an earlier message that is rewritten leaves a later correction as it was", () => {
  const { say, stand, charged } = crew();
  const volts = say("L1-L2 471 V");
  say("charged 11.5 lb");
  say("no, charged 12.5 lb");
  expect(charged()).toBeCloseTo(12.5, 4);
  say("L1-L2 470 V", { edits: volts });
  expect(charged()).toBeCloseTo(12.5, 4);
  expect([...stand()].sort()).toEqual(["12.5 lb", "470 V"]);
});

test("an earlier message that is removed leaves a later correction as it was", () => {
  const { say, stand } = crew();
  const shell = say("shell 92 F");
  say("comp 1 lead 1 84 lead 2 86 lead 3 8.4 megohm at 500 v");
  say("sorry lead 3 was 84");
  say("", { deletes: shell });
  expect(stand()).toEqual(["84 megohm", "86 megohm", "84 megohm"]);
});

test("a correction that is rewritten corrects what it corrected before", () => {
  const { say, stand, charged } = crew();
  say("charged 11.5 lb");
  const correction = say("no, charged 12.5 lb");
  say("no, charged 12.6 lb", { edits: correction });
  expect(stand()).toEqual(["12.6 lb"]);
  expect(charged()).toBeCloseTo(12.6, 4);
});

test("a total that was said stays the total when an earlier message is rewritten", () => {
  const { say, charged } = crew();
  const volts = say("L1-L2 471 V");
  say("charged 6 lb");
  say("8 lb in total now");
  expect(charged()).toBeCloseTo(8, 4);
  say("L1-L2 470 V", { edits: volts });
  expect(charged()).toBeCloseTo(8, 4);
});

test("a removal that is itself taken back lets the values stand again", () => {
  const { say, stand, newest } = crew();
  const volts = say("L1-L2 471 V");
  const cross = say("", { deletes: volts });
  expect(stand()).toEqual([]);
  say("", { deletes: cross });
  expect(stand()).toEqual(["471 V"]);
  // what stands again is read back, so that nobody goes by "taken out"
  expect(newest()).toContain("L1-L2 471 V");
  say("", { deletes: volts });
  expect(stand()).toEqual([]);
});

test("a yes that is removed or rewritten leaves the value in doubt as before", () => {
  for (const change of ["deletes", "edits"] as const) {
    const { say, doubted, newest } = crew();
    say("suction 1240 psi, R-410A");
    expect(doubted()).toBe(1);
    const yes = say("yes");
    expect(doubted()).toBe(0);
    say(change === "edits" ? "no idea" : "", { [change]: yes });
    expect(doubted()).toBe(1);
    if (change === "deletes") expect(newest()).toContain("1240 psi is hardly possible");
  }
});
