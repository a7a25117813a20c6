import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import readXlsxFile from "read-excel-file/node";
import { afterAll, describe, expect, it } from "vitest";
import type { Sheet } from "../src/model.ts";
import { guardedText } from "../src/show/exports/cell-guard.ts";
import { csvBytes } from "../src/show/exports/csv.ts";
import { xlsxBytes } from "../src/show/exports/xlsx.ts";
import { atHand } from "./support/at-hand.ts";

/** Another program opens our files and saves them again; what it saved is read cell by cell. */
const program = "/usr/bin/soffice";
const texts = [
  ...["12E4", "007", "007-1", "1-2", "=1+1", "+1", "-6 F", "@x", "0.30", "1,000", "1E-2", "1.50"],
  ...["44-1902", "84 megohm", "Zoë Ångström", 'say "no",\nplease', "H15-2208"],
];
const sheet: Sheet = {
  name: "parts",
  columns: [
    { name: "text", kind: "text", about: "" },
    { name: "number", kind: "number", about: "" },
    { name: "at", kind: "time", about: "" },
  ],
  rows: texts.map((text, index) => [text, index === 0 ? -6 : index * 1.25, "2026-05-12 06:00:00"]),
};

describe.runIf(atHand("libreoffice", existsSync(program)))("another spreadsheet program", () => {
  const folder = mkdtempSync(join(tmpdir(), "readback-office-"));
  afterAll(() => rmSync(folder, { recursive: true }));

  async function savedAgain(name: string, bytes: Uint8Array, filter: readonly string[]) {
    writeFileSync(join(folder, name), bytes);
    const out = join(folder, "saved");
    const to = ["--headless", "--convert-to", "xlsx", "--outdir", out, join(folder, name)];
    execFileSync(program, [`-env:UserInstallation=file://${folder}/home`, ...filter, ...to], {
      stdio: "ignore",
    });
    const book = await readXlsxFile(readFileSync(join(out, name.replace(/\.\w+$/, ".xlsx"))));
    return (book[0]?.data ?? []).slice(1);
  }

  it("keeps every cell of the workbook, text, number and date", async () => {
    const rows = await savedAgain("book.xlsx", await xlsxBytes([sheet]), []);
    expect(rows).toEqual(
      sheet.rows.map(([text, number]) => [text, number, new Date("2026-05-12T06:00:00Z")]),
    );
  });

  it("runs and changes no text of the CSV, and takes numbers and times for what they are", async () => {
    // fields 44 comma, 34 quote, 76 UTF-8
    const filter = ["--infilter=Text - txt - csv (StarCalc):44,34,76,1,,1033,false,true"];
    const rows = await savedAgain("sheet.csv", csvBytes(sheet), filter);
    expect(rows.map((row) => row[0])).toEqual(texts.map((text) => guardedText(text)));
    expect(rows.map((row) => row[1])).toEqual(sheet.rows.map((row) => row[1]));
  });
});
