import { describe, expect, test } from "vitest";
import type { Message } from "../src/model.ts";
import { settleRevision } from "../src/record/exports-table.ts";
import {
  findMessage,
  isOvertaken,
  keepMessage,
  lastHeard,
  lastRoles,
  markMessage,
  messagesAfter,
  messagesIn,
  moveCursor,
  nextMessage,
  readCursor,
  waitingAfter,
  wakeChanges,
  wasChanged,
} from "../src/record/inbox.ts";
import {
  answersTo,
  detailsOn,
  findOut,
  markOut,
  type Outgoing,
  putOut,
  saidIn,
  saidOf,
  unsent,
} from "../src/record/outbox.ts";
import { putFacts, readRegistry } from "../src/record/registry.ts";
import { type Card, cardOf, gasAtRest, putToRest, takeFromRest } from "../src/record/rest-table.ts";
import { messageBefore, saidAt } from "../src/record/said-when.ts";
import { headsOutside, sealed, sealHolds, sealOf, sealOfBytes } from "../src/record/sealed.ts";
import {
  backlog,
  forgetBoards,
  isLatestAnswer,
  lastBoard,
  messagesSince,
  nextOut,
  outByRemote,
  standingBoard,
  waitingLanes,
} from "../src/record/sending.ts";
import { openStore, type Store } from "../src/record/store.ts";
import { packFacts, unpackFacts } from "../src/record/words.ts";
import {
  eraseWords,
  fileKey,
  getWords,
  letSentGo,
  putFile,
  putWords,
  sentKey,
} from "../src/record/words-table.ts";
import { minuteOf } from "./support/job-lines.ts";

/** What is put into a table of the store comes back as it was, and only where it was asked for. */

function fresh(): Store {
  const opened = openStore(":memory:");
  if (!opened.ok) throw new Error(opened.problem);
  return opened.store;
}

const plain = (id: string, minute: number, more: Partial<Message> = {}): Message => ({
  ...{ platform: "test", id, at: minuteOf(minute), channel: "south", person: "bram" },
  ...{ role: "tech", text: `words of ${id}`, files: [], ...more },
});
const keep = (store: Store, ...all: readonly Message[]): readonly boolean[] =>
  all.map((message) => keepMessage(store, message, "salt"));
const idsOf = (rows: readonly { readonly message: Message }[]): readonly string[] =>
  rows.map(({ message }) => message.id);

