import { createHash } from "node:crypto";
import { existsSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, describe, expect, test } from "vitest";
import { allJobs } from "../src/bot/memory.ts";
import { putOut } from "../src/record/outbox.ts";
import { copyStore } from "../src/record/store.ts";
import { fileKey, getWords, putWords } from "../src/record/words-table.ts";
import {
  boardRoom,
  closeScene,
  freshFolder,
  joined,
  openScene,
  opsRoom,
  type Scene,
  south,
  startBot,
  until,
} from "./support/slack-crew.ts";
import type { Fault } from "./support/slack-stand-in.ts";

const scenes: Scene[] = [];
async function scene(options: Parameters<typeof openScene>[0] = {}): Promise<Scene> {
  const made = await openScene(options);
  scenes.push(made);
  return made;
}
afterEach(async () => {
  for (const one of scenes.splice(0)) expect(await closeScene(one)).toEqual([]);
});

const said = ({ standIn }: Scene, channel: string): readonly string[] =>
  standIn.bot(channel).map(({ text }) => text);
const opening = "New job: Gull Wharf OU-3, not cooling. Sorrel";
const reading = (lead: number): string =>
  `OU-3 comp 1 lead ${lead} to ground ${80 + lead} megohm at 500 V`;

/** Lets something go wrong with the first calls of a method. */
function failFirst(
  made: Scene,
  method: string,
  faults: readonly Fault[],
  about: (args: Record<string, string>) => boolean = () => true,
): void {
  const left = [...faults];
  made.standIn.fault = (name, args) => (name === method && about(args) ? left.shift() : undefined);
}

describe("an answer whose fate is unclear", () => {
  test.each([
    ["the connection is cut after it was posted", { kind: "cut", afterStoring: true }],
    ["the connection is cut before", { kind: "cut", afterStoring: false }],
    ["503 after it was posted", { kind: "status", status: 503, afterStoring: true }],
    ["503 before", { kind: "status", status: 503, afterStoring: false }],
    ["internal_error", { kind: "error", error: "internal_error" }],
  ] as const)("%s: it stands in the room once", async (_, fault) => {
    const made = await scene({ board: false });
    failFirst(made, "chat.postMessage", fault.kind === "error" ? [fault, fault] : [fault]);
    made.standIn.say("U0MAREN", south, opening);
    await until("nothing waits", () => rowsIn(made, "sent") === 1);
    expect(said(made, south)).toHaveLength(1);
  });

  test("in a thread it is looked for in the thread", async () => {
    const made = await scene({ board: false });
    const call = made.standIn.say("U0MAREN", south, opening);
    await until("the job is opened", () => said(made, south).length === 1);
    failFirst(made, "chat.postMessage", [{ kind: "cut", afterStoring: true }]);
    made.standIn.say("U0SORREL", south, reading(2), { thread_ts: call.ts });
    await until("both are sent", () => rowsIn(made, "sent") === 2);
    expect(said(made, south)).toHaveLength(2);
    expect(made.standIn.calls.some(({ method }) => method === "conversations.replies")).toBe(true);
  });

  test("the thread's first message is deleted meanwhile: the answer stands in the channel", async () => {
    const made = await scene({ board: false });
    const call = made.standIn.say("U0MAREN", south, opening);
    await until("the job is opened", () => said(made, south).length === 1);
    failFirst(made, "chat.postMessage", [{ kind: "error", error: "thread_not_found" }]);
    made.standIn.say("U0SORREL", south, reading(2), { thread_ts: call.ts });
    await until("both are sent", () => rowsIn(made, "sent") === 2);
    expect(made.standIn.bot(south)[1]?.thread_ts).toBeUndefined();
  });
});

const rowsIn = (made: Scene, state: string): number =>
  Number(
    made.bot.bot.store.db
      .prepare("SELECT count(*) FROM outbox WHERE state = ? AND kind = 'reply'")
      .pluck()
      .get(state),
  );

