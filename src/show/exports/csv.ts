import type { Cell, Sheet } from "../../model.ts";
import { guardedText } from "./cell-guard.ts";

/** Spreadsheets take a file without this mark for an old code page. */
const byteOrderMark = "\ufeff";

/**
 * A sheet as CSV after RFC 4180: UTF-8 with byte order mark, comma, CRLF, quotes where needed.
 * Text that a spreadsheet would run or change is guarded; numbers stay bare numbers.
 */
export function csvBytes(sheet: Sheet): Uint8Array {
  return new TextEncoder().encode(byteOrderMark + csvText(sheet));
}

/** The same without the mark. */
export function csvText(sheet: Sheet): string {
  const head = sheet.columns.map((column) => quoted(column.name));
  const rows = sheet.rows.map((row) =>
    row.map((cell, index) => field(cell, sheet.columns[index]?.kind ?? "text")),
  );
  return [head, ...rows].map((row) => `${row.join(",")}\r\n`).join("");
}

function field(cell: Cell, kind: Sheet["columns"][number]["kind"]): string {
  if (cell === null) return "";
  if (typeof cell === "number") return plainNumber(cell);
  return quoted(kind === "time" && isTime(cell) ? cell : guardedText(cell));
}

function isTime(text: string): boolean {
  return /^\d{4}-\d\d-\d\d( \d\d:\d\d(:\d\d)?)?$/.test(text);
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Digits without an exponent: some programs read "1e-7" as text. Nine digits are kept. */
export function plainNumber(value: number): string {
  if (!Number.isFinite(value)) return "";
  const kept = String(Number(value.toPrecision(9)));
  if (!kept.includes("e")) return kept;
  const fixed = Number(kept).toFixed(20);
  return fixed.includes("e") ? kept : fixed.replace(/\.?0+$/, "");
}