describe("a message", () => {
  const photo = { name: "plate.jpg", type: "image/jpeg", size: 12, sha256: "ab" };
  const whole = plain("b", 2, {
    ...{ thread: "t1", edits: "a", deletes: "z", answers: "remote-1", files: [photo] },
  });
  test.each([plain("a", 1), whole])("is kept once and comes back whole", (message) => {
    const store = fresh();
    expect(keep(store, message, message)).toEqual([true, false]);
    const row = findMessage(store, "test", message.id);
    expect(row?.message).toStrictEqual(message);
    expect(row).toMatchObject({ state: "new", job: null, error: null });
    expect(findMessage(store, "other", message.id)).toBeUndefined();
    expect(findMessage(store, "test", "c")).toBeUndefined();
  });
  test("spoken to the bot keeps its letters where they stood, and says that it was", () => {
    const store = fresh();
    keep(store, plain("a", 1, { text: "@readback lead 2 84 meg" }));
    const said = findMessage(store, "test", "a")?.message;
    expect(said?.to_bot).toBe(true);
    expect(said?.text).toBe("          lead 2 84 meg");
  });
  test("is worked on in the order in which it was said, not in which it came", () => {
    const store = fresh();
    keep(store, plain("late", 9), plain("first", 1), plain("second", 5));
    expect(idsOf(messagesIn(store, "new"))).toEqual(["first", "second", "late"]);
    expect(nextMessage(store)?.message.id).toBe("first");
    markMessage(store, plain("first", 1), { state: "done", job: 3 });
    expect(findMessage(store, "test", "first")).toMatchObject({ state: "done", job: 3 });
    expect(nextMessage(store)?.message.id).toBe("second");
    markMessage(store, plain("second", 5), { state: "failed", error: "broke" });
    expect(findMessage(store, "test", "second")).toMatchObject({ job: null, error: "broke" });
    markMessage(store, plain("late", 9), { state: "waiting" });
    expect(nextMessage(store)).toBeUndefined();
    expect(idsOf(messagesIn(store, "done"))).toEqual(["first"]);
    expect(idsOf(messagesIn(store, "waiting"))).toEqual(["late"]);
  });
  test("is younger than another within so long, in its channel, once it was worked on", () => {
    const store = fresh();
    const now = plain("now", 10);
    const others = [
      ...[plain("before", 9), plain("same", 10), plain("next", 11), plain("last", 15)],
      ...[plain("beyond", 16), plain("elsewhere", 12, { channel: "north" }), plain("new", 12)],
    ];
    keep(store, now, ...others);
    for (const one of others)
      if (one.id !== "new")
        markMessage(store, one, { state: one.id === "last" ? "waiting" : "done" });
    expect(idsOf(messagesAfter(store, now, 5 * 60_000))).toEqual(["next", "last"]);
    expect(idsOf(messagesSince(store, now, Date.parse(minuteOf(15))))).toEqual(["last", "beyond"]);
  });
  test("that the same person says next in the same place is the one that waits", () => {
    const store = fresh();
    const now = plain("now", 10);
    keep(store, plain("ife", 11, { person: "ife" }), plain("thread", 11, { thread: "t" }));
    keep(store, plain("north", 11, { channel: "north" }), plain("far", 20), plain("next", 12));
    const until = Date.parse(minuteOf(15));
    expect(idsOf(waitingAfter(store, now, until))).toEqual(["next"]);
    const inThread = plain("x", 10, { thread: "t" });
    expect(idsOf(waitingAfter(store, inThread, until))).toEqual(["thread"]);
    expect(idsOf(waitingAfter(store, now, Date.parse(minuteOf(11))))).toEqual([]);
  });
  test("was changed once an edit or a removal of it was worked on", () => {
    for (const change of [{ edits: "a" }, { deletes: "a" }] as const) {
      const store = fresh();
      const later = plain("b", 2, change);
      keep(store, plain("a", 1), later);
      expect(wasChanged(store, plain("a", 1))).toBe(false);
      markMessage(store, later, { state: "done" });
      expect(wasChanged(store, plain("a", 1))).toBe(true);
      expect(wasChanged(store, plain("c", 1))).toBe(false);
    }
  });
  test("wakes the edits and removals that came before it, and no others", () => {
    const store = fresh();
    const early = [plain("b", 2, { edits: "a" }), plain("c", 3, { deletes: "a" })];
    const other = plain("d", 4, { edits: "z" });
    keep(store, ...early, other);
    for (const one of [...early, other]) markMessage(store, one, { state: "waiting" });
    wakeChanges(store, plain("a", 1));
    expect(idsOf(messagesIn(store, "new"))).toEqual(["b", "c"]);
  });
  test("that edits is overtaken by a later edit or removal of the same, never by an earlier one", () => {
    const store = fresh();
    const edit = (id: string, minute: number) => plain(id, minute, { edits: "a" });
    const done = edit("c", 5);
    keep(store, plain("a", 1), edit("b", 4), done, edit("d", 6));
    markMessage(store, done, { state: "done" });
    expect(isOvertaken(store, edit("b", 4))).toBe(true);
    expect(isOvertaken(store, done)).toBe(false);
    expect(isOvertaken(store, edit("d", 6))).toBe(false);
    expect(isOvertaken(store, plain("a", 1))).toBe(false);
    const removal = plain("e", 9, { deletes: "a" });
    keep(store, removal);
    expect(isOvertaken(store, edit("d", 6))).toBe(false);
    markMessage(store, removal, { state: "done" });
    expect(isOvertaken(store, edit("d", 6))).toBe(true);
  });
  test("tells when and in which role somebody was heard last, and what they said on a job", () => {
    const store = fresh();
    const said = [plain("a", 1), plain("b", 7, { role: "dispatcher" }), plain("c", 9)];
    keep(store, ...said, plain("i", 3, { person: "ife" }));
    expect(lastHeard(store)).toEqual(new Map());
    expect(lastRoles(store)).toEqual(new Map());
    for (const one of said.slice(0, 2)) markMessage(store, one, { state: "done", job: 4 });
    markMessage(store, plain("c", 9), { state: "waiting" });
    expect(lastHeard(store)).toEqual(new Map([["bram", Date.parse(minuteOf(9))]]));
    expect(lastRoles(store)).toEqual(new Map([["bram", "dispatcher"]]));
    const of = { platform: "test", person: "bram", id: "c", job: 4 };
    const now = { instant: Date.parse(minuteOf(9)), seq: Number.MAX_SAFE_INTEGER };
    const newest = messageBefore(store, of, now);
    expect(newest).toMatchObject({ id: "b", at: minuteOf(7), channel: "south", thread: null });
    expect(newest && messageBefore(store, of, newest)?.id).toBe("a");
    expect(messageBefore(store, of, { ...now, instant: Date.parse(minuteOf(1)) })?.id).toBe("a");
    expect(messageBefore(store, of, { instant: Date.parse(minuteOf(1)), seq: 0 })).toBeUndefined();
    expect(messageBefore(store, { ...of, id: "b" }, now)?.id).toBe("a");
    expect(messageBefore(store, { ...of, job: 5 }, now)).toBeUndefined();
    expect(saidAt(store, "test", "c")).toBe(minuteOf(9));
    expect(saidAt(store, "test", "z")).toBeUndefined();
  });
});

