import { jobsSheet } from "./jobs-sheet.ts";
import { openSheet } from "./open-sheet.ts";
import { partsSheet } from "./parts-sheet.ts";
import { readingsSheet } from "./readings-sheet.ts";
import { refrigerantSheet } from "./refrigerant-sheet.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { timeSheet } from "./time-sheet.ts";

/** The sheets of every export; a new one is its file and a line here. */
export const sheetMakers: readonly SheetMaker[] = [
  jobsSheet,
  readingsSheet,
  timeSheet,
  partsSheet,
  refrigerantSheet,
  openSheet,
];
