import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { dayRecord } from "../src/bot/day-record.ts";
import { knownScope } from "../src/bot/export-scope.ts";
import { allJobs } from "../src/bot/memory.ts";
import { everyJob } from "../src/bot/rest.ts";
import { knownToScope } from "../src/bot/scope-jobs.ts";
import { showJob } from "../src/bot/show-job.ts";
import { type Bot, openBot, receive, tick, work } from "../src/bot.ts";
import type { Message } from "../src/model.ts";
import { eraseMessage } from "../src/record/erase.ts";
import { closeStore, copyStore, openStore } from "../src/record/store.ts";
import { verifyStore } from "../src/record/verify.ts";

/** Jobs of weeks ago rest; whatever is asked of them is answered as if they had been at hand all the time. */

const folder = mkdtempSync(join(tmpdir(), "rest-"));
const path = join(folder, "a.db");
const start = Date.parse("2026-03-02T08:00:00-06:00");
const visits = 24;

function botOn(file: string): Bot {
  const opened = openStore(file);
  if (!opened.ok) throw new Error(opened.problem);
  let count = 0;
  return openBot(opened.store, () => `salt ${count++}`);
}

function say(bot: Bot, at: number, message: Partial<Message> & { readonly id: string }) {
  const said: Message = {
    platform: "replay",
    at: new Date(at).toISOString(),
    channel: "south",
    person: "sorrel",
    role: "tech",
    text: "",
    files: [],
    ...message,
  };
  tick(bot, said.at);
  receive(bot, { message: said });
  const results = work(bot);
  for (const { error } of results) expect(error).toBeUndefined();
  return results.map(({ job, replies }) => ({ job, says: replies.map(({ text }) => text) }));
}

/** Two visits a day: three sites, a unit each, a compressor fitted now and then, gas moved. */
function play(bot: Bot, nth: number): void {
  const at = start + Math.floor(nth / 2) * 86_400_000 + (nth % 2) * 4 * 3600_000;
  const site = ["Gull Wharf", "Hazelport School", "Mill Lane Dairy"][nth % 3] ?? "";
  const thread = `j${nth}`;
  const person = nth % 2 === 0 ? "sorrel" : "bram";
  let minute = 0;
  const line = (text: string): void => {
    minute += 5;
    say(bot, at + minute * 60_000, { id: `${thread}.${minute}`, thread, person, text });
  };
  say(bot, at, {
    id: thread,
    person: "maren",
    role: "dispatcher",
    text: `New job: ${site} RTU-${(nth % 3) + 1}, not cooling`,
  });
  line("on site");
  line(`comp 1 lead 2 to ground ${60 + nth} megohm at 500 V`);
  line(`suction ${110 + nth} psi`);
  if (nth % 4 === 0) line(`recovered ${2 + nth} lb into cylinder R${(nth % 2) + 1}2`);
  if (nth % 6 === 0) line("replaced the compressor");
  line("done, leaving");
}

let rested: Bot;
let whole: Bot;

beforeAll(() => {
  const played = botOn(path);
  for (let nth = 0; nth < visits; nth++) play(played, nth);
  expect(allJobs(played.memory).length).toBeLessThan(visits);
  const copy = join(folder, "whole.db");
  expect(copyStore(played.store, copy)).toBeUndefined();
  closeStore(played.store);
  rested = botOn(path);
  const opened = openStore(copy);
  if (!opened.ok) throw new Error(opened.problem);
  opened.store.db.exec(
    "INSERT OR IGNORE INTO at_hand SELECT job FROM at_rest; DELETE FROM at_rest; DELETE FROM gas_at_rest",
  );
  closeStore(opened.store);
  whole = botOn(copy);
  expect(allJobs(whole.memory)).toHaveLength(visits);
});

/** The same said to both gets the same answer. */
function both(at: number, message: Partial<Message> & { readonly id: string }) {
  const answers = say(rested, at, message);
  expect(answers).toEqual(say(whole, at, message));
  return answers;
}

