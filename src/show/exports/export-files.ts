import type { FileOut } from "../../model.ts";
import { joined } from "../joined.ts";
import { reportBytes } from "../report/pdf.ts";
import { dayFiles, daySheets, filePrefix } from "./day.ts";
import type { ExportRecord } from "./export-record.ts";
import { type FilePrint, jsonPieces } from "./json.ts";

/**
 * Every file of an export, one after the other, so that no two of them are held at once; the JSON
 * comes last, with the fingerprints of the others.
 */
export async function* exportFiles(record: ExportRecord): AsyncGenerator<FileOut> {
  const prints: FilePrint[] = [];
  const noted = (file: FileOut): FileOut => {
    prints.push({ name: file.name, sha256: record.fingerprint(file.bytes) });
    return file;
  };
  for await (const file of dayFiles(record, daySheets(record, record.sheets))) yield noted(file);
  if (record.reports.length > 0) yield noted(await reportFile(record));
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
