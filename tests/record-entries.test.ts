import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Message } from "../src/model.ts";
import { digestOf } from "../src/record/chain.ts";
import {
  appendEntry,
  entriesAtHand,
  entriesOf,
  jobOfThread,
  jobsFiling,
  lastJob,
  linksAt,
  readEntries,
  readLinks,
  readMarks,
  spokenFor,
} from "../src/record/entries-table.ts";
import type { NoteFacts } from "../src/record/entry.ts";
import { keepMessage } from "../src/record/inbox.ts";
import { faultsInSelection, headsOutside } from "../src/record/sealed.ts";
import { closeStore, copyStore, openStore, type Store } from "../src/record/store.ts";
import { storeDigest } from "../src/record/store-digest.ts";
import { verifyLinks, verifyStore } from "../src/record/verify.ts";
import { entryKey, eraseWords, messageKey } from "../src/record/words-table.ts";
import { minuteOf } from "./support/job-lines.ts";

/** Entries as they are written, read back, tied to one another and taken out for a file. */

function fresh(path = ":memory:"): Store {
  const opened = openStore(path);
  if (!opened.ok) throw new Error(opened.problem);
  return opened.store;
}
const nothing: NoteFacts = {
  ...{ kind: "note", role: "tech", readings: [], statements: [], unread: [], files: [] },
  replaces: [],
};
const opens = { site: "Gull Wharf", equipment: "OU-3", channel: "south" };

interface Said extends Partial<Pick<Message, "thread" | "channel" | "text">> {
  readonly opens?: true;
  readonly who?: string;
}
/** Keeps a message and files it on a job. */
function file(store: Store, job: number, id: string, minute: number, said: Said = {}) {
  const { text = `words of ${id}`, channel = "south", thread, who = "bram" } = said;
  const at = minuteOf(minute);
  const base = { platform: "test", channel, at, ...(thread === undefined ? {} : { thread }) };
  keepMessage(store, { ...base, id, person: who, role: "tech", text, files: [] }, "salt");
  const facts = said.opens ? { ...nothing, opens } : nothing;
  return appendEntry(store, { ...base, job, who, message: id, text, facts }, "salt");
}

describe("an entry", () => {
  test("is the next of its job, and is read back as it was given", () => {
    const store = fresh();
    const written = [
      ...[file(store, 1, "a", 1, { opens: true }), file(store, 2, "b", 2, { thread: "t" })],
      file(store, 1, "c", 3, { who: "ife" }),
    ];
    expect(written.map(({ job, place }) => [job, place])).toEqual([
      [1, 1],
      [2, 1],
      [1, 2],
    ]);
    expect(readEntries(store)).toEqual(written);
    expect(entriesOf(store, 1)).toEqual([written[0], written[2]]);
    expect(entriesOf(store, 3)).toEqual([]);
    expect(entriesAtHand(store)).toEqual(written);
    expect(readEntries(store)[0]).not.toHaveProperty("thread");
    expect(lastJob(store)).toBe(2);
    expect(lastJob(fresh())).toBe(0);
    expect(jobsFiling(store, "c")).toEqual([1]);
    expect(jobsFiling(store, "z")).toEqual([]);
  });
  test("keeps the words as they were sent, the bot's name before them too", () => {
    const store = fresh();
    const entry = file(store, 1, "a", 1, { text: "@readback lead 2 84 meg" });
    expect(entry.text).toBe("@readback lead 2 84 meg");
    expect(entriesOf(store, 1)[0]?.text).toBe("@readback lead 2 84 meg");
  });
  test("without its message has no words and no place", () => {
    const store = fresh();
    const draft = { job: 1, at: minuteOf(1), who: "clock", platform: "clock", message: "x" };
    appendEntry(store, { ...draft, text: "said by nobody", facts: nothing }, "salt");
    const [entry] = entriesOf(store, 1);
    expect(entry).toMatchObject({ who: "clock", message: "x" });
    for (const name of ["channel", "thread", "text"]) expect(entry).not.toHaveProperty(name);
  });
});

describe("a thread is of", () => {
  const threads = (...said: readonly (readonly [job: number, id: string, Said])[]) => {
    const store = fresh();
    for (const [at, [job, id, more]] of said.entries()) file(store, job, id, at, more);
    return (thread: string, channel = "south") => jobOfThread(store, channel, thread);
  };
  test("the job that was opened in it, the last of several, else the one named first", () => {
    const of = threads(
      ...([
        [1, "t", { opens: true }],
        [2, "b", { thread: "t" }],
      ] as const),
      ...([
        [3, "c", { thread: "u" }],
        [4, "d", { thread: "u" }],
      ] as const),
      ...([
        [5, "e", { thread: "v", opens: true }],
        [6, "f", { thread: "v", opens: true }],
      ] as const),
    );
    expect(of("t")).toBe(1);
    expect(of("u")).toBe(3);
    expect(of("v")).toBe(6);
    expect(of("t", "north")).toBeUndefined();
    expect(of("nothing")).toBeUndefined();
  });
});

