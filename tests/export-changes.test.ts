import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { run } from "./support/run.ts";

/** What the second export says of a day that went on after the first. */
async function changesAfter(
  first: readonly string[],
  later: readonly { readonly text: string; readonly edits?: string; readonly deletes?: string }[],
): Promise<readonly Readonly<Record<string, string>>[]> {
  const folder = mkdtempSync(join(tmpdir(), "changes-"));
  const db = join(folder, "store.db");
  const line = (n: number, said: object) =>
    JSON.stringify({
      ...{ id: `m${n}`, at: `2026-05-12T08:${String(10 + n)}:00-05:00`, channel: "south" },
      ...(n === 0
        ? { person: "maren", role: "dispatcher" }
        : { person: "odo", role: "tech", thread: "m0" }),
      ...said,
    });
  const lines = ["New job: Gull Wharf OU-3, not cooling. Odo", ...first].map((text, n) =>
    line(n, { text }),
  );
  const more = later.map((said, n) => line(lines.length + n, said));
  const out = join(folder, "out");
  for (const some of [lines, more]) {
    writeFileSync(join(folder, "chat.jsonl"), some.join("\n"));
    expect((await run(["replay", join(folder, "chat.jsonl"), "--db", db])).exit).toBe(0);
    expect((await run(["export", "--job", "1", "--db", db, "--out", out])).exit).toBe(0);
  }
  return parse(readFileSync(join(out, "job-1-r2-changes.csv"), "utf8"), {
    bom: true,
    columns: true,
  });
}

const told = (rows: readonly Readonly<Record<string, string>>[]) =>
  rows.map(({ what, was, is, message }) => [what, was, is, message]);

test("of a rewritten message only what it says otherwise is a change", async () => {
  const rows = await changesAfter(
    ["L1-L2 471 V L2-L3 459 V L1-L3 468 V"],
    [{ text: "L1-L2 470 V L2-L3 459 V L1-L3 468 V", edits: "m1" }],
  );
  expect(told(rows)).toEqual([["voltage", "L1-L2 471 V", "L1-L2 470 V", "m2"]]);
});

test("what was done, seen and noted since is listed, and what was taken back", async () => {
  const rows = await changesAfter(
    ["coil matted", "new contactor in"],
    [
      { text: "cleaned the coil" },
      { text: "invoice no. 88123 for the contactor" },
      { text: "", deletes: "m1" },
    ],
  );
  expect(told(rows)).toEqual([
    ["seen", "coil matted", "taken back", "m5"],
    ["done", "", "coil cleaned", "m3"],
    ["noted", "", "invoice no. 88123 for the contactor", "m4"],
  ]);
});

test("a sum of weights is another by the message that made it so", async () => {
  const rows = await changesAfter(
    ["charged 11.5 lb"],
    [{ text: "no, charged 12.5 lb" }, { text: "box 38 F" }],
  );
  expect(told(rows)).toContainEqual(["charged kg", "5.216312", "5.669905", "m2"]);
});
