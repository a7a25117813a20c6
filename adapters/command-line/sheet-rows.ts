import { decodeText } from "../../src/record/import/decode.ts";
import type { SheetRow } from "../../src/record/import/sheet-row.ts";
import { partsOf, plainArchive } from "./archive.ts";
import { delimiterOf, rowsOf } from "./csv-rows.ts";
import { sheetArea } from "./sheet-area.ts";

/** One table of an office file. */
export interface SheetRows {
  /** the workbook's name of it; "" for a CSV */
  readonly name: string;
  readonly rows: readonly SheetRow[];
  /** what stands between cells; "" in a workbook, where numbers are numbers */
  readonly delimiter: string;
}

const startsWith = (bytes: Uint8Array, mark: readonly number[]): boolean =>
  mark.every((byte, index) => bytes[index] === byte);

/** The tables of a CSV file or a workbook, told by its bytes and not by its name, or a sentence. */
export async function sheetRows(bytes: Uint8Array): Promise<readonly SheetRows[] | string> {
  if (startsWith(bytes, [0x50, 0x4b])) return bookRows(bytes);
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0]))
    return "It is a workbook of the old kind; save it as XLSX or CSV and send that.";
  if (startsWith(bytes, [0x25, 0x50, 0x44, 0x46]))
    return "It is a PDF; send the table that it was made from, as XLSX or CSV.";
  const { text } = decodeText(bytes);
  if (text.includes("\0")) return "It is neither CSV nor XLSX.";
  const rows = rowsOf(text);
  return typeof rows === "string" ? rows : [{ name: "", rows, delimiter: delimiterOf(text) }];
}

const noBook = "It is no workbook that can be read; save it again as XLSX or CSV.";
/** Bytes of all parts of a workbook; a list of 100,000 rows has a tenth of it. Our choice, no source. */
const mostInflated = 200 * 2 ** 20;
/** A list of 100,000 rows and 50 columns; our choice, no source. */
const mostCells = 5_000_000;
const tooLarge = "The workbook is larger than any list of ours; save the list alone, as CSV.";
/** Ten times what a list of 100,000 rows takes; our choice, no source. */
const patienceMs = 30_000;

async function inTime<T>(reading: Promise<T>): Promise<T | undefined> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<undefined>((resolve) => {
    timer = setTimeout(() => resolve(undefined), patienceMs);
  });
  try {
    return await Promise.race([reading, late]);
  } finally {
    clearTimeout(timer);
  }
}

async function bookRows(bytes: Uint8Array): Promise<readonly SheetRows[] | string> {
  try {
    const parts = partsOf(bytes, /\.(?:xml|rels)$/i, mostInflated);
    if (parts === "broken") return noBook;
    if (parts === "too large") return tooLarge;
    // any part may be a sheet; most of them have no cells
    const area = parts.reduce(
      (sum, part) => sum + sheetArea(Buffer.from(part.bytes).toString()),
      0,
    );
    if (area > mostCells) return tooLarge;
    // only who imports a workbook waits for its reader to load
    const { default: readXlsxFile } = await import("read-excel-file/node");
    // a broken archive may leave its reader waiting for ever
    const book = await inTime(readXlsxFile(plainArchive(parts)));
    if (book === undefined) return noBook;
    const sheets = book.map(({ sheet, data }) => ({
      name: sheet,
      delimiter: "",
      rows: data.flatMap((row, index): SheetRow[] => {
        const cells = row.map(cellText);
        return cells.every((cell) => cell === "") ? [] : [{ line: index + 1, cells }];
      }),
    }));
    return sheets.filter(({ rows }) => rows.length > 0);
  } catch {
    return noBook;
  }
}

/** A cell as a person would have typed it. */
function cellText(cell: unknown): string {
  if (cell === null || cell === undefined) return "";
  if (cell instanceof Date) return cell.toISOString().slice(0, 10);
  if (typeof cell === "number") return String(Number(cell.toPrecision(15)));
  if (typeof cell === "boolean") return cell ? "yes" : "no";
  return String(cell).trim();
}
