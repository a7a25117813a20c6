import { spawnSync } from "node:child_process";
import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import Database from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { everyJob } from "../src/bot/rest.ts";
import { openBot, receive, work } from "../src/bot.ts";
import { schemaSteps } from "../src/record/schema.ts";
import { closeStore, copyName, openStore } from "../src/record/store.ts";
import { verifyStore } from "../src/record/verify.ts";

/** Stores as earlier versions left them, by the number of their schema. */
const kept = readdirSync("fixtures/records")
  .map((name) => /^v(\d+)\.db\.gz$/.exec(name)?.[1])
  .filter((version) => version !== undefined)
  .map(Number);

function old(version: number): string {
  const path = join(mkdtempSync(join(tmpdir(), "upgrade-")), "a.db");
  writeFileSync(path, gunzipSync(readFileSync(`fixtures/records/v${version}.db.gz`)));
  return path;
}

function opened(path: string) {
  const made = openStore(path);
  if (!made.ok) throw new Error(made.problem);
  return made.store;
}

const versionOf = (path: string): number => {
  const db = new Database(path, { readonly: true });
  const version = Number(db.pragma("user_version", { simple: true }));
  db.close();
  return version;
};

const entriesOf = (path: string): readonly unknown[] => {
  const db = new Database(path, { readonly: true });
  const rows = db.prepare("SELECT * FROM entry ORDER BY seq").all();
  db.close();
  return rows;
};

test("a store of every earlier version is kept here", () => {
  const earlier = Array.from({ length: schemaSteps.length - 1 }, (_, index) => index + 1);
  expect([...kept].sort()).toEqual(earlier);
});

describe.each(kept)("a store of version %i", (version) => {
  test("opens, is upgraded, verifies, shows its jobs and takes a message", () => {
    const path = old(version);
    const before = entriesOf(path);
    const store = opened(path);
    expect(verifyStore(store).faults).toEqual([]);
    const bot = openBot(store, () => "salt");
    const jobs = [...everyJob(bot.memory)];
    expect(jobs.length).toBeGreaterThan(1);
    expect(jobs.flatMap(({ readings }) => readings).length).toBeGreaterThan(5);
    const [job] = jobs;
    const message = {
      platform: "replay",
      id: "after",
      at: "2026-05-12T23:00:00-05:00",
      channel: job?.channel ?? "",
      person: "sorrel",
      role: "tech" as const,
      text: `job ${job?.job} suction 118 psi`,
      files: [],
    };
    receive(bot, { message });
    expect(work(bot).map(({ job: filed, error }) => [filed, error])).toEqual([
      [job?.job, undefined],
    ]);
    expect(verifyStore(store).faults).toEqual([]);
    closeStore(store);
    expect(versionOf(path)).toBe(schemaSteps.length);
    expect(entriesOf(path).slice(0, before.length)).toEqual(before);
  });

  test("is copied first; the copy is the old store, and a second opening leaves it alone", () => {
    const path = old(version);
    const before = entriesOf(path);
    closeStore(opened(path));
    const copy = copyName(path, version);
    expect(versionOf(copy)).toBe(version);
    expect(entriesOf(copy)).toEqual(before);
    const bytes = readFileSync(copy);
    closeStore(opened(path));
    expect(readFileSync(copy)).toEqual(bytes);
    // rolled back: the copy in the store's place is what the older program left
    copyFileSync(copy, path);
    expect(versionOf(path)).toBe(version);
    closeStore(opened(path));
    expect(entriesOf(path)).toEqual(before);
  });

  test("killed in the middle of its upgrade is whole and old, and is upgraded the next time", () => {
    const path = old(version);
    const before = entriesOf(path);
    const steps = JSON.stringify(schemaSteps.slice(version).map(({ sql }) => sql));
    const killed = spawnSync(
      process.execPath,
      [
        "--input-type=module",
        "-e",
        `import Database from "better-sqlite3";
         const db = new Database(${JSON.stringify(path)});
         db.pragma("journal_mode = WAL");
         db.pragma("cache_spill = ON");
         db.exec("BEGIN IMMEDIATE");
         for (const step of ${steps}) db.exec(step);
         db.pragma("user_version = 99");
         process.kill(process.pid, "SIGKILL");`,
      ],
      { encoding: "utf8" },
    );
    expect(killed.signal).toBe("SIGKILL");
    expect(versionOf(path)).toBe(version);
    expect(entriesOf(path)).toEqual(before);
    const store = opened(path);
    expect(verifyStore(store).faults).toEqual([]);
    closeStore(store);
    expect(versionOf(path)).toBe(schemaSteps.length);
  });
});

test("a disk too full for the copy: nothing is upgraded, the store stays as it was", () => {
  const path = old(1);
  // a folder stands where the copy should: it cannot be written
  const blocked = copyName(path, 1);
  writeFileSync(`${blocked}-journal`, "");
  spawnSync("mkdir", [blocked]);
  const made = openStore(path);
  expect(made.ok).toBe(false);
  expect(existsSync(path)).toBe(true);
  expect(versionOf(path)).toBe(1);
});

test("a store made anew is copied nowhere", () => {
  const folder = mkdtempSync(join(tmpdir(), "upgrade-"));
  closeStore(opened(join(folder, "a.db")));
  expect(readdirSync(folder).filter((name) => name.includes("version"))).toEqual([]);
});
