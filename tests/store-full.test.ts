import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { expect, test } from "vitest";
import type { Bot } from "../src/bot.ts";
import { closeStore, type Store, storeProblem } from "../src/record/store.ts";
import { verifyStore } from "../src/record/verify.ts";
import { linesOfDay } from "./day-checks.ts";
import {
  botAt,
  bring,
  endOf,
  freshPath,
  inboxCount,
  lookAtClocks,
  playAll,
  workAll,
} from "./support/store-on-disk.ts";

/** The disk fills up at every place where it can, again and again: nothing that was taken is lost, nothing is half done. */

const script = linesOfDay("day-b");
const full = /^The disk that holds .* is full; nothing of this step was kept\.$/;

function quiet(lines: readonly string[]): ReturnType<typeof endOf> {
  const bot = botAt(freshPath());
  playAll(bot, lines);
  const end = endOf(bot);
  closeStore(bot.store);
  return end;
}

/** Does something as often as the disk refuses it; says how often that was. `refused`: after each refusal. */
function insist(store: Store, step: () => void, refused: () => void): number {
  for (let count = 0; ; count++) {
    try {
      step();
      return count;
    } catch (error) {
      expect(storeProblem(error, store.path)).toMatch(full);
      refused();
    }
  }
}

/** Plays a script on a disk that refuses whenever `refused` has not just made room. */
function playRefused(bot: Bot, lines: readonly string[], room: { begin(): void; more(): void }) {
  const { store } = bot;
  let refusals = 0;
  lines.forEach((line, at) => {
    const step = (run: () => void): void => {
      const kept = inboxCount(bot);
      room.begin();
      refusals += insist(store, run, () => {
        // what was taken stays taken, what was refused left nothing
        expect(inboxCount(bot)).toBe(kept);
        room.more();
      });
    };
    step(() => lookAtClocks(bot, line));
    step(() => bring(bot, line, at));
    step(() => workAll(bot));
  });
  return refusals;
}

test("a file that may not grow refuses at each page; with room, all goes on as if nothing had been", () => {
  const bot = botAt(freshPath());
  const { db } = bot.store;
  const pages = (): number => Number(db.pragma("page_count", { simple: true }));
  let most = 0;
  const refusals = playRefused(bot, script, {
    begin: () => {
      most = pages();
      db.pragma(`max_page_count = ${most}`);
    },
    more: () => {
      most += 1;
      db.pragma(`max_page_count = ${most}`);
    },
  });
  expect(refusals).toBeGreaterThan(10);
  expect(endOf(bot)).toEqual(quiet(script));
  closeStore(bot.store);
});

/** Lets one statement that writes fail, the n-th after `begin`, and after each failure the one behind it. */
function failingWrites(store: Store) {
  let allowed = 0;
  let done = 0;
  const guard = (statement: Database.Statement): void => {
    const run = statement.run.bind(statement);
    statement.run = (...values: unknown[]) => {
      if (done === allowed)
        throw new Database.SqliteError("database or disk is full", "SQLITE_FULL");
      done += 1;
      return run(...values);
    };
  };
  for (const statement of store.prepared.values()) guard(statement);
  const set = store.prepared.set.bind(store.prepared);
  store.prepared.set = (text, statement) => {
    guard(statement);
    return set(text, statement);
  };
  return {
    begin: () => {
      allowed = 0;
      done = 0;
    },
    more: () => {
      allowed += 1;
      done = 0;
    },
  };
}

test("each single write is refused once: nothing of its step is kept, and the next try gives the same record", () => {
  const lines = script.slice(0, 24);
  const bot = botAt(freshPath());
  const refusals = playRefused(bot, lines, failingWrites(bot.store));
  expect(refusals).toBeGreaterThan(lines.length * 4);
  expect(endOf(bot)).toEqual(quiet(lines));
  closeStore(bot.store);
});

