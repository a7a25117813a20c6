import type { Cell, Sheet } from "../../model.ts";
import type { DayRecord } from "./sheet-source.ts";

/** One sheet of an export: its columns with what they hold, and how rows are made of the record. */
export interface SheetMaker {
  readonly name: string;
  readonly columns: Sheet["columns"];
  /** no file of its own where it has no rows */
  readonly spare?: true;
  readonly rows: (record: DayRecord) => readonly (readonly Cell[])[];
}
