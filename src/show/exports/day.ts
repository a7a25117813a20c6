import type { FileOut, Sheet } from "../../model.ts";
import { csvBytes } from "./csv.ts";
import { sheetMakers } from "./list.ts";
import { type DayRecord, touchedOnDay } from "./sheet-source.ts";
import { xlsxBytes } from "./xlsx.ts";

const spare = new Set(sheetMakers.filter((maker) => maker.spare).map(({ name }) => name));

/** A record as sheets: every fact a row, in the order of jobs and times. */
export function daySheets(record: DayRecord): readonly Sheet[] {
  const own = { ...record, jobs: jobsIn(record) };
  return sheetMakers.map(({ name, columns, rows }) => ({ name, columns, rows: rows(own) }));
}

/** The jobs that an export of the record holds. */
export function jobsIn(record: DayRecord): DayRecord["jobs"] {
  return record.jobs
    .filter(({ job }) => record.day === undefined || touchedOnDay(record, job))
    .sort((a, b) => a.job.job - b.job.job);
}

/** The beginning of the files' names: of a later revision its own, so that earlier files stay. */
export function filePrefix({ about, day }: DayRecord): string {
  const file = about?.file ?? day ?? "all";
  return about === undefined || about.revision === 1 ? file : `${file}-r${about.revision}`;
}

/** The files of a record: one CSV a sheet, and one workbook with all of them. */
export async function dayFiles(record: DayRecord): Promise<readonly FileOut[]> {
  const sheets = daySheets(record);
  const prefix = filePrefix(record);
  const tables = sheets
    .filter(({ name, rows }) => rows.length > 0 || !spare.has(name))
    .map((sheet) => ({
      name: `${prefix}-${sheet.name.replaceAll(" ", "-")}.csv`,
      type: "text/csv",
      bytes: csvBytes(sheet),
    }));
  const book = {
    name: `${prefix}.xlsx`,
    type: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    bytes: await xlsxBytes(sheets),
  };
  return [...tables, book];
}
