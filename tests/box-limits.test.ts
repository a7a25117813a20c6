import { expect, test } from "vitest";
import { delimiterOf, rowsOf } from "../adapters/command-line/csv-rows.ts";
import { relearn } from "../src/bot/memory.ts";
import { openBot, receive, tick, work } from "../src/bot.ts";
import { importRows } from "../src/record/import/import-rows.ts";
import { saidOf } from "../src/record/outbox.ts";
import { openStore } from "../src/record/store.ts";

/** What a company says of its own boxes, from its file to the board, the alert and the answer. */
function house(list: string) {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  const store = opened.store;
  let salts = 0;
  const bot = openBot(store, () => `salt ${salts++}`);
  const take = (text: string): void => {
    const rows = rowsOf(text);
    if (typeof rows === "string") throw new Error(rows);
    const taken = importRows(store, rows, { delimiter: delimiterOf(text) });
    if (typeof taken === "string" || taken.bad.length > 0) throw new Error(JSON.stringify(taken));
  };
  take("setting,value\nboard_channel,board\nboard_platform,terminal\ntime_zone,UTC\n");
  take("Tag,Site,What it is\nWIC-4,Gull Wharf,walk-in cooler\nWIF-1,Gull Wharf,walk-in freezer\n");
  if (list !== "") take(list);
  relearn(bot.memory, store);
  let count = 0;
  const said = (kind: "alert" | "reply" | "board"): string =>
    saidOf(store, kind).at(-1)?.text ?? "";
  const say = (text: string): void => {
    count++;
    const at = `2026-05-12T09:${String(count).padStart(2, "0")}:00Z`;
    const message = {
      ...{ platform: "terminal", id: `m${count}`, at, channel: "south", person: "bram", text },
      ...{ role: "tech" as const, files: [] },
    };
    receive(bot, { message });
    tick(bot, at);
    work(bot);
  };
  return { say, said };
}

test("a cooler, a freezer and a box without a limit of their own are each held against theirs", () => {
  const { say, said } = house(
    "Threshold;Min;Max;Unit;Applies to\nBox temperature;34;38;F;WIC-4\nFreezer box;;0;°F;WIF-1\n",
  );
  say("New job: Gull Wharf WIC-4, warm");
  say("box 37 F");
  expect(said("reply")).toContain("GOOD: box 37 F, within the company's 34 F to 38 F");
  say("box 40 F");
  expect(said("reply")).toContain("BAD: box 40 F, over the company's 34 F to 38 F");
  expect(said("alert")).toContain("product over 38 F");
  expect(said("board")).toContain("box 40 F, over 38 F since 09:03");
  say("box 31 F");
  expect(said("reply")).toContain("WATCH: box 31 F, under the company's");
  expect(said("board")).toContain("box 31 F, under 34 F since 09:04");
  say("New job: Gull Wharf WIF-1, warm");
  say("product 12 F");
  expect(said("reply")).toContain("BAD: product 12 F, over the company's 0 F");
  expect(said("alert")).toContain("product over 0 F");
});

test("without a list the usual limit stands on the board, and nobody gives a verdict", () => {
  const { say, said } = house("");
  say("New job: Gull Wharf WIC-4, warm");
  say("box 46 F");
  expect(said("reply")).not.toMatch(/GOOD|WATCH|BAD/);
  expect(said("board")).toContain("box 46 F, over 41 F since 09:02");
});
