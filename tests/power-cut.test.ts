import { mkdtempSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import type { Bot } from "../src/bot.ts";
import { closeStore } from "../src/record/store.ts";
import { linesOfDay } from "./day-checks.ts";
import { type Chance, chanceFrom } from "./support/mutate.ts";
import {
  botAt,
  bring,
  endOf,
  freshPath,
  inboxCount,
  lookAtClocks,
  taken,
  workAll,
} from "./support/store-on-disk.ts";

/**
 * The power fails: of what was written to the store's log since the disk was last waited for, any part
 * may be missing or be rubbish. Nothing that a waited-for write kept is lost, what is left is whole, and
 * once the platform has brought again what its place tells, record and answers are those of a quiet day.
 * READBACK_CUTS: how often.
 */
const script = linesOfDay("day-b");
const cuts = Number(process.env.READBACK_CUTS ?? 6);
const sector = 512;

/** The store's two files as they are now. */
interface Disk {
  readonly file: Buffer;
  readonly log: Buffer;
}

const diskOf = (path: string): Disk => ({
  file: readFileSync(path),
  log: readFileSync(`${path}-wal`),
});

/** A day's two halves, the log moved into the file between them; the log's length after each commit. */
interface Recorded {
  readonly first: Disk;
  /** the file after the first half's log was moved into it */
  readonly moved: Buffer;
  readonly second: Disk;
  readonly commits: readonly Commit[];
}

interface Commit {
  readonly half: "first" | "second";
  readonly length: number;
  readonly messages: number;
}

let day: Recorded;
let quiet: ReturnType<typeof endOf>;

beforeAll(() => {
  const bot = botAt(freshPath());
  const { db, path } = bot.store;
  db.pragma("wal_autocheckpoint = 0");
  const commits: Commit[] = [];
  const half = script.length >> 1;
  const play = (name: Commit["half"], from: number, to: number): void => {
    // the log is written over from its beginning, and what stands behind is old
    let end = 0;
    const note = (): void => {
      end = name === "first" ? statSync(`${path}-wal`).size : end + framesSince(bot, end);
      commits.push({ half: name, length: end, messages: inboxCount(bot) });
    };
    for (const [at, line] of script.entries()) {
      if (at < from || at >= to) continue;
      lookAtClocks(bot, line);
      bring(bot, line, at);
      note();
      workAll(bot);
      note();
    }
  };
  play("first", 0, half);
  const first = diskOf(path);
  db.pragma("wal_checkpoint(PASSIVE)");
  const moved = readFileSync(path);
  play("second", half, script.length);
  day = { first, moved, second: diskOf(path), commits };
  quiet = endOf(bot);
  closeStore(bot.store);
});

/** Bytes of the log that belong to its present round, beyond a length: frames with the head's salt. */
function framesSince(bot: Bot, from: number): number {
  const log = readFileSync(`${bot.store.path}-wal`);
  const head = 32;
  const frame = 24 + log.readUInt32BE(8);
  const salt = log.subarray(16, 24);
  let at = Math.max(from, head);
  while (at + frame <= log.length && log.subarray(at + 8, at + 16).equals(salt)) at += frame;
  return at - from;
}

/** Opens what the disk came back with, lets the platform bring again what is missing, and compares. */
function comesBack(disk: Disk): { readonly kept: number } {
  const path = join(mkdtempSync(join(tmpdir(), "power-")), "a.db");
  writeFileSync(path, disk.file);
  writeFileSync(`${path}-wal`, disk.log);
  const bot = botAt(path);
  endOf(bot);
  const kept = inboxCount(bot);
  workAll(bot);
  for (const [at, line] of script.entries()) {
    if (at < taken(bot)) continue;
    lookAtClocks(bot, line);
    bring(bot, line, at);
    workAll(bot);
  }
  expect(endOf(bot)).toEqual(quiet);
  closeStore(bot.store);
  return { kept };
}

/** The log up to a place; behind it each sector may be there, or hold what it held before, or rubbish. */
function torn(log: Buffer, at: number, chance: Chance, before: Buffer): Buffer {
  const left = Buffer.from(log);
  for (let from = at; from < log.length; from += sector - (from % sector)) {
    const to = Math.min(log.length, from + sector - (from % sector));
    const fate = chance.upTo(4);
    if (fate === 0) left.fill(0, from, to);
    else if (fate === 1) left.fill(chance.upTo(256), from, to);
    else if (fate === 2) left.set(before.subarray(from, to), from);
  }
  return chance.upTo(2) === 0 ? left : left.subarray(0, at);
}

const seeds = Array.from({ length: cuts }, (_, at) => 20260512 + at);

describe("a power cut", () => {
  test.each(seeds)("takes what was not waited for, and no more (%i)", (seed) => {
    const chance = chanceFrom(seed);
    const half = seed % 2 === 0 ? "first" : "second";
    const { log } = day[half];
    const whole = day.commits.filter((commit) => commit.half === half);
    // the last write that was waited for, and a moment in the middle of the next
    const index = chance.upTo(whole.length - 1);
    const [done, next] = [whole[index], whole[index + 1]];
    if (done === undefined || next === undefined) throw new Error("no commits");
    const at = done.length + chance.upTo(Math.max(1, next.length - done.length));
    const [file, before] =
      half === "first" ? [day.first.file, Buffer.alloc(0)] : [day.moved, day.first.log];
    const { kept } = comesBack({ file, log: torn(log, at, chance, before) });
    expect(kept).toBeGreaterThanOrEqual(done.messages);
    // what stood in the log whole may be kept though nobody waited for it
    expect(kept).toBeLessThanOrEqual(whole.at(-1)?.messages ?? 0);
  });

  test.each(seeds.slice(0, Math.ceil(cuts / 3)))(
    "while the log is moved into the file (%i)",
    (seed) => {
      const chance = chanceFrom(seed);
      const file = Buffer.from(day.moved);
      for (let from = 0; from < file.length; from += sector) {
        // a sector as it was before, or never written
        if (chance.upTo(2) === 0) continue;
        file.fill(0, from, from + sector);
        file.set(day.first.file.subarray(from, from + sector), from);
      }
      const { kept } = comesBack({ file, log: day.first.log });
      expect(kept).toBe(day.commits.findLast(({ half }) => half === "first")?.messages);
    },
  );
});
