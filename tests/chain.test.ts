import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { expect, test } from "vitest";
import { type Bot, openBot, receive, work } from "../src/bot.ts";
import { readLinks } from "../src/record/entries-table.ts";
import { eraseMessage } from "../src/record/erase.ts";
import { closeStore, openStore, type Store } from "../src/record/store.ts";
import { verifyLinks, verifyStore } from "../src/record/verify.ts";
import { linesOfDay, playLine } from "./day-checks.ts";

const secret = "the key hangs behind the blue door";

function storeWithDay(): { readonly path: string; readonly bot: Bot } {
  const path = join(mkdtempSync(join(tmpdir(), "chain-")), "day.db");
  const opened = openStore(path);
  if (!opened.ok) throw new Error(opened.problem);
  let count = 0;
  const bot = openBot(opened.store, () => `salt ${count++}`);
  for (const line of linesOfDay("day-a").slice(0, 25)) playLine(bot, line);
  receive(bot, {
    message: {
      platform: "replay",
      id: "secret",
      at: "2026-05-12T12:00:00-05:00",
      channel: "southside",
      person: "maren",
      role: "dispatcher",
      text: `New job: Gull Wharf OU-3, ${secret}. Dov`,
      files: [],
    },
  });
  work(bot);
  return { path, bot };
}

/** Changes a store behind the program's back, triggers and all. */
function tamper(path: string, sql: string): void {
  const db = new Database(path);
  db.exec("DROP TRIGGER entry_is_never_changed; DROP TRIGGER entry_is_never_removed;");
  db.exec(sql);
  db.close();
}

function faultsOf(path: string, digest?: string): readonly string[] {
  const opened = openStore(path);
  if (!opened.ok) throw new Error(opened.problem);
  const { faults } = verifyStore(opened.store, digest);
  closeStore(opened.store);
  return faults;
}

function digestOf(store: Store): string {
  return verifyStore(store).digest;
}

test("an untouched record is intact, with and without its digest", () => {
  const { path, bot } = storeWithDay();
  const digest = digestOf(bot.store);
  closeStore(bot.store);
  expect(faultsOf(path)).toEqual([]);
  expect(faultsOf(path, digest)).toEqual([]);
});

test("entries can be neither changed nor removed in the ordinary way", () => {
  const { bot } = storeWithDay();
  expect(() => bot.store.db.exec("UPDATE entry SET at = '2000' WHERE job = 1")).toThrow(
    /only ever added/,
  );
  expect(() => bot.store.db.exec("DELETE FROM entry")).toThrow(/only ever added/);
});

const changes = [
  [
    "a fact",
    "UPDATE entry SET facts = replace(facts, 'dispatcher', 'office') WHERE job = 1 AND place = 1",
  ],
  ["a time", "UPDATE entry SET at = '2026-03-31T08:30:18-05:00' WHERE job = 1 AND place = 1"],
  ["a person", "UPDATE entry SET person = person + 1 WHERE job = 1 AND place = 1"],
  ["a hash", "UPDATE entry SET hash = 'x' || substr(hash, 2) WHERE job = 1 AND place = 1"],
  [
    "a place in the middle",
    "DELETE FROM entry WHERE job = (SELECT job FROM entry GROUP BY job HAVING count(*) > 1 LIMIT 1) AND place = 1",
  ],
  [
    "words",
    "UPDATE words SET content = replace(content, 'blue', 'red') WHERE key = 'message:replay:secret'",
  ],
  ["words taken away without a stub", "DELETE FROM words WHERE key LIKE 'entry:1.%'"],
] as const;

for (const [what, sql] of changes) {
  test(`shows that ${what} was altered`, () => {
    const { path, bot } = storeWithDay();
    closeStore(bot.store);
    tamper(path, sql);
    expect(faultsOf(path)).not.toEqual([]);
  });
}

test("only the digest shows that the last entry of a job, or a whole job, is missing", () => {
  for (const sql of [
    "DELETE FROM entry WHERE seq = (SELECT max(seq) FROM entry)",
    "DELETE FROM entry WHERE job = (SELECT max(job) FROM entry)",
  ]) {
    const { path, bot } = storeWithDay();
    const digest = digestOf(bot.store);
    closeStore(bot.store);
    tamper(path, sql);
    expect(faultsOf(path)).toEqual([]);
    expect(faultsOf(path, digest)).not.toEqual([]);
  }
});

test("a digest still holds after more was written, and a rewritten chain fails it", () => {
  const { bot } = storeWithDay();
  const before = readLinks(bot.store);
  const digest = verifyLinks(before).digest;
  for (const line of linesOfDay("day-a").slice(25)) playLine(bot, line);
  expect(verifyStore(bot.store, digest).faults).toEqual([]);
  const other = openStore(":memory:");
  if (!other.ok) throw new Error(other.problem);
  const rewritten = openBot(other.store, () => "another salt");
  for (const line of linesOfDay("day-a")) playLine(rewritten, line);
  expect(verifyStore(other.store).faults).toEqual([]);
  expect(verifyStore(other.store, digest).faults).not.toEqual([]);
});

test("erasing a message leaves no trace of its words in the file, and the record intact", () => {
  const { path, bot } = storeWithDay();
  const digest = digestOf(bot.store);
  const everything = (): string =>
    ["inbox", "entry", "words", "outbox", "person"]
      .flatMap((table) => bot.store.db.prepare(`SELECT * FROM ${table}`).all())
      .map((row) => JSON.stringify(row))
      .join("\n");
  expect(everything()).toContain(secret);
  expect(eraseMessage(bot.store, { platform: "replay", id: "secret" }, "2026-06-01")).toBe(true);
  expect(everything()).not.toContain(secret);
  expect(everything()).toContain("2026-06-01");
  closeStore(bot.store);
  expect(faultsOf(path, digest)).toEqual([]);
});
