import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, test } from "vitest";
import type { Link } from "../src/record/chain.ts";
import { readLinks } from "../src/record/entries-table.ts";
import { closeStore, openStore } from "../src/record/store.ts";
import { verifyLinks, verifyStore } from "../src/record/verify.ts";
import { playOfficeDay } from "./support/office-day.ts";
import { run } from "./support/run.ts";

const folder = mkdtempSync(join(tmpdir(), "altered-"));
const db = join(folder, "small.db");
playOfficeDay({ path: db, played: 1, times: 2, messages: 2 });

function linksOf(path: string): readonly Link[] {
  const opened = openStore(path, { readonly: true });
  if (!opened.ok) throw new Error(opened.problem);
  const links = readLinks(opened.store);
  closeStore(opened.store);
  return links;
}

/** The text with each of its letters turned into another, one at a time. */
function* altered(text: string): Generator<string> {
  for (let at = 0; at < text.length; at++) {
    const other = text[at] === "x" ? "y" : "x";
    yield text.slice(0, at) + other + text.slice(at + 1);
  }
}

describe("one letter altered", () => {
  test("in any field of any entry is found", () => {
    const links = linksOf(db);
    expect(verifyLinks(links).faults).toEqual([]);
    let tried = 0;
    const missed: string[] = [];
    const alter = (index: number, change: Partial<Link>): void => {
      const changed = links.map((link, place) => (place === index ? { ...link, ...change } : link));
      tried += 1;
      if (verifyLinks(changed).faults.length === 0) missed.push(JSON.stringify(change));
    };
    for (const [index, link] of links.entries()) {
      for (const field of ["at", "platform", "message", "facts", "words", "hash"] as const) {
        for (const value of altered(link[field])) alter(index, { [field]: value });
      }
      for (const field of ["job", "place", "version", "person"] as const) {
        alter(index, { [field]: link[field] + 1 });
      }
    }
    expect(missed).toEqual([]);
    expect(tried).toBeGreaterThan(3000);
  });

  test("in the words behind any entry is found in the store", () => {
    const copy = join(folder, "words.db");
    const source = new Database(db, { readonly: true });
    source.prepare("VACUUM INTO ?").run(copy);
    source.close();
    const opened = openStore(copy);
    if (!opened.ok) throw new Error(opened.problem);
    const { store } = opened;
    expect(verifyStore(store).faults).toEqual([]);
    const rows = store.db
      .prepare<[], { key: string; content: string }>(
        "SELECT key, content FROM words WHERE typeof(content) = 'text'",
      )
      .all();
    const put = store.db.prepare("UPDATE words SET content = ? WHERE key = ?");
    // the list of file names and the ends of the JSON around the words are no words
    const saying = rows.filter(({ key }) => key.startsWith("message:"));
    let tried = 0;
    const missed: string[] = [];
    for (const { key, content } of saying) {
      const { text }: { text: string } = JSON.parse(content);
      for (const other of altered(text)) {
        put.run(JSON.stringify({ ...JSON.parse(content), text: other }), key);
        tried += 1;
        if (verifyStore(store).faults.length === 0) missed.push(other);
      }
      put.run(content, key);
    }
    closeStore(store);
    expect(missed).toEqual([]);
    expect(tried).toBeGreaterThan(100);
  });
});

test("a record file says where it was altered, on a machine that has the file alone", async () => {
  const { out } = await run(["show", "--all", "--record", "--db", db]);
  const file = join(folder, "record.jsonl");
  writeFileSync(file, `${out.join("\n")}\n`);
  expect((await run(["verify", file])).exit).toBe(0);
  writeFileSync(file, out.join("\n").replace("84", "48"));
  const ran = await run(["verify", file]);
  expect(ran.exit).toBe(1);
  expect(ran.out.join("\n")).toMatch(/^Altered: job 1, entry \d+ \(2026-05-12T/);
});