test("a platform's place in a conversation is the last one that it was moved to", () => {
  const store = fresh();
  const at = { platform: "test", conversation: "south" };
  expect(readCursor(store, "test", "south")).toBeUndefined();
  for (const value of ["7", "3"]) moveCursor(store, { ...at, value });
  expect(readCursor(store, "test", "south")).toBe("3");
  expect(readCursor(store, "test", "north")).toBeUndefined();
});

const out = (id: string, more: Partial<Outgoing> = {}): Outgoing => ({
  ...{ id, platform: "test", channel: "south", kind: "reply", text: `says ${id}`, files: [] },
  ...more,
});

describe("an answer", () => {
  const file = { name: "day.csv", type: "text/csv", size: 4, sha256: "cd" };
  const whole = out("b", {
    ...{ thread: "t", answers: "m1", edits: "a", detail: '{"job":4}', files: [file] },
  });
  test.each([out("a"), whole])("is put out once and comes back whole", (one) => {
    const store = fresh();
    putOut(store, one);
    putOut(store, { ...one, text: "something else" });
    expect(findOut(store, one.id)).toStrictEqual({ ...one, state: "pending" });
    expect(findOut(store, "z")).toBeUndefined();
  });
  test("keeps what it went out as first, what it is called there, and when it may go again", () => {
    const store = fresh();
    putOut(store, out("a"));
    markOut(store, "a", { state: "sending", wire: "{}", attempt_at: minuteOf(1) });
    expect(unsent(store, "test").map(({ id }) => id)).toEqual(["a"]);
    const later = minuteOf(2);
    markOut(store, "a", { state: "pending", not_before: later, remote_id: "r1" });
    expect(findOut(store, "a")).toStrictEqual({
      ...{ ...out("a"), state: "pending", wire: "{}", attempt_at: minuteOf(1) },
      ...{ not_before: later, remote_id: "r1" },
    });
    markOut(store, "a", { state: "sent" });
    expect(findOut(store, "a")).not.toHaveProperty("not_before");
    expect(unsent(store, "test")).toEqual([]);
    expect(outByRemote(store, "test", "r1")?.id).toBe("a");
    expect(outByRemote(store, "test", "r2")).toBeUndefined();
  });
  test("is found by what it answers, its kind, its job and its channel", () => {
    const store = fresh();
    putOut(store, out("a", { answers: "m1", detail: '{"job":4,"n":1}' }));
    putOut(store, out("b", { answers: "m1", detail: '{"job":5}' }));
    putOut(store, out("c", { answers: "m2", kind: "clock", channel: "north" }));
    expect(answersTo(store, "test", "m1").map(({ id }) => id)).toEqual(["a", "b"]);
    expect(saidOf(store, "clock").map(({ id }) => id)).toEqual(["c"]);
    expect(detailsOn(store, 4)).toEqual(['{"job":4,"n":1}']);
    const south = { kind: "reply", platform: "test", channel: "south" } as const;
    expect(saidIn(store, south)).toMatchObject({ count: 2, last: { id: "b" } });
    expect(saidIn(store, { ...south, channel: "north" })).toStrictEqual({ count: 0 });
  });
  test("waits in its own channel's lane, the board in one of its own", () => {
    const store = fresh();
    const board = { kind: "board" } as const;
    for (const one of [out("a"), out("b"), out("c", board), out("d", { channel: "north" })])
      putOut(store, one);
    const lanes = waitingLanes(store, "test");
    const firsts = lanes.map((lane) => [lane.channel, lane.board, nextOut(store, lane)?.id]);
    expect(firsts).toHaveLength(3);
    expect(firsts).toEqual(
      expect.arrayContaining([
        ...[
          ["south", false, "a"],
          ["south", true, "c"],
          ["north", false, "d"],
        ],
      ]),
    );
    markOut(store, "a", { state: "sent" });
    markOut(store, "c", { state: "failed" });
    const south = { platform: "test", channel: "south" };
    expect(nextOut(store, { ...south, board: false })?.id).toBe("b");
    expect(nextOut(store, { ...south, board: true })).toBeUndefined();
    expect(backlog(store)).toEqual({ new: 0, failed: 0, unsent: 2, refused: 1 });
  });
  test("is the latest until the same person is answered again in the same place", () => {
    const store = fresh();
    keep(store, plain("m1", 1), plain("m2", 2, { person: "ife" }), plain("m3", 3));
    const first = { ...out("a", { answers: "m1" }), state: "sent" } as const;
    putOut(store, out("a", { answers: "m1" }));
    putOut(store, out("b", { answers: "m2" }));
    putOut(store, out("c", { answers: "m3", thread: "t" }));
    expect(isLatestAnswer(store, first)).toBe(true);
    putOut(store, out("d", { answers: "m3" }));
    expect(isLatestAnswer(store, first)).toBe(false);
  });
  test("that is a board stands until the next; all but the last two that went out are let go", () => {
    const store = fresh();
    for (const id of ["a", "b", "c", "d"]) putOut(store, out(id, { kind: "board" }));
    for (const id of ["a", "b", "c"]) markOut(store, id, { state: "sent", remote_id: `r${id}` });
    expect(lastBoard(store, "test", "south")?.id).toBe("d");
    expect(standingBoard(store, "test", "south")?.id).toBe("c");
    expect(standingBoard(store, "test", "north")).toBeUndefined();
    forgetBoards(store, "test", "south");
    expect(saidOf(store, "board").map(({ id }) => id)).toEqual(["b", "c", "d"]);
  });
});

