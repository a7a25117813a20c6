import { chmodSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { expect, test } from "vitest";
import { openBot, receive } from "../src/bot.ts";
import { schemaSteps } from "../src/record/schema.ts";
import { closeStore, openStore, storeProblem } from "../src/record/store.ts";
import { linesOfDay, playLine } from "./day-checks.ts";

function fresh(): string {
  return join(mkdtempSync(join(tmpdir(), "store-")), "a.db");
}

function made(): string {
  const path = fresh();
  const opened = openStore(path);
  if (!opened.ok) throw new Error(opened.problem);
  closeStore(opened.store);
  return path;
}

function problemOf(path: string, readonly = false): string {
  const opened = openStore(path, { readonly, patience_ms: 50 });
  if (opened.ok) {
    closeStore(opened.store);
    return "";
  }
  return opened.problem;
}

test("a store is made on first opening and opens again", () => {
  const path = made();
  expect(problemOf(path)).toBe("");
  expect(problemOf(path, true)).toBe("");
});

test("every schema step leaves its number in the store", () => {
  const db = new Database(made());
  expect(db.pragma("user_version", { simple: true })).toBe(schemaSteps.length);
  db.close();
});

test("a newer store is refused and left as it is", () => {
  const path = made();
  const db = new Database(path);
  db.pragma(`user_version = ${schemaSteps.length + 1}`);
  db.close();
  expect(problemOf(path)).toMatch(/newer readback/);
  expect(problemOf(path, true)).toMatch(/newer readback/);
});

test("what is not a store is said so: text, another database, a folder, nothing", () => {
  const text = fresh();
  writeFileSync(
    text,
    "this is not a database, but it is long enough to be looked at as one. ".repeat(40),
  );
  expect(problemOf(text)).toMatch(/not a readback store/);
  const other = fresh();
  const db = new Database(other);
  db.exec("CREATE TABLE note (id INTEGER)");
  db.close();
  expect(problemOf(other)).toMatch(/not a readback store/);
  expect(problemOf(tmpdir())).toMatch(/cannot be opened/);
  expect(problemOf(join(tmpdir(), "no", "such", "folder", "a.db"))).toMatch(/cannot be opened/);
  expect(problemOf(fresh(), true)).toMatch(/cannot be opened/);
});

test("a store that another program holds is said so", () => {
  const path = made();
  const db = new Database(path);
  db.exec("BEGIN EXCLUSIVE");
  expect(problemOf(path)).toMatch(/in use by another program/);
  db.exec("ROLLBACK");
  db.close();
  expect(problemOf(path)).toBe("");
});

// the superuser may write anywhere
test.skipIf(process.getuid?.() === 0)("a read-only store is said so", () => {
  const path = made();
  chmodSync(path, 0o444);
  expect(problemOf(path)).toMatch(/read-only/);
});

test("the driver's word for read-only becomes the same sentence", () => {
  const path = made();
  const db = new Database(path, { readonly: true });
  let problem: string | undefined;
  try {
    db.exec("CREATE TABLE more (id INTEGER)");
  } catch (error) {
    problem = storeProblem(error, path);
  }
  expect(problem).toMatch(/read-only/);
});

test("a full disk refuses the message in one sentence and keeps what was there", () => {
  const opened = openStore(fresh());
  if (!opened.ok) throw new Error(opened.problem);
  const { store } = opened;
  const bot = openBot(store, () => "salt");
  for (const line of linesOfDay("day-a").slice(0, 5)) playLine(bot, line);
  const pages = Number(store.db.pragma("page_count", { simple: true }));
  store.db.pragma(`max_page_count = ${pages}`);
  const message = {
    platform: "replay",
    id: "long",
    at: "2026-05-12T12:00:00-05:00",
    channel: "southside",
    person: "sorrel",
    role: "tech" as const,
    text: "x".repeat(1_000_000),
    files: [],
  };
  let problem: string | undefined;
  try {
    receive(bot, { message });
  } catch (error) {
    problem = storeProblem(error, store.path);
  }
  expect(problem).toMatch(/disk .* is full/);
  expect(store.db.prepare("SELECT count(*) FROM inbox").pluck().get()).toBe(5);
  store.db.pragma("max_page_count = 1000000");
  expect(receive(bot, { message })).toBe("new");
});
