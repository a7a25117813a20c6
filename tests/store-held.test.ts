import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { expect, test } from "vitest";
import { work } from "../src/bot.ts";
import { closeStore, storeProblem } from "../src/record/store.ts";
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

/** Another program holds the store, again and again: what is refused is said, and comes through later. */

const holder = `
import Database from "better-sqlite3";
const db = new Database(process.argv[1]);
db.pragma("journal_mode = WAL");
process.stdin.on("data", (word) => {
  db.exec(String(word).trim() === "hold" ? "BEGIN EXCLUSIVE" : "ROLLBACK");
  process.stdout.write("done\\n");
});
`;

async function holderOf(path: string): Promise<{
  readonly child: ChildProcess;
  readonly tell: (word: "hold" | "free") => Promise<void>;
}> {
  const child = spawn(process.execPath, ["--input-type=module", "-e", holder, path], {
    stdio: ["pipe", "pipe", "inherit"],
  });
  return {
    child,
    tell: async (word) => {
      child.stdin.write(`${word}\n`);
      await once(child.stdout, "data");
    },
  };
}

const lines = linesOfDay("day-a").slice(0, 12);

test("messages that come while another program holds the store, and work that is due then", async () => {
  const quiet = botAt(freshPath());
  playAll(quiet, lines);
  const bot = botAt(freshPath());
  const { store } = bot;
  const { child, tell } = await holderOf(store.path);
  const refused = (step: () => unknown): void => {
    let problem: string | undefined;
    try {
      step();
    } catch (error) {
      problem = storeProblem(error, store.path);
    }
    expect(problem).toMatch(/in use by another program/);
  };
  for (const [at, line] of lines.entries()) {
    lookAtClocks(bot, line);
    const kept = inboxCount(bot);
    await tell("hold");
    refused(() => bring(bot, line, at));
    expect(inboxCount(bot)).toBe(kept);
    await tell("free");
    bring(bot, line, at);
    await tell("hold");
    refused(() => work(bot));
    await tell("free");
    workAll(bot);
  }
  child.kill();
  expect(endOf(bot)).toEqual(endOf(quiet));
  closeStore(store);
  closeStore(quiet.store);
});
