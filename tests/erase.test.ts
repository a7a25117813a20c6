import { existsSync, mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { type Bot, openBot, receive, work } from "../src/bot.ts";
import type { Message } from "../src/model.ts";
import { fingerprint } from "../src/record/fingerprint.ts";
import { markOut, saidOf } from "../src/record/outbox.ts";
import { closeStore, openStore } from "../src/record/store.ts";
import { fileKey, getWords } from "../src/record/words-table.ts";
import { run } from "./support/run.ts";

const secret = "the spare key hangs behind the blue door";
/** Bytes that stand nowhere else. */
const picture = (name: string): Uint8Array => Buffer.from(`${name} `.repeat(3000));
const [own, shared] = [picture("his own face"), picture("the plate of the unit")];

function open(path: string): Bot {
  const opened = openStore(path);
  if (!opened.ok) throw new Error(opened.problem);
  let salts = 0;
  return openBot(opened.store, () => `salt ${salts++}`);
}

interface Line extends Pick<Message, "id" | "text"> {
  readonly photos?: readonly Uint8Array[];
}

function say(bot: Bot, { id, text, photos = [] }: Line): void {
  const opens = id === "m1";
  receive(bot, {
    message: {
      ...{ platform: "replay", id, text, channel: "south" },
      at: `2026-05-12T09:0${id.slice(1)}:00-05:00`,
      ...(opens
        ? { person: "maren", role: "dispatcher" }
        : { person: "odo", role: "tech", thread: "m1" }),
      files: photos.map((bytes) => ({
        name: "photo.jpg",
        type: "image/jpeg",
        size: bytes.length,
        sha256: fingerprint(bytes),
      })),
    },
    bytes: photos,
  });
  work(bot);
  for (const row of [...saidOf(bot.store, "reply"), ...saidOf(bot.store, "alert")]) {
    markOut(bot.store, row.id, { state: "sent", wire: JSON.stringify([{ text: row.text }]) });
  }
}

/** A store with two photos, of which one came with another message too. */
function played(): string {
  const path = join(mkdtempSync(join(tmpdir(), "erase-")), "day.db");
  const bot = open(path);
  say(bot, { id: "m1", text: `New job: Gull Wharf OU-3, ${secret}. Odo` });
  say(bot, { id: "m2", text: `nameplate, ${secret}, suction 118`, photos: [own, shared] });
  say(bot, { id: "m3", text: "the plate again", photos: [shared] });
  say(bot, { id: "m4", text: "summary" });
  closeStore(bot.store);
  return path;
}

/** The store's files as they lie on the disk, free space and all. */
const onDisk = (path: string): Buffer =>
  Buffer.concat([path, `${path}-wal`].filter(existsSync).map((file) => readFileSync(file)));

const erase = (path: string, id: string) => run(["erase", "replay", id, "--db", path]);

test("a message's words, its photos and what was answered in its words leave the disk; the record stands", async () => {
  const path = played();
  expect(onDisk(path).includes(secret)).toBe(true);
  expect(onDisk(path).includes("his own face")).toBe(true);
  const before = await run(["verify", path]);
  for (const id of ["m1", "m2"]) expect((await erase(path, id)).exit).toBe(0);
  expect(onDisk(path).includes(secret)).toBe(false);
  expect(onDisk(path).includes("his own face")).toBe(false);
  // the other message is nobody's wish to forget
  expect(onDisk(path).includes("the plate of the unit")).toBe(true);
  const after = await run(["verify", path]);
  expect(after.exit).toBe(0);
  expect(after.out).toEqual(before.out);
  const [job = ""] = (await run(["show", "1", "--db", path, "--json"])).out;
  expect(job).toContain('"quantity":"pressure"');
  expect(job).toContain(fingerprint(own));
});

test("what was erased is erased once, and a photo that comes again is there again", async () => {
  const path = played();
  expect((await erase(path, "m2")).exit).toBe(0);
  expect((await erase(path, "m2")).exit).toBe(1);
  const bot = open(path);
  expect(getWords(bot.store, fileKey(fingerprint(own)))?.erased).toMatch(/^\d{4}-\d\d-\d\d$/);
  say(bot, { id: "m5", text: "here it is", photos: [own] });
  expect(getWords(bot.store, fileKey(fingerprint(own)))?.bytes).toEqual(Buffer.from(own));
  closeStore(bot.store);
});

test("with its last message a shared photo goes too", async () => {
  const path = played();
  for (const id of ["m2", "m3"]) expect((await erase(path, id)).exit).toBe(0);
  expect(onDisk(path).includes("the plate of the unit")).toBe(false);
});
