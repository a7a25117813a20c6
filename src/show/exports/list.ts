import { aboutSheet } from "./about-sheet.ts";
import { changesSheet } from "./changes-sheet.ts";
import { dueSheet } from "./due-sheet.ts";
import { hoursSheet } from "./hours-sheet.ts";
import { jobsSheet } from "./jobs-sheet.ts";
import { lackingSheet } from "./lacking-sheet.ts";
import { leakSheet } from "./leak-sheet.ts";
import { openSheet } from "./open-sheet.ts";
import { partsSheet } from "./parts-sheet.ts";
import { readingsSheet } from "./readings-sheet.ts";
import { recoveredSheet } from "./recovered-sheet.ts";
import { refrigerantSheet } from "./refrigerant-sheet.ts";
import { returnsSheet } from "./returns-sheet.ts";
import type { SheetMaker } from "./sheet-maker.ts";
import { supplySheet } from "./supply-sheet.ts";
import { timeSheet } from "./time-sheet.ts";
import { toOrderSheet } from "./to-order-sheet.ts";
import { warrantySheet } from "./warranty-sheet.ts";

/** The sheets of every export; a new one is its file and a line here. */
export const sheetMakers: readonly SheetMaker[] = [
  jobsSheet,
  readingsSheet,
  timeSheet,
  hoursSheet,
  partsSheet,
  toOrderSheet,
  refrigerantSheet,
  leakSheet,
  dueSheet,
  recoveredSheet,
  supplySheet,
  warrantySheet,
  returnsSheet,
  openSheet,
  lackingSheet,
  changesSheet,
  aboutSheet,
];