describe("an export", () => {
  const made = (content: string) => ({ entries: 3, digest: "3-ab", content });
  test("that says the same is the same revision; each that says something else the next", () => {
    const store = fresh();
    const settled = (scope: string, content: string) => {
      const { now, before } = settleRevision(store, scope, made(content));
      return [now.revision, now.content, before?.revision];
    };
    expect(settleRevision(store, "day", made("x"))).toStrictEqual({
      now: { revision: 1, ...made("x") },
    });
    expect(settleRevision(store, "day", made("x"))).toStrictEqual({
      now: { revision: 1, ...made("x") },
    });
    expect(settled("day", "y")).toEqual([2, "y", 1]);
    expect(settled("day", "y")).toEqual([2, "y", 1]);
    expect(settled("day", "x")).toEqual([3, "x", 2]);
    expect(settled("job 1", "x")).toEqual([1, "x", undefined]);
  });
  test("ends in a seal that no altered letter leaves whole", () => {
    const text = [...sealed(['{"a": 1', ', "b": 2'])].join("");
    expect(JSON.parse(text)).toEqual({ a: 1, b: 2, seal: sealOf(text) });
    expect(sealHolds(text)).toBe(true);
    expect(sealOfBytes(new TextEncoder().encode(text))).toBe(sealOf(text));
    for (const at of [...text].keys()) {
      const other = `${text.slice(0, at)}${text[at] === "0" ? "1" : "0"}${text.slice(at + 1)}`;
      expect([at, sealHolds(other)]).toEqual([at, false]);
    }
    expect(sealOf('{"a": 1}')).toBeUndefined();
    expect(sealHolds('{"a": 1}')).toBe(false);
  });
  test("names the last entry of each job that is not in it, by the job's number", () => {
    const mark = (job: number, place: number) => ({
      ...{ job, place, hash: `${job}.${place}`, at: minuteOf(place), person: 1 },
      seq: job * 100 + place,
    });
    const marks = [mark(7, 1), mark(2, 1), mark(2, 2), mark(3, 1), mark(7, 2), mark(2, 3)];
    const shuffled = [mark(2, 3), mark(7, 2), mark(2, 1), mark(3, 1), mark(7, 1), mark(2, 2)];
    for (const all of [marks, shuffled])
      expect(headsOutside(all, new Set([3]))).toEqual([
        [2, 3, "2.3"],
        [7, 2, "7.2"],
      ]);
    expect(headsOutside(marks, new Set([2, 3, 7]))).toEqual([]);
  });
});

