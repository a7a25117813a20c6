import type { FileOut, Sheet } from "../../model.ts";
import { joined } from "../joined.ts";
import { reportBytes } from "../report/pdf.ts";
import { csvFiles, daySheets, filePrefix, workbookFile } from "./day.ts";
import type { ExportRecord } from "./export-record.ts";
import { type FilePrint, jsonPieces } from "./json.ts";
import { xlsxBytes } from "./xlsx.ts";

/** How a part of the files is made, where it is made elsewhere. */
export interface Makers {
  /** Sheets as a workbook; another thread may do it while the other files are made. */
  readonly workbook?: (sheets: readonly Sheet[]) => Promise<Uint8Array>;
}

/**
 * Every file of an export, one after the other, so that no two large ones are held at once; the JSON
 * comes last, with the fingerprints of the others.
 */
export async function* exportFiles(
  record: ExportRecord,
  { workbook = xlsxBytes }: Makers = {},
): AsyncGenerator<FileOut> {
  const prints: FilePrint[] = [];
  const noted = (file: FileOut): FileOut => {
    prints.push({ name: file.name, sha256: record.fingerprint(file.bytes) });
    return file;
  };
  const sheets = daySheets(record, record.sheets);
  const book = workbook(sheets);
  // what went wrong is told where it is waited for
  book.catch(() => {});
  for (const file of csvFiles(record, sheets)) yield noted(file);
  const reports = record.reports.length === 0 ? [] : [await reportFile(record)];
  yield noted(workbookFile(record, await book));
  for (const file of reports) yield noted(file);
  yield {
    name: `${filePrefix(record)}.json`,
    type: "application/json",
    bytes: encoded(jsonPieces(record, prints)),
  };
}

async function reportFile(record: ExportRecord): Promise<FileOut> {
  const one = record.reports.length === 1 ? "report" : "reports";
  return {
    name: `${filePrefix(record)}-${one}.pdf`,
    type: "application/pdf",
    bytes: await reportBytes(record.reports),
  };
}

/** A text in pieces as bytes: the whole of it is never held as text too. */
function encoded(pieces: Iterable<string>): Uint8Array {
  const encoder = new TextEncoder();
  return joined(Array.from(pieces, (piece) => encoder.encode(piece)));
}
