import { beforeAll, expect, test } from "vitest";
import { exportAsked } from "../adapters/serve/export-words.ts";
import { attachedTo, officeWork } from "../adapters/serve/office.ts";
import { openBot, receive, work } from "../src/bot.ts";
import type { Message, Role } from "../src/model.ts";
import { findOut } from "../src/record/outbox.ts";
import { sealOfBytes } from "../src/record/sealed.ts";
import { openStore } from "../src/record/store.ts";
import { getWords, sentKey } from "../src/record/words-table.ts";

/** Tuesday. */
const at = "2026-05-12T23:30:00-05:00";
const asked = (text: string) => exportAsked(text, at, "America/Chicago");
const scope = (text: string) => {
  const found = asked(text);
  return found !== undefined && "scope" in found ? found.scope : found;
};

test.each([
  ["export", { kind: "day", day: "2026-05-12" }],
  ["Export today.", { kind: "day", day: "2026-05-12" }],
  ["@readback, please export yesterday", { kind: "day", day: "2026-05-11" }],
  ["readback export 2026-05-01, please!", { kind: "day", day: "2026-05-01" }],
  ["export 2026-05-01 to 2026-05-09", { kind: "range", day: "2026-05-01", to: "2026-05-09" }],
  [
    "export from 2026-05-01 until 2026-05-09",
    { kind: "range", day: "2026-05-01", to: "2026-05-09" },
  ],
  ["export this week", { kind: "range", day: "2026-05-11", to: "2026-05-12" }],
  ["export last week", { kind: "range", day: "2026-05-04", to: "2026-05-10" }],
  ["export this month", { kind: "range", day: "2026-05-01", to: "2026-05-12" }],
  ["export last month", { kind: "range", day: "2026-04-01", to: "2026-04-30" }],
  ["export job 14", { kind: "job", job: 14 }],
  ["export #14", { kind: "job", job: 14 }],
  ["export this job", "here"],
  ["export site Gull Wharf", { kind: "site", site: "Gull Wharf" }],
  ["export unit OU-3", { kind: "unit", unit: "OU-3" }],
  ["export unit OU-3 at Gull Wharf", { kind: "unit", unit: "OU-3", site: "Gull Wharf" }],
  ["export unit OU-3, Gull Wharf", { kind: "unit", unit: "OU-3", site: "Gull Wharf" }],
])("%s", (text, wanted) => {
  expect(scope(text)).toEqual(wanted);
});

test.each(["export the pump to the shop", "we export tomorrow", "exported today", "import today"])(
  "%s is talk",
  (text) => {
    expect(asked(text)).toBeUndefined();
  },
);

test("days that are none, or the wrong way round, get a sentence", () => {
  expect(asked("export 2026-02-31")).toEqual({ problem: "2026-02-31 is no day." });
  expect(asked("export 2026-05-09 to 2026-05-01")).toEqual({
    problem: "2026-05-09 to 2026-05-01 are no days in a row.",
  });
});

const opened = openStore(":memory:");
if (!opened.ok) throw new Error(opened.problem);
let salts = 0;
const bot = openBot(opened.store, () => `salt ${salts++}`);
let count = 0;

function say(text: string, role: Role, more: Partial<Message> = {}): Message {
  const message: Message = {
    ...{ platform: "replay", id: `m${++count}`, at, channel: "south", person: role, role, text },
    files: [],
    ...more,
  };
  receive(bot, { message });
  return message;
}

/** What the office gets for an order: the sentence at last, and the names of the files. */
async function ordered(text: string, more: Partial<Message> = {}) {
  const { id } = say(text, "office", more);
  officeWork(bot);
  const row = findOut(bot.store, `reply:replay:${id}:0`);
  if (row === undefined) throw new Error("no answer");
  const { text: says, files } = await attachedTo(bot, row);
  const sealed = files.find(({ name }) => name.endsWith(".json"))?.sha256 ?? "";
  const bytes = getWords(bot.store, sentKey(sealed))?.bytes;
  const seal = bytes === undefined ? {} : { seal: sealOfBytes(bytes) };
  return { says, files: files.map(({ name }) => name), ...seal };
}

let thread = "";
beforeAll(() => {
  thread = say("New job: Gull Wharf OU-3, not cooling", "dispatcher").id;
  say("New job: Saltbox Lofts RTU-7, no heat", "dispatcher");
  say("suction 118", "tech", { thread });
  work(bot);
});

test("the office gets a job, a unit, a site and several days where it asks for them", async () => {
  const job = await ordered("export job 1");
  expect(job.says).toMatch(/^The files of job 1, 1 job, revision 1\.\nDigest of the record: /);
  // what no file can prove of itself stands in the channel
  expect(job.says).toMatch(/\nSeal of the files: [0-9a-f]{64}$/);
  expect(job.says.endsWith(`: ${job.seal}`)).toBe(true);
  expect(job.files).toEqual(
    expect.arrayContaining(["job-1-readings.csv", "job-1.xlsx", "job-1-report.pdf", "job-1.json"]),
  );
  const inThread = await ordered("export this job", { thread });
  expect(inThread.says).toMatch(/^The files of job 1,/);
  const unit = await ordered("export unit ou3");
  expect(unit.says).toMatch(/^The files of unit OU-3 at Gull Wharf, 1 job,/);
  const site = await ordered("export site saltbox lofts");
  expect(site.says).toMatch(/^The files of site Saltbox Lofts, 1 job,/);
  expect(site.files).toContain("site-saltbox-lofts.xlsx");
  const days = await ordered("export 2026-05-01 to 2026-05-31");
  expect(days.says).toMatch(/^The files of 2026-05-01 to 2026-05-31, 2 jobs, revision 1\./);
});

test("what the store does not hold is said, with what it does hold, and nothing is sent", async () => {
  expect(await ordered("export job 99")).toEqual({ says: "There is no job 99.", files: [] });
  const site = await ordered("export site Nowhere");
  expect(site.says).toMatch(/^There is no job at "Nowhere"\. Known: Gull Wharf, Saltbox Lofts\.$/);
  expect(site.files).toEqual([]);
  expect((await ordered("export this job", { channel: "elsewhere" })).says).toBe(
    "Which job? Say: export job 14.",
  );
});

test("an order that waits since an earlier version, which named the day alone, is still carried out", async () => {
  const { id } = say("export job 1", "office");
  officeWork(bot);
  const row = findOut(bot.store, `reply:replay:${id}:0`);
  if (row === undefined) throw new Error("no answer");
  const { text } = await attachedTo(bot, { ...row, detail: '{"export":"2026-05-13"}' });
  expect(text).toMatch(/^(The files of|Nothing was recorded on) 2026-05-13/);
});
