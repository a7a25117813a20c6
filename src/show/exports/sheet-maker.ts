import type { Cell, Sheet } from "../../model.ts";
import type { DayRecord } from "./sheet-source.ts";

/** One sheet of an export: its columns with what they hold, and how rows are made of the record. */
export interface SheetMaker {
  readonly name: string;
  readonly columns: Sheet["columns"];
  /** about the export itself and not the work: revisions are not counted by it */
  readonly ofExport?: true;
  /** no file of its own where it has no rows */
  readonly spare?: true;
  readonly rows: (record: DayRecord) => readonly (readonly Cell[])[];
}
