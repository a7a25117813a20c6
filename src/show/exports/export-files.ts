import type { FileOut } from "../../model.ts";
import { reportBytes } from "../report/pdf.ts";
import { dayFiles, filePrefix } from "./day.ts";
import type { ExportRecord } from "./export-record.ts";
import { jsonText } from "./json.ts";

/** Every file of an export; the JSON comes last, with the fingerprints of the others. */
export async function exportFiles(record: ExportRecord): Promise<readonly FileOut[]> {
  const sheets = await dayFiles(record);
  const reports = record.reports.length === 0 ? [] : [await reportFile(record)];
  const files = [...sheets, ...reports];
  const json = {
    name: `${filePrefix(record)}.json`,
    type: "application/json",
    bytes: new TextEncoder().encode(jsonText(record, files)),
  };
  return [...files, json];
}

async function reportFile(record: ExportRecord): Promise<FileOut> {
  const one = record.reports.length === 1 ? "report" : "reports";
  return {
    name: `${filePrefix(record)}-${one}.pdf`,
    type: "application/pdf",
    bytes: await reportBytes(record.reports),
  };
}
