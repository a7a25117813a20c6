import type { FileOut, Sheet } from "../../model.ts";
import { csvBytes } from "./csv.ts";
import { sheetMakers } from "./list.ts";
import { type DayRecord, touchedOnDay } from "./sheet-source.ts";
import { xlsxBytes } from "./xlsx.ts";

/** One day as sheets: every fact a row, in the order of jobs and times. */
export function daySheets(record: DayRecord): readonly Sheet[] {
  const jobs = record.jobs
    .filter(({ job }) => touchedOnDay(record, job))
    .sort((a, b) => a.job.job - b.job.job);
  const own: DayRecord = { ...record, jobs };
  return sheetMakers.map(({ name, columns, rows }) => ({ name, columns, rows: rows(own) }));
}

/** The day's files: one CSV a sheet, and one workbook with all of them. */
export async function dayFiles(record: DayRecord): Promise<readonly FileOut[]> {
  const sheets = daySheets(record);
  const tables = sheets.map((sheet) => ({
    name: `${record.day}-${sheet.name.replaceAll(" ", "-")}.csv`,
    type: "text/csv",
    bytes: csvBytes(sheet),
  }));
  const book = {
    name: `${record.day}.xlsx`,
    type: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    bytes: await xlsxBytes(sheets),
  };
  return [...tables, book];
}
