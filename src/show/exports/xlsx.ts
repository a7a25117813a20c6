import writeExcelFile, { type CellObject, type Row } from "write-excel-file/node";
import type { Cell, Sheet } from "../../model.ts";
import { guardedText } from "./cell-guard.ts";
import { fixedZipTimes } from "./fixed-zip-times.ts";

/** The longest text that a cell of the format may hold. */
const mostLetters = 32_767;
const narrowest = 8;
const widest = 48;

/**
 * Sheets as one workbook: text cells that stay text, numbers, dates as dates, a frozen header,
 * and a last sheet that explains every column. The same sheets give the same bytes.
 */
export async function xlsxBytes(sheets: readonly Sheet[]): Promise<Uint8Array> {
  const pages = [...sheets, explained(sheets)].map((sheet) => ({
    sheet: sheet.name,
    data: [sheet.columns.map((c) => header(c.name)), ...sheet.rows.map((r) => cells(sheet, r))],
    columns: sheet.columns.map((_, index) => ({ width: widthOf(sheet, index) })),
    stickyRowsCount: 1,
  }));
  return fixedZipTimes(await writeExcelFile(pages).toBuffer());
}

function header(name: string): CellObject {
  return { value: name, type: String, fontWeight: "bold", bottomBorderStyle: "thin" };
}

function cells(sheet: Sheet, row: readonly Cell[]): Row {
  return row.map((cell, index) => typed(cell, sheet.columns[index]?.kind ?? "text"));
}

/** What needs no format goes bare: the writer takes a text for text and a number for a number. */
function typed(cell: Cell, kind: Sheet["columns"][number]["kind"]): Row[number] {
  if (cell === null || cell === "") return null;
  if (typeof cell === "number") return Number.isFinite(cell) ? Number(cell.toPrecision(9)) : null;
  const moment = kind === "time" ? wallClock(cell) : undefined;
  if (moment !== undefined) {
    const format = cell.length === 10 ? "yyyy-mm-dd" : "yyyy-mm-dd hh:mm";
    return { value: moment, type: Date, format };
  }
  const text = writable(cell);
  // what a program would take for a number, a date or a formula when the cell is typed in again
  return guardedText(cell) === cell ? text : { value: text, type: String, format: "@" };
}

/** A spreadsheet's date has no zone: the company's wall clock is written as it stands. */
function wallClock(text: string): Date | undefined {
  const moment = new Date(`${text.replace(" ", "T")}Z`);
  return Number.isNaN(moment.getTime()) ? undefined : moment;
}

/** In the length that a cell can hold; the writer drops what XML cannot hold. */
function writable(text: string): string {
  return text.length <= mostLetters ? text : `${text.slice(0, mostLetters - 6)} (cut)`;
}

function widthOf(sheet: Sheet, index: number): number {
  const name = sheet.columns[index]?.name.length ?? 0;
  const longest = sheet.rows.reduce(
    (most, row) => Math.max(most, String(row[index] ?? "").length),
    name,
  );
  return Math.min(widest, Math.max(narrowest, longest + 2));
}

function explained(sheets: readonly Sheet[]): Sheet {
  return {
    name: "columns",
    columns: [
      { name: "sheet", kind: "text", about: "" },
      { name: "column", kind: "text", about: "" },
      { name: "what it holds", kind: "text", about: "" },
    ],
    rows: sheets.flatMap((s) => s.columns.map((c) => [s.name, c.name, c.about])),
  };
}