describe("the chain", () => {
  const filled = () => {
    const store = fresh();
    for (const [at, job] of [1, 2, 1, 3, 2].entries()) file(store, job, `m${at}`, at);
    return store;
  };
  test("is whole, told in one digest however it is made", () => {
    const store = filled();
    const links = readLinks(store);
    expect(verifyStore(store)).toMatchObject({ entries: 5, jobs: 3, faults: [] });
    expect(verifyStore(store).digest).toBe(digestOf(links));
    expect(storeDigest(store)).toBe(digestOf(links));
    expect(storeDigest(fresh())).toBeUndefined();
    const marks = readMarks(store);
    expect(marks.map(({ job, place }) => [job, place])).toEqual(
      links.map(({ job, place }) => [job, place]),
    );
    expect([...linksAt(store, marks.slice(1, 3))]).toEqual(links.slice(1, 3));
  });
  test("tells each link that was altered, and a digest that was made of something else", () => {
    const links = readLinks(filled());
    const altered = links.map((link) =>
      link.job === 2 && link.place === 1 ? { ...link, facts: "{}" } : link,
    );
    expect(verifyLinks(altered).faults).toEqual([
      `job 2, entry 1 (${minuteOf(1)}): was altered after it was written`,
    ]);
    expect(verifyLinks(links, digestOf(links.slice(0, 3))).faults).toEqual([]);
    expect(verifyLinks(links.slice(0, 3), digestOf(links)).faults).toHaveLength(1);
    expect(verifyLinks(links, "12").faults).toEqual(['"12" is not a digest of this program']);
  });
  test("tells words that were altered or are gone, and takes what was erased as erased", () => {
    const store = filled();
    const links = readLinks(store);
    const state = () =>
      links
        .map((link) => spokenFor(store, link))
        .map((one) => (typeof one === "string" ? one : "said"));
    eraseWords(store, entryKey(1, 1), minuteOf(9));
    eraseWords(store, messageKey("test", "m1"), minuteOf(9));
    expect(state()).toEqual(["erased", "erased", "said", "said", "said"]);
    expect(verifyStore(store).faults).toEqual([]);
    store.db.prepare("DELETE FROM words WHERE key = ?").run(entryKey(3, 1));
    store.db.prepare("UPDATE words SET content = '[\"x\"]' WHERE key = ?").run(entryKey(2, 2));
    expect(verifyStore(store).faults).toEqual([
      `job 3, entry 1 (${minuteOf(3)}): its words are gone without a mark of erasure`,
      `job 2, entry 2 (${minuteOf(4)}): its words were altered`,
    ]);
  });
  test("of some jobs proves itself with the last entries of the others", () => {
    const store = filled();
    const [links, marks] = [readLinks(store), readMarks(store)];
    const stated = digestOf(links);
    const some = links.filter(({ job }) => job !== 2);
    const heads = headsOutside(marks, new Set([1, 3]));
    expect(heads.map(([job, place]) => [job, place])).toEqual([[2, 2]]);
    expect(faultsInSelection(some, heads, stated)).toEqual([]);
    const wrong = "the digest in the file does not match its entries";
    expect(faultsInSelection(some, [], stated)).toEqual([wrong]);
    expect(faultsInSelection(some.slice(0, -1), heads, stated)).toEqual([wrong]);
    const [first, ...rest] = some;
    if (first === undefined) throw new Error("no link");
    expect(faultsInSelection([{ ...first, facts: "{}" }, ...rest], heads, stated)).toHaveLength(1);
  });
});

test("a copy of a store in use is whole and says the same", () => {
  const folder = mkdtempSync(join(tmpdir(), "copy-"));
  const store = fresh(join(folder, "a.db"));
  file(store, 1, "a", 1, { opens: true });
  const path = join(folder, "b.db");
  expect(copyStore(store, path)).toBeUndefined();
  const copy = fresh(path);
  expect(readEntries(copy)).toEqual(readEntries(store));
  expect(verifyStore(copy).faults).toEqual([]);
  closeStore(copy);
  closeStore(store);
});