describe("words", () => {
  test("leave the facts, and come back from the message or from beside it", () => {
    const text = "lead 2 84 meg, tenant mad";
    const facts = {
      readings: [{ said: "lead 2 84 meg", spans: [[0, 13]], unit: "Ohm", value: 84e6 }],
      statements: [
        { kind: "note", said: "not what stands there", spans: [[15, 21]], about: "tenant" },
        {
          kind: "note",
          said: "lead meg",
          spans: [
            [0, 4],
            [10, 13],
          ],
        },
      ],
      asked: "which job?",
      none: null,
      files: [],
    };
    const { facts: kept, strings } = packFacts(facts, text);
    for (const words of ["lead 2 84", "tenant", "which job", "not what"])
      expect(kept).not.toContain(words);
    expect(kept).toContain("Ohm");
    expect(strings).toEqual(["not what stands there", "tenant", "which job?"]);
    expect(unpackFacts(JSON.parse(kept), text, strings)).toEqual(facts);
    const gone = unpackFacts(JSON.parse(kept), undefined, undefined);
    expect(gone).toMatchObject({
      readings: [{ said: "[erased]", value: 84e6 }],
      statements: [{ said: "[erased]", about: "[erased]" }, { said: "[erased]" }],
      ...{ asked: "[erased]", none: null, files: [] },
    });
  });
  test("are kept once, erased once with their date, and a file that comes again is there again", () => {
    const store = fresh();
    putWords(store, "k", { salt: "s", content: "first" });
    putWords(store, "k", { salt: "s", content: "second" });
    expect(getWords(store, "k")).toStrictEqual({ salt: "s", text: "first" });
    expect(getWords(store, "none")).toBeUndefined();
    expect(eraseWords(store, "k", minuteOf(1))).toBe(true);
    expect(eraseWords(store, "k", minuteOf(2))).toBe(false);
    expect(getWords(store, "k")).toStrictEqual({ salt: "", erased: minuteOf(1) });
    const key = fileKey("ab");
    putFile(store, key, { salt: "s", content: new Uint8Array([1, 2]) });
    putFile(store, key, { salt: "t", content: new Uint8Array([3]) });
    expect([...(getWords(store, key)?.bytes ?? [])]).toEqual([1, 2]);
    expect(getWords(store, key)).not.toHaveProperty("text");
    eraseWords(store, key, minuteOf(3));
    putFile(store, key, { salt: "t", content: new Uint8Array([3]) });
    expect([...(getWords(store, key)?.bytes ?? [])]).toEqual([3]);
    expect(getWords(store, key)).not.toHaveProperty("erased");
  });
  test("of files that were sent go once nothing waits to be sent", () => {
    const store = fresh();
    putFile(store, sentKey("ab"), { salt: "s", content: new Uint8Array([1]) });
    putOut(store, out("a"));
    letSentGo(store);
    expect(getWords(store, sentKey("ab"))).toBeDefined();
    markOut(store, "a", { state: "sent" });
    letSentGo(store);
    expect(getWords(store, sentKey("ab"))).toBeUndefined();
  });
});

