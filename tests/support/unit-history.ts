import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { expect } from "vitest";
import { run } from "./run.ts";

/** Imports an office's list, plays messages, exports, and reads the sheets back: the office's own way. */
const folder = mkdtempSync(join(tmpdir(), "leak-log-"));
let stores = 0;

export type Row = Readonly<Record<string, string>>;
/** [ISO local time, words]; `job` opens one for the unit */
export type Said = readonly [at: string, text: string];

export async function sheets(unit: Row | readonly Row[], said: readonly Said[]) {
  const place = join(folder, String(++stores));
  mkdirSync(place);
  const db = join(place, "store.db");
  const list = [unit].flat().map((row) => ({
    ...{ tag: "U-1", site: "Cinder School", kind: "chiller" },
    ...row,
  }));
  const csv = [Object.keys(list[0] ?? {}), ...list.map((row) => Object.values(row))]
    .map((row) => row.join(","))
    .join("\n");
  writeFileSync(join(place, "equipment.csv"), csv);
  const taken = await run(["import", join(place, "equipment.csv"), "--db", db]);
  expect(taken.exit, taken.out.join("\n")).toBe(0);
  let thread = "";
  const lines = said.map(([at, text], n) => {
    const opens = text.startsWith("New job");
    if (opens) thread = `m${n}`;
    const who = opens ? { person: "maren", role: "dispatcher" } : { person: "odo", role: "tech" };
    const where = opens ? { channel: "south" } : { channel: "south", thread };
    return JSON.stringify({ id: `m${n}`, at, ...where, ...who, text });
  });
  writeFileSync(join(place, "chat.jsonl"), lines.join("\n"));
  expect((await run(["replay", join(place, "chat.jsonl"), "--db", db])).exit).toBe(0);
  const out = join(place, "out");
  const made = await run(["export", "--unit", "U-1", "--db", db, "--out", out]);
  expect(made.exit, made.complaints).toBe(0);
  const rows = (name: string): readonly Row[] => {
    const file = readdirSync(out).find((one) => one.endsWith(`-${name}.csv`));
    if (file === undefined) return [];
    return parse(readFileSync(join(out, file), "utf8"), { bom: true, columns: true });
  };
  const isPeriodic = ({ what = "" }: Row): boolean => /periodic|leak check every/.test(what);
  return {
    db,
    rows,
    log: rows("leak-log"),
    due: rows("due").filter((row) => !isPeriodic(row)),
    inspections: rows("due").filter(isPeriodic),
  };
}

export const visit = (at: string, ...texts: readonly string[]): readonly Said[] => [
  [`${at}T08:00:00-05:00`, "New job: Cinder School U-1, not cooling. Odo"],
  ...texts.map((text, n): Said => [`${at}T08:${10 + n}:00-05:00`, text]),
];