describe("limits", () => {
  test("429: nothing is sent before Slack's own delay is over, and other channels go on", async () => {
    const made = await scene({ board: false });
    failFirst(
      made,
      "chat.postMessage",
      [{ kind: "limited", seconds: 1 }],
      (args) => args.channel === south,
    );
    made.standIn.say("U0MAREN", south, opening);
    await until("it was limited", () =>
      made.standIn.calls.some(({ answer }) => answer === "limited"),
    );
    const limitedAt = Date.now();
    made.standIn.say("U0MAREN", "C0NORTH", "New job: Cinder School AC-5, no cooling. Bram");
    await until("the other channel is answered", () => said(made, "C0NORTH").length === 1);
    expect(said(made, south)).toHaveLength(0);
    await until("it is answered", () => said(made, south).length === 1);
    expect(Date.now() - limitedAt).toBeGreaterThan(900);
  });

  test("429 on the board does not hold up its channel's answers", async () => {
    const made = await scene();
    await until("a board", () => said(made, boardRoom).length === 1);
    failFirst(made, "chat.update", [{ kind: "limited", seconds: 1 }]);
    made.standIn.say("U0MAREN", boardRoom, opening);
    await until("it was limited", () =>
      made.standIn.calls.some(({ answer }) => answer === "limited"),
    );
    await until("the answer came", () => said(made, boardRoom).length === 2);
    await until(
      "the board follows",
      () => said(made, boardRoom)[0]?.includes("Gull Wharf") === true,
    );
  });

  test("a text of 12,000 characters goes out in pieces that end with a sentence", async () => {
    const made = await scene({ board: false });
    const text = Array.from(
      { length: 300 },
      (_, i) => `Sentence ${i} says <b> & "quotes" ${"x".repeat(i % 20)}.`,
    ).join(" ");
    put(made, { text });
    await until("it is out", () => said(made, south).join(" ").includes("Sentence 299"));
    const pieces = said(made, south);
    expect(pieces.length).toBeGreaterThan(2);
    for (const piece of pieces) expect(piece).toMatch(/\.$/);
    expect(
      pieces.join(" ").replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&"),
    ).toBe(text);
  });

  test("nobody can make the bot call a whole channel", async () => {
    const made = await scene({ board: false });
    put(made, { text: "<!channel> <!here> <@U0MAREN> @channel &lt;!everyone&gt;" });
    await until("it is out", () => said(made, south).length === 1);
    expect(said(made, south)[0]).not.toMatch(/<[!@]/);
    expect(made.standIn.calls.find(({ method }) => method === "chat.postMessage")?.args.parse).toBe(
      "none",
    );
  });
});

function put(
  made: Scene,
  row: {
    text: string;
    files?: readonly { name: string; type: string; size: number; sha256: string }[];
  },
): void {
  putOut(made.bot.bot.store, {
    id: `test:${row.text.slice(0, 20)}`,
    platform: "slack",
    channel: "southside",
    kind: "reply",
    text: row.text,
    files: row.files ?? [],
  });
}