describe("a line of the office's lists", () => {
  const unit = (facts: object, more: object = {}) => ({
    ...({ kind: "equipment", key: "gull wharf\nou-3", facts, ...more } as const),
  });
  test("is added, changed field by field, and the same in whatever order it stands", () => {
    const store = fresh();
    const put = (facts: object, more: object = {}) => putFacts(store, unit(facts, more));
    const lines = [{ line: "liquid", size_in: 0.375 }, { line: "suction" }];
    const first = { tag: "OU-3", site: "Gull Wharf", rla_A: 20 };
    expect(put(first)).toEqual({ outcome: "added", changes: [] });
    expect(put(first)).toEqual({ outcome: "same", changes: [] });
    expect(put({ rla_A: 20, site: "Gull Wharf", tag: "OU-3" }).outcome).toBe("same");
    expect(put({ ...first, rla_A: 22, line_set: lines })).toEqual({
      outcome: "changed",
      changes: [
        "rla A 20 becomes 22",
        "line set nothing becomes line liquid, size in 0.375; line suction",
      ],
    });
    expect(put({ tag: "OU-3" })).toEqual({
      outcome: "changed",
      changes: [
        ...["site Gull Wharf becomes nothing", "rla A 22 becomes nothing"],
        "line set line liquid, size in 0.375; line suction becomes nothing",
      ],
    });
    expect(readRegistry(store).equipment).toEqual([{ tag: "OU-3" }]);
  });
  test("of a file that has not all columns leaves the others as they were", () => {
    const store = fresh();
    putFacts(store, unit({ tag: "OU-3", rla_A: 20, refrigerant: "R-32" }));
    const covers = new Set(["tag", "rla_A"]);
    expect(putFacts(store, unit({ tag: "OU-3" }, { covers })).changes).toEqual([
      "rla A 20 becomes nothing",
    ]);
    expect(readRegistry(store).equipment).toEqual([{ tag: "OU-3", refrigerant: "R-32" }]);
  });
  test("is only looked at in a dry run", () => {
    const store = fresh();
    expect(putFacts(store, unit({ tag: "OU-3" }), true).outcome).toBe("added");
    expect(readRegistry(store).equipment).toEqual([]);
  });
  test("of a person has each name once, whichever column it stood in; of a unit its site's one spelling", () => {
    const store = fresh();
    const names = { slack: ["U1", "bram"], matrix: ["@bram:a", "bram"] };
    putFacts(store, { kind: "person", key: "bram", facts: { name: "Bram", ...names } });
    putFacts(store, { kind: "person", key: "ife", facts: { name: "Ife" } });
    expect(readRegistry(store).people).toStrictEqual([
      { name: "Bram", handles: ["U1", "bram", "@bram:a"] },
      { name: "Ife" },
    ]);
    putFacts(store, { kind: "site", key: "gull wharf", facts: { name: "Gull Wharf" } });
    for (const [at, site] of ["gull  wharf", "Old Mill", "OLD MILL"].entries())
      putFacts(store, { kind: "equipment", key: `${at}`, facts: { tag: `OU-${at}`, site } });
    putFacts(store, { kind: "equipment", key: "9", facts: { tag: "OU-9" } });
    expect(readRegistry(store).equipment).toStrictEqual([
      ...[
        { tag: "OU-0", site: "Gull Wharf" },
        { tag: "OU-1", site: "Old Mill" },
        { tag: "OU-2", site: "Old Mill" },
      ],
      { tag: "OU-9" },
    ]);
  });
});

test("a job at rest is found as it was laid down, and its gas counts until it is taken up again", () => {
  const store = fresh();
  const card = (job: number, more: Partial<Card> = {}): Card => ({
    ...{ job, site: "Gull Wharf", equipment: "OU-3", opened: minuteOf(job), people: ["bram"] },
    ...{ first: job, last: job + 10, compressor: false, gas: [["22", 1.5]], ...more },
  });
  const other = { equipment: null, site: null, assigned: "ife", compressor: true, gas: [] };
  for (const one of [card(1), card(2, other)]) {
    putToRest(store, one);
    expect(cardOf(store, one.job)).toStrictEqual(one);
  }
  putToRest(store, card(3));
  expect(cardOf(store, 4)).toBeUndefined();
  expect(gasAtRest(store, "22")).toBe(3);
  takeFromRest(store, 1);
  expect(cardOf(store, 1)).toBeUndefined();
  expect(gasAtRest(store, "22")).toBe(1.5);
  expect(gasAtRest(store, "23")).toBe(0);
});