test("the program, where the system lets no file grow: it says so, ends, and goes on later", () => {
  const main = "dist/program/main.js";
  expect(existsSync(main), "the build is missing: npm run build").toBe(true);
  const folder = mkdtempSync(join(tmpdir(), "full-"));
  const [db, quietDb] = [join(folder, "a.db"), join(folder, "quiet.db")];
  const replay = ["replay", "fixtures/days/day-b/day.jsonl", "--db"];
  const run = (blocks: string, store = db) =>
    spawnSync(
      "sh",
      ["-c", `ulimit -f ${blocks} && exec "$@"`, "sh", process.execPath, main, ...replay, store],
      { encoding: "utf8" },
    );
  expect(run("unlimited", quietDb).status).toBe(0);
  const answered = new Set<string>();
  // blocks of 512 or 1024 bytes, as the shell has it: some messages, some more, all
  const ends: (number | null)[] = [];
  for (const blocks of ["200", "400", "unlimited"]) {
    const { status, stdout, stderr } = run(blocks);
    ends.push(status);
    const lines = stdout.split("\n").filter((line) => line !== "");
    for (const line of lines) if (/"replies":\[\{/.test(line)) answered.add(JSON.parse(line).id);
    if (status !== 0) {
      expect(stderr.trim()).toMatch(/(?:disk .* is full|disk reports an error)[^\n]*$/);
    }
  }
  expect(ends[0]).toBe(1);
  expect(ends.at(-1)).toBe(0);
  const bot = botAt(db);

  expect(verifyStore(bot.store).faults).toEqual([]);
  const { jobs, said } = endOf(bot);
  const other = botAt(quietDb);
  const undisturbed = endOf(other);
  closeStore(other.store);
  expect(jobs).toEqual(undisturbed.jobs);
  expect(said).toEqual(undisturbed.said);
  // an answer is told once, and none is left out
  const replied = said
    .filter(({ id }) => id.startsWith("reply:"))
    .map(({ id }) => id.split(":")[2]);
  expect(answered).toEqual(new Set(replied));
  closeStore(bot.store);
});

const built = "dist/adapters/command-line";
const program = "dist/program/main.js";

/** Runs node where no file may grow beyond so many kilobytes. */
function runWithin(kilobytes: number, words: readonly string[]) {
  const blocks = kilobytes * Number(blocksAKilobyte());
  return spawnSync(
    "sh",
    ["-c", `ulimit -f ${blocks} && exec "$@"`, "sh", process.execPath, ...words],
    { encoding: "utf8" },
  );
}

/** A shell counts in blocks of 512 or of 1024 bytes. */
function blocksAKilobyte(): number {
  const folder = mkdtempSync(join(tmpdir(), "blocks-"));
  const path = join(folder, "a");
  spawnSync("sh", ["-c", 'ulimit -f 4; head -c 9999 /dev/zero > "$1"', "sh", path]);
  return statSync(path).size === 4096 ? 1 : 2;
}

test("a backup that finds no room leaves no half copy, wherever it stops, and the store whole", () => {
  const folder = mkdtempSync(join(tmpdir(), "full-backup-"));
  const [db, copy] = [join(folder, "a.db"), join(folder, "copy.db")];
  const bot = botAt(db);
  playAll(bot, script);
  const { digest } = endOf(bot);
  closeStore(bot.store);
  const size = Math.ceil(statSync(db).size / 1024);
  let refused = 0;
  // below 40 the store itself cannot be opened: its log has an index of 32 kB
  for (let kilobytes = 40; kilobytes < size; kilobytes += Math.ceil(size / 6)) {
    const { status, stderr } = runWithin(kilobytes, [program, "backup", copy, "--db", db]);
    expect([kilobytes, status]).toEqual([kilobytes, 1]);
    expect(stderr).toMatch(/^\S+copy\.db (?:.* is full|cannot be .*: the disk reports an error)/m);
    expect(readdirSync(folder).filter((name) => name.startsWith("copy"))).toEqual([]);
    refused += 1;
  }
  expect(refused).toBeGreaterThan(3);
  expect(runWithin(2 * size, [program, "backup", copy, "--db", db]).status).toBe(0);
  for (const path of [db, copy]) {
    const again = botAt(path);
    expect(endOf(again).digest).toBe(digest);
    closeStore(again.store);
  }
});

test("an export that finds no room at any of its files leaves the whole ones, no half one, and says so", () => {
  const writer = `
    import { writeFiles } from "./${built}/write-files.js";
    const [out, large] = process.argv.slice(1);
    async function* files() {
      for (let at = 0; at < 4; at++)
        yield { name: at + ".csv", type: "text/csv", bytes: new Uint8Array(at === Number(large) ? 200_000 : 900) };
    }
    const io = { line: () => {}, complain: (text) => process.stderr.write(text) };
    process.exitCode = await writeFiles(files(), out, io);
  `;
  for (const large of [0, 1, 2, 3]) {
    const folder = mkdtempSync(join(tmpdir(), "full-export-"));
    const words = ["--input-type=module", "-e", writer, folder, String(large)];
    const { status, stderr } = runWithin(64, words);
    expect(status).toBe(1);
    expect(stderr).toMatch(
      /can't be written to .*: (?:the disk is full|no file may grow so large there)\.$/,
    );
    expect(readdirSync(folder).sort()).toEqual(["0.csv", "1.csv", "2.csv"].slice(0, large));
  }
});