describe("the board", () => {
  const posts = (made: Scene) =>
    made.standIn.calls.filter(
      ({ method, args }) => method === "chat.postMessage" && args.channel === boardRoom,
    ).length;

  test("however busy, it is one message, edited at most once in its time", async () => {
    const made = await scene();
    await until("a board", () => said(made, boardRoom).length === 1);
    for (let i = 1; i <= 30; i++)
      made.standIn.say("U0MAREN", south, `New job: Gate ${i}A Depot RTU-${i}, warm`);
    await until("it shows all", () => said(made, boardRoom)[0]?.includes("Open jobs: 30") === true);
    // when each was made, as its key says: on a busy machine one arrives later than another
    const edits = made.standIn.calls
      .filter(({ method }) => method === "chat.update")
      .map(({ args }) => Number(/board:[^"\\]*?:(\d{13})/.exec(JSON.stringify(args))?.[1]));
    expect(edits.length).toBeGreaterThan(0);
    for (const [index, at] of edits.slice(1).entries())
      expect(at - (edits[index] ?? 0)).toBeGreaterThanOrEqual(1000);
    expect(posts(made)).toBe(1);
  });

  test("an edit that Slack refuses for a while leaves one board, which goes on later", async () => {
    let ahead = 0;
    const made = await scene();
    await until("the board", () => made.standIn.bot(boardRoom).length === 1);
    await made.bot.stop();
    made.bot = startBot(made.folder, made.settings, { now: () => Date.now() + ahead });
    await joined(made);
    made.standIn.fault = (method) =>
      method === "chat.update" ? { kind: "error", error: "restricted_action" } : undefined;
    made.standIn.say("U0MAREN", south, opening);
    const refusals = () =>
      made.standIn.calls.filter(({ answer }) => answer === "restricted_action");
    await until("it is refused", () => refusals().length === 1);
    made.standIn.fault = () => undefined;
    ahead = 61_000;
    await until("it goes on", () =>
      made.standIn.bot(boardRoom).some(({ text }) => text.includes("Gull Wharf")),
    );
    expect(made.standIn.bot(boardRoom)).toHaveLength(1);
  });

  test("when somebody deletes it, it is posted and pinned anew", async () => {
    const made = await scene();
    await until("a board", () => made.standIn.rooms.channels.get(boardRoom)?.pins.size === 1);
    made.standIn.remove(boardRoom, made.standIn.bot(boardRoom)[0]?.ts ?? "");
    await until("another", () => said(made, boardRoom).length === 1);
    await until("pinned", () => made.standIn.rooms.channels.get(boardRoom)?.pins.size === 2);
    made.standIn.say("U0MAREN", south, opening);
    await until(
      "and edited from then on",
      () => said(made, boardRoom)[0]?.includes("Gull Wharf") === true,
    );
    expect(posts(made)).toBe(2);
  });

  test("a refused pin is told the operator once", async () => {
    const made = await scene();
    await until("a board", () => said(made, boardRoom).length === 1);
    made.standIn.pinsRefused = "permission_denied";
    made.standIn.remove(boardRoom, made.standIn.bot(boardRoom)[0]?.ts ?? "");
    await until("a board", () => said(made, boardRoom).length === 1);
    await until("told", () => said(made, opsRoom).some((text) => text.includes("pins:write")));
    made.standIn.remove(boardRoom, made.standIn.bot(boardRoom)[0]?.ts ?? "");
    await until("another board", () => posts(made) >= 3);
    await until("nothing waits", () => rowsIn(made, "pending") === 0);
    expect(said(made, opsRoom)).toHaveLength(1);
  });
});

describe("files", () => {
  const photo = Buffer.from("not really a photo, but bytes");
  const sha256 = createHash("sha256").update(photo).digest("hex");

  test("a photo is kept with the job under its hash, and acknowledged only then", async () => {
    const made = await scene({ board: false });
    made.standIn.say("U0MAREN", south, opening);
    await until("the job is opened", () => said(made, south).length === 1);
    const file = made.standIn.addFile("plate.jpg", "image/jpeg", photo);
    made.standIn.say("U0SORREL", south, "nameplate OU-3", { subtype: "file_share", files: [file] });
    await until("it is kept", () => allJobs(made.bot.bot.memory)[0]?.files.length === 1);
    expect(allJobs(made.bot.bot.memory)[0]?.files[0]).toMatchObject({
      sha256,
      type: "image/jpeg",
      size: photo.length,
    });
    expect(Buffer.from(getWords(made.bot.bot.store, fileKey(sha256))?.bytes ?? [])).toEqual(photo);
  });

  test("a login page instead of the file is not kept; the words are, and the operator hears why", async () => {
    const made = await scene({ board: false });
    made.standIn.say("U0MAREN", south, opening);
    await until("the job is opened", () => said(made, south).length === 1);
    made.standIn.loginPage = true;
    const file = made.standIn.addFile("plate.jpg", "image/jpeg", photo);
    made.standIn.say("U0SORREL", south, reading(2), { subtype: "file_share", files: [file] });
    await until("told", () => said(made, opsRoom).some((text) => text.includes("files:read")));
    expect(said(made, opsRoom)).toEqual([
      expect.stringContaining("plate.jpg of sorrel in southside"),
    ]);
    // or he would take it for filed
    await until("so is he who sent it", () =>
      said(made, south).some((text) => text.includes("plate.jpg did not reach me")),
    );
    expect(allJobs(made.bot.bot.memory)[0]?.readings).toHaveLength(1);
    expect(allJobs(made.bot.bot.memory)[0]?.files).toHaveLength(0);
  });

  test("a file goes out once, even where the answer to sharing it is lost", async () => {
    const made = await scene({ board: false });
    putWords(made.bot.bot.store, fileKey(sha256), { salt: "s", content: photo });
    failFirst(made, "files.completeUploadExternal", [{ kind: "cut", afterStoring: true }]);
    put(made, {
      text: "The day's files:",
      files: [{ name: "jobs.csv", type: "text/csv", size: photo.length, sha256 }],
    });
    await until("it is out", () => rowsIn(made, "sent") === 1);
    const shared = made.standIn.bot(south).filter(({ files }) => files !== undefined);
    expect(shared.map(({ files }) => files?.[0]?.name)).toEqual(["jobs.csv"]);
    expect([...made.standIn.rooms.files.values()][0]?.bytes).toEqual(photo);
  });
});

describe("an outage", () => {
  test("150 messages while the bot is down are answered once each and in order", async () => {
    const made = await scene({ board: false });
    made.standIn.say("U0MAREN", south, opening);
    await until("the job is opened", () => said(made, south).length === 1);
    await made.bot.stop();
    for (let i = 0; i < 150; i++) {
      made.standIn.sayUnheard(
        "U0SORREL",
        south,
        `OU-3 comp 1 lead ${(i % 3) + 1} to ground ${100 + i} megohm at 500 V`,
      );
    }
    made.bot = startBot(made.folder, made.settings);
    await joined(made);
    await until("all are answered", () => said(made, south).length === 151, 30_000);
    const values = allJobs(made.bot.bot.memory)[0]?.readings.map(
      ({ value }) => Number(value) / 1e6,
    );
    expect(values).toEqual(Array.from({ length: 150 }, (_, i) => 100 + i));
    expect(
      said(made, south)
        .slice(1)
        .map((text) => Number(/(\d+) megohm/.exec(text)?.[1])),
    ).toEqual(values);
  });

  test("what was edited or deleted while the bot was down counts as it stands now", async () => {
    const made = await scene({ board: false });
    made.standIn.say("U0MAREN", south, opening);
    await until("the job is opened", () => said(made, south).length === 1);
    const edited = made.standIn.say("U0SORREL", south, reading(2));
    const removed = made.standIn.say("U0SORREL", south, reading(3));
    await until("both are answered", () => said(made, south).length === 3);
    await made.bot.stop();
    made.standIn.edit(south, edited.ts, "OU-3 comp 1 lead 2 to ground 8.2 megohm at 500 V");
    made.standIn.remove(south, removed.ts);
    await until("nobody listens", () => made.standIn.delivery.open() === 0, 5000);
    made.bot = startBot(made.folder, made.settings);
    await joined(made);
    const standing = () =>
      allJobs(made.bot.bot.memory).flatMap(({ readings }) =>
        readings.flatMap((r) =>
          (r.replaced_by ?? r.undone ?? r.deleted) === undefined ? [r.value] : [],
        ),
      );
    await until("only the edited value stands", () => JSON.stringify(standing()) === "[8200000]");
    await made.bot.stop();
    made.bot = startBot(made.folder, made.settings);
    await joined(made);
    expect(standing()).toEqual([8.2e6]);
    expect(said(made, south)).toHaveLength(3);
  });

  test("a thumb or a cross given while the bot was down counts once it is back", async () => {
    const made = await scene({ board: false });
    made.standIn.say("U0MAREN", south, opening);
    await until("the job is opened", () => said(made, south).length === 1);
    made.standIn.say("U0SORREL", south, reading(2));
    await until("it is answered", () => said(made, south).length === 2);
    const answer = made.standIn.bot(south).at(-1)?.ts ?? "";
    await made.bot.stop();
    made.standIn.react("U0SORREL", south, answer, "x");
    await until("nobody listens", () => made.standIn.delivery.open() === 0, 5000);
    made.bot = startBot(made.folder, made.settings);
    await joined(made);
    const standing = () =>
      allJobs(made.bot.bot.memory).flatMap(({ readings }) =>
        readings.filter((r) => (r.replaced_by ?? r.undone ?? r.deleted) === undefined),
      ).length;
    await until("the reading is taken back", () => standing() === 0);
    const answers = said(made, south).length;
    await made.bot.stop();
    made.bot = startBot(made.folder, made.settings);
    await joined(made);
    expect(standing()).toBe(0);
    expect(said(made, south)).toHaveLength(answers);
  });

  test("after a power cut that took the last commits back, what stands in the room is not said twice", async () => {
    const made = await scene({ board: false });
    made.standIn.say("U0MAREN", south, opening);
    await until("the job is opened", () => said(made, south).length === 1);
    await until("all is sent", () => rowsIn(made, "sent") === 1);
    // the state that the disk comes back with
    const older = join(made.folder, "older.db");
    expect(copyStore(made.bot.bot.store, older)).toBeUndefined();
    made.standIn.say("U0SORREL", south, reading(1));
    made.standIn.say("U0SORREL", south, reading(2));
    await until("both are answered", () => said(made, south).length === 3);
    await made.bot.stop();
    for (const end of ["", "-wal", "-shm"])
      rmSync(join(made.folder, `crew.db${end}`), { force: true });
    renameSync(older, join(made.folder, "crew.db"));
    made.bot = startBot(made.folder, made.settings);
    await joined(made);
    await until(
      "both are filed again",
      () => allJobs(made.bot.bot.memory)[0]?.readings.length === 2,
    );
    await until("and known to be answered", () => rowsIn(made, "sent") === 3);
    expect(said(made, south)).toHaveLength(3);
  });

  test("a store brought back from an old backup: what stands in channel and thread is not said twice", async () => {
    const made = await scene({ board: false });
    const call = made.standIn.say("U0MAREN", south, opening);
    await until("all is sent", () => rowsIn(made, "sent") === 1);
    const older = join(made.folder, "older.db");
    expect(copyStore(made.bot.bot.store, older)).toBeUndefined();
    made.standIn.say("U0SORREL", south, reading(1));
    made.standIn.say("U0SORREL", south, reading(2), { thread_ts: call.ts });
    await until("both are answered", () => rowsIn(made, "sent") === 3);
    const before = made.standIn.bot(south).length;
    await made.bot.stop();
    for (const end of ["", "-wal", "-shm"])
      rmSync(join(made.folder, `crew.db${end}`), { force: true });
    renameSync(older, join(made.folder, "crew.db"));
    // it was made an hour before anything of this was said
    const db = new Database(join(made.folder, "crew.db"));
    db.prepare("UPDATE cursor SET value = ? WHERE platform = 'serve'").run(
      String(Date.now() - 3_600_000),
    );
    db.close();
    made.standIn.say("U0SORREL", south, reading(3));
    made.bot = startBot(made.folder, made.settings);
    await joined(made);
    await until("all are filed", () => allJobs(made.bot.bot.memory)[0]?.readings.length === 3);
    await until("all are answered", () => rowsIn(made, "sent") === 4);
    expect(made.standIn.bot(south)).toHaveLength(before + 1);
  });

  test("an answer in an old thread while the bot was down is found", async () => {
    const made = await scene({ board: false });
    const call = made.standIn.say("U0MAREN", south, opening);
    await until("the job is opened", () => said(made, south).length === 1);
    await made.bot.stop();
    made.standIn.sayUnheard("U0SORREL", south, reading(2), { thread_ts: call.ts });
    made.bot = startBot(made.folder, made.settings);
    await until(
      "it is answered in its thread",
      () => made.standIn.bot(south)[1]?.thread_ts === call.ts,
    );
  });

  test("at the first start nothing that stands in the channel is filed, then or later", async () => {
    const made = await scene({ board: false });
    await made.bot.stop();
    const place = freshFolder();
    const opened = join(place, "crew.db");
    expect(existsSync(opened)).toBe(false);
    made.standIn.sayUnheard("U0MAREN", south, opening);
    made.bot = startBot(place, made.settings);
    await joined(made);
    await made.bot.stop();
    made.bot = startBot(place, made.settings);
    await joined(made);
    expect(allJobs(made.bot.bot.memory)).toEqual([]);
    expect(said(made, south)).toEqual([]);
  });

  test("what was said to the bot directly while it was down is answered there", async () => {
    const made = await scene({ board: false });
    const direct = "D0SORREL";
    made.standIn.rooms.channels.set(direct, {
      id: direct,
      name: direct,
      botIsMember: true,
      pins: new Set(),
      messages: [],
    });
    made.standIn.say("U0SORREL", direct, opening);
    await until("it is answered", () => said(made, direct).length === 1);
    await made.bot.stop();
    made.standIn.sayUnheard("U0SORREL", direct, reading(2));
    made.bot = startBot(made.folder, made.settings);
    await until("it is answered", () => said(made, direct).length === 2);
  });

  test("a channel that the bot is not in is told to the operator; it begins when the bot is let in", async () => {
    const made = await scene({ board: false });
    await made.bot.stop();
    const room = made.standIn.rooms.channels.get("C0NORTH");
    if (room === undefined) throw new Error("no such room");
    made.standIn.rooms.channels.set("C0NORTH", { ...room, botIsMember: false });
    const place = freshFolder();
    made.bot = startBot(place, made.settings);
    await joined(made);
    await until("told", () => said(made, opsRoom).some((text) => text.includes("invite it there")));
    made.standIn.sayUnheard("U0MAREN", "C0NORTH", opening);
    const other = made.standIn.rooms.channels.get("C0NORTH");
    if (other !== undefined)
      made.standIn.rooms.channels.set("C0NORTH", { ...other, botIsMember: true });
    await made.bot.stop();
    made.bot = startBot(place, made.settings);
    await joined(made);
    expect(allJobs(made.bot.bot.memory)).toEqual([]);
  });

  test("Slack away at the start costs nothing but delay", async () => {
    const made = await scene({ board: false });
    await made.bot.stop();
    let away = true;
    made.standIn.fault = () => (away ? { kind: "cut", afterStoring: false } : undefined);
    made.standIn.sayUnheard("U0MAREN", south, opening);
    made.bot = startBot(made.folder, made.settings);
    await until(
      "it tries",
      () => made.bot.logs.filter(({ event }) => event === "slack_away").length >= 2,
    );
    away = false;
    await until("it is answered", () => said(made, south).length === 1);
  });

  test("a revoked token ends the program with a sentence that says what to do", async () => {
    const made = await scene({ board: false });
    made.standIn.fault = () => ({ kind: "error", error: "token_revoked" });
    made.standIn.say("U0MAREN", south, opening);
    expect(await made.bot.ended).toMatch(/Install the app again/);
  });
});
