import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { exportRecord } from "../src/bot/export-record.ts";
import { looksExported, verifyExport } from "../src/bot/verify-export.ts";
import { sealed, sealOf } from "../src/record/sealed.ts";
import { jsonPieces } from "../src/show/exports/json.ts";
import { playConversation } from "./support/conversation.ts";
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

/** An export of a job with a bit of everything. */
async function workedOn(): Promise<{ readonly path: string; readonly text: string }> {
  const db = join(folder, "worked.db");
  const texts = ["here", "recovered 7 lb 6 oz", "need a contactor", "locked out at the disconnect"];
  const lines = ["New job: Gull Wharf RTU-1, not cooling. Odo", ...texts].map((text, n) => ({
    ...{ id: `m${n}`, at: `2026-05-12T08:0${n}:00-05:00`, channel: "south", text },
    ...(n === 0
      ? { person: "maren", role: "dispatcher" }
      : { person: "odo", role: "tech", thread: "m0" }),
  }));
  const chat = join(folder, "worked.jsonl");
  writeFileSync(chat, lines.map((line) => JSON.stringify(line)).join("\n"));
  await run(["replay", chat, "--db", db]);
  const out = join(folder, "worked");
  await run(["export", "--job", "1", "--db", db, "--out", out]);
  const path = join(out, "job-1.json");
  return { path, text: readFileSync(path, "utf8") };
}

const worked = await workedOn();

const sealAgain = (text: string): string =>
  [...sealed([text.replace(/,\n"seal": "[0-9a-f]{64}"\n\}\n$/, "")])].join("");

/** Somebody who knows the program alters a letter and seals the file again. */
function resealed(at: number, letter: string): string {
  const changed = small.text.slice(0, at) + letter + small.text.slice(at + 1);
  return sealAgain(changed);
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
}, 240_000);

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
}, 240_000);

test("the command says altered, by exit 1, and names the entry", async () => {
  const path = join(folder, "altered.json");
  writeFileSync(path, small.text.replace('"role\\":\\"tech', '"role\\":\\"tach'));
  const ran = await run(["verify", path]);
  expect(ran.exit).toBe(1);
  expect(ran.out.join("\n")).toMatch(/job 1, entry 2 \(2026-05-12T/);
});

test.each([
  ['"status":"on_site"', '"status":"done"', "statements"],
  ['"labor_hours":', '"labor_hours":1', "labor hours"],
  ['"recovered_kg":', '"recovered_kg":1', "refrigerant"],
  ['"power":"', '"power":"un', "machine"],
  ['"equipment":"RTU-1"', '"equipment":"RTU-2"', "equipment"],
  ['"state":"needed"', '"state":"fitted"', "parts"],
  ['"says":"need a contactor"', '"says":"need a contactor, said Ife"', "timeline"],
])(
  "a fact of a job, %s made %s and sealed again, is not what its entries tell",
  (was, is, name) => {
    const made = worked.text.replace(was, is);
    expect(made).not.toBe(worked.text);
    const { faults } = verifyExport(sealAgain(made));
    expect(faults).toContain(`job 1, ${name}: is not what its entries tell`);
  },
);

test("verdicts that were altered and sealed again are found by the seal that was kept", async () => {
  const text = worked.text.replace(/"probability":0\.\d/, '"probability":0.0');
  expect(text).not.toBe(worked.text);
  const path = join(folder, "verdicts.json");
  writeFileSync(path, sealAgain(text));
  const kept = sealOf(worked.text) ?? "";
  const alone = await run(["verify", path]);
  // alone it proves its entries, and says that it proves no more
  expect([alone.exit, alone.complaints]).toEqual([0, expect.stringMatching(/Verdicts .*--seal/)]);
  for (const option of ["--seal", "--digest"]) {
    const ran = await run(["verify", path, option, kept]);
    expect([ran.exit, ran.out.join()]).toEqual([1, expect.stringMatching(/sealed again/)]);
    const whole = await run(["verify", worked.path, option, kept]);
    expect([whole.exit, whole.complaints]).toEqual([0, ""]);
  }
});

test("the command tells the seal with the files that it writes", async () => {
  const out = join(folder, "told");
  const ran = await run(["export", "--job", "1", "--db", join(folder, "worked.db"), "--out", out]);
  const seal = sealOf(readFileSync(join(out, "job-1.json"), "utf8"));
  expect(ran.complaints).toContain(`Seal of job-1.json and all that it lists: ${seal}`);
  const store = await run(["verify", join(folder, "worked.db"), "--seal", seal ?? ""]);
  expect([store.exit, store.complaints]).toEqual([2, expect.stringMatching(/of an exported file/)]);
});

test("of sheets and reports beside it the JSON says which was altered", async () => {
  const folderOf = dirname(worked.path);
  const sheet = readdirSync(folderOf).find((file) => file.endsWith("parts.csv")) ?? "";
  const before = readFileSync(join(folderOf, sheet), "utf8");
  expect((await run(["verify", worked.path])).exit).toBe(0);
  writeFileSync(join(folderOf, sheet), before.replace("needed", "fitted"));
  for (const path of [worked.path, join(folderOf, sheet)]) {
    const ran = await run(["verify", path]);
    expect([ran.exit, ran.out.join()]).toEqual([1, expect.stringContaining(sheet)]);
  }
  writeFileSync(join(folderOf, sheet), before);
  const digest = ["--digest", `4-${"a".repeat(64)}`];
  expect((await run(["verify", join(folderOf, sheet), ...digest])).exit).toBe(1);
});

const stories = readdirSync("fixtures/conversations").filter((file) => file.endsWith(".txt"));

test("whatever was said and taken back, an export of it is what its entries tell", () => {
  const wrong = stories.flatMap((file) => {
    const { bot } = playConversation(readFileSync(`fixtures/conversations/${file}`, "utf8"));
    const record = exportRecord(bot, { kind: "range", day: "2026-01-01", to: "2026-12-31" });
    const { faults } = verifyExport([...jsonPieces(record, [])].join(""));
    return faults.map((fault) => `${file}: ${fault}`);
  });
  expect(wrong).toEqual([]);
}, 240_000);
