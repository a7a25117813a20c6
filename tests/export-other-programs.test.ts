import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { guardedText } from "../src/show/exports/cell-guard.ts";
import { atHand } from "./support/at-hand.ts";
import { playOfficeDay } from "./support/office-day.ts";
import { run } from "./support/run.ts";

/** A spreadsheet program that is not ours opens the workbook and writes what it sees, sheet by sheet. */
const program = "soffice";
const present = spawnSync(program, ["--version"]).status === 0;

/** Comma, quotes, UTF-8, from line 1; cells as shown, formulas not; every sheet a file. */
const asCsv = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1";

type Table = readonly (readonly string[])[];

const strict = (path: string): Table => {
  const table: string[][] = parse(readFileSync(path, "utf8"), { bom: true });
  return table;
};

/** The sheets of a workbook as that program sees them, by name. */
function seenBy(book: string, folder: string): ReadonlyMap<string, Table> {
  const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
  const args = [profile, "--headless", "--convert-to", asCsv, "--outdir", folder, book];
  execFileSync(program, args, { stdio: "ignore" });
  const name = /([^/]+)\.xlsx$/.exec(book)?.[1] ?? "";
  return new Map(
    readdirSync(folder)
      .filter((file) => file.startsWith(`${name}-`) && file.endsWith(".csv"))
      .map((file) => [file.slice(name.length + 1, -4), strict(join(folder, file))]),
  );
}

/** What differs between one cell of ours and the same cell as seen; a number may lose its last digits. */
function differs(ours: string, seen: string): boolean {
  if (ours === seen || ours === guardedText(seen)) return false;
  // dates are shown to the minute
  if (/^\d{4}-\d\d-\d\d \d\d:\d\d:\d\d$/.test(ours)) return ours.slice(0, 16) !== seen;
  const [a, b] = [Number(ours), Number(seen)];
  return ours === "" || seen === "" || !(Math.abs(a - b) <= 1e-8 * Math.abs(a));
}

if (atHand("LibreOffice", present)) {
  test("every cell of every sheet is what another program sees in the workbook", async () => {
    const folder = mkdtempSync(join(tmpdir(), "sheets-"));
    const db = join(folder, "day.db");
    playOfficeDay({ path: db, played: 5, times: 1, messages: 12 });
    const out = join(folder, "out");
    const exported = await run(["export", "--day", "2026-05-12", "--db", db, "--out", out]);
    expect(exported.exit).toBe(0);
    const seen = seenBy(join(out, "2026-05-12.xlsx"), folder);
    const tables = readdirSync(out).filter((file) => file.endsWith(".csv"));
    expect(tables.length).toBeGreaterThanOrEqual(6);
    let cells = 0;
    for (const file of tables) {
      const ours = strict(join(out, file));
      const name = file.slice("2026-05-12-".length, -4);
      const sheet = seen.get(name) ?? seen.get(name.replaceAll("-", " "));
      expect([name, sheet?.length]).toEqual([name, ours.length]);
      for (const [row, line] of ours.entries()) {
        for (const [column, cell] of line.entries()) {
          const other = sheet?.[row]?.[column] ?? "";
          cells += 1;
          if (differs(cell, other))
            expect([name, row, column, other]).toEqual([name, row, column, cell]);
        }
      }
    }
    process.stderr.write(`cells compared with LibreOffice: ${cells}\n`);
    expect(cells).toBeGreaterThan(4000);
  }, 180_000);
}
