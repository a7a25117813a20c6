import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { looksExported, verifyExport } from "../src/bot/verify-export.ts";
import { sealed } from "../src/record/sealed.ts";
import { playOfficeDay } from "./support/office-day.ts";
import { run } from "./support/run.ts";

const folder = mkdtempSync(join(tmpdir(), "file-altered-"));

/** The JSON file of a small export, as text. */
async function exportedFile(): Promise<{ readonly path: string; readonly text: string }> {
  const db = join(folder, "small.db");
  playOfficeDay({ path: db, played: 1, times: 1, messages: 1 });
  const out = join(folder, "out");
  await run(["export", "--day", "2026-05-12", "--db", db, "--out", out]);
  const name = readdirSync(out).find((file) => file.endsWith(".json")) ?? "";
  return { path: join(out, name), text: readFileSync(join(out, name), "utf8") };
}

const small = await exportedFile();

/** Somebody who knows the program alters a letter and seals the file again. */
function resealed(at: number, letter: string): string {
  const changed = small.text.slice(0, at) + letter + small.text.slice(at + 1);
  return [...sealed([changed.replace(/,\n"seal": "[0-9a-f]{64}"\n\}\n$/, "")])].join("");
}

const part = (name: string): readonly [from: number, to: number] => {
  const from = small.text.indexOf(`\n"${name}": `);
  const to = small.text.indexOf("\n]", from);
  expect(from).toBeGreaterThan(0);
  return [from + `\n"${name}": `.length, to];
};

test("every byte of an exported file, turned into another, is found by the file alone", async () => {
  expect((await run(["verify", small.path])).exit).toBe(0);
  const missed: number[] = [];
  for (let at = 0; at < small.text.length; at++) {
    const letter = small.text[at] === "1" ? "2" : "1";
    const text = small.text.slice(0, at) + letter + small.text.slice(at + 1);
    if (!looksExported(text) || verifyExport(text).faults.length === 0) missed.push(at);
  }
  expect(missed.map((at) => small.text.slice(at - 20, at + 20))).toEqual([]);
});

test("a byte of any entry, or of the words behind it, is found where the file was sealed again", () => {
  const missed: string[] = [];
  for (const name of ["entries", "words", "other_heads"]) {
    if (name === "other_heads" && small.text.includes('"other_heads": []')) continue;
    const [from, to] = part(name);
    for (let at = from; at < to; at++) {
      const here = small.text[at] ?? "";
      // white space between the entries says nothing
      if (/\s/.test(here)) continue;
      const text = resealed(at, here === "1" ? "2" : "1");
      if (verifyExport(text).faults.length === 0) {
        missed.push(
          `${name}: ${small.text.slice(at - 20, at)}[${here}]${small.text.slice(at + 1, at + 20)}`,
        );
      }
    }
  }
  expect(missed).toEqual([]);
});

test("the command says altered, by exit 1, and names the entry", async () => {
  const path = join(folder, "altered.json");
  writeFileSync(path, small.text.replace('"role\\":\\"tech', '"role\\":\\"tach'));
  const ran = await run(["verify", path]);
  expect(ran.exit).toBe(1);
  expect(ran.out.join("\n")).toMatch(/job 1, entry 2 \(2026-05-12T/);
});
