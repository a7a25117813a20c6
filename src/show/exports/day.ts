import type { FileOut, Sheet } from "../../model.ts";
import { csvBytes } from "./csv.ts";
import { sheetMakers } from "./list.ts";
import { type DayRecord, touchedOnDay } from "./sheet-source.ts";

const spare = new Set(sheetMakers.filter((maker) => maker.spare).map(({ name }) => name));

/**
 * A record as sheets: every fact a row, in the order of jobs and times. `made`: sheets of the same
 * record that stand already; only those about the export itself are made again.
 */
export function daySheets(record: DayRecord, made: readonly Sheet[] = []): readonly Sheet[] {
  const own = { ...record, jobs: jobsIn(record) };
  return sheetMakers.map(({ name, columns, rows, ofExport }) => {
    const known = ofExport === true ? undefined : made.find((sheet) => sheet.name === name);
    return known ?? { name, columns, rows: rows(own) };
  });
}

const ofExport = new Set(sheetMakers.filter((maker) => maker.ofExport).map(({ name }) => name));

/** The sheets that hold the work: the same facts again are the same export. */
export function sheetsOfWork(sheets: readonly Sheet[]): readonly Sheet[] {
  return sheets.filter(({ name }) => !ofExport.has(name));
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

/** One CSV a sheet, one after the other; none for those that are spared where they have no rows. */
export function* csvFiles(record: DayRecord, sheets: readonly Sheet[]): Generator<FileOut> {
  const prefix = filePrefix(record);
  for (const sheet of sheets) {
    if (sheet.rows.length === 0 && spare.has(sheet.name)) continue;
    yield {
      name: `${prefix}-${sheet.name.replaceAll(" ", "-")}.csv`,
      type: "text/csv",
      bytes: csvBytes(sheet),
    };
  }
}

/** One workbook with all sheets. */
export function workbookFile(record: DayRecord, bytes: Uint8Array): FileOut {
  return {
    name: `${filePrefix(record)}.xlsx`,
    type: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    bytes,
  };
}