const shown = (bot: Bot): readonly unknown[] =>
  [...everyJob(bot.memory)].map((job) => showJob(bot.memory, job));

describe("jobs at rest", () => {
  const later = start + 20 * 86_400_000;

  test("are few at hand after a restart, and all of them in the record", () => {
    expect(allJobs(rested.memory).length).toBeLessThan(visits / 2);
    expect(shown(rested)).toEqual(shown(whole));
  });

  test("stand in the exports of their days, sites and units", () => {
    for (let day = 0; day < visits / 2; day++) {
      const name = new Date(start + day * 86_400_000).toISOString().slice(0, 10);
      const strip = ({ supplierOf: _, ...record }: ReturnType<typeof dayRecord>) => record;
      expect(strip(dayRecord(rested.memory, name))).toEqual(strip(dayRecord(whole.memory, name)));
    }
    for (const scope of [
      { kind: "site", site: "gull wharf" },
      { kind: "unit", unit: "rtu 2" },
      { kind: "job", job: 1 },
      { kind: "job", job: 999 },
      { kind: "site", site: "Nowhere" },
    ] as const) {
      expect(knownScope(knownToScope(rested.memory, scope), scope)).toEqual(
        knownScope(knownToScope(whole.memory, scope), scope),
      );
    }
  });

  test("are found by number, by thread and by name", () => {
    expect(both(later, { id: "n1", text: "job 1 suction 99 psi" })[0]?.job).toBe(1);
    expect(both(later + 60_000, { id: "n2", thread: "j3", text: "head 300 psi" })[0]?.job).toBe(4);
    both(later + 120_000, { id: "n3", person: "bram", text: "Hazelport School RTU-2 head 310" });
    both(later + 180_000, { id: "n4", person: "dov", text: "how was it last time at Gull Wharf?" });
    expect(shown(rested)).toEqual(shown(whole));
  });

  test("stand behind the next visit of their unit: history, repeats, cylinders", () => {
    const at = later + 3600_000;
    both(at, {
      id: "k",
      role: "dispatcher",
      person: "maren",
      text: "New job: Gull Wharf RTU-1, warm",
    });
    both(at + 60_000, { id: "k1", thread: "k", text: "on site" });
    both(at + 120_000, {
      id: "k2",
      thread: "k",
      text: "comp 1 lead 2 to ground 20 megohm at 500 V",
    });
    both(at + 180_000, { id: "k3", thread: "k", text: "replaced the compressor" });
    both(at + 240_000, { id: "k4", thread: "k", text: "history?" });
    both(at + 300_000, { id: "k5", thread: "k", text: "recovered 3 lb into cylinder R12" });
    expect(shown(rested)).toEqual(shown(whole));
  });

  test("take edits and deletions of what was said weeks ago", () => {
    both(later + 7200_000, { id: "e1", edits: "j6.15", thread: "j6", text: "suction 111 psi" });
    both(later + 7260_000, { id: "d1", deletes: "j7.10", thread: "j7", person: "bram" });
    expect(shown(rested)).toEqual(shown(whole));
    for (const bot of [rested, whole]) expect(verifyStore(bot.store).faults).toEqual([]);
  });

  test("keep nothing of what is erased", () => {
    const { db } = rested.store;
    const row = db
      .prepare("SELECT job FROM at_rest WHERE site = 'Mill Lane Dairy' LIMIT 1")
      .pluck();
    const job = Number(row.get());
    const opener = db
      .prepare("SELECT message FROM entry WHERE job = ? AND place = 1")
      .pluck()
      .get(job);
    eraseMessage(rested.store, { platform: "replay", id: String(opener) }, "2026-06-01");
    expect(db.prepare("SELECT count(*) FROM at_rest WHERE job = ?").pluck().get(job)).toBe(0);
    expect(db.prepare("SELECT count(*) FROM at_hand WHERE job = ?").pluck().get(job)).toBe(1);
  });
});
