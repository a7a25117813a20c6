import { dipsTo } from "./dips-to.ts";
import type { Draft } from "./draft.ts";
import { driveOut } from "./drive-out.ts";
import { lineToLine } from "./line-to-line.ts";
import type { Note } from "./note.ts";
import { plusForPipes, plusMass } from "./plus-mass.ts";
import { sensorShows } from "./sensor-shows.ts";
import { zoneDegrees } from "./zone-degrees.ts";

/** What a word right beside a figure makes of it, before the figures are told apart by each other. */
export function toldByWords(drafts: readonly Draft[], note: Note): void {
  const { items, plain, context } = note;
  dipsTo(drafts, items);
  plusForPipes(drafts, items);
  plusMass(drafts, items, plain);
  driveOut(drafts, items);
  zoneDegrees(drafts, items, context.units);
  lineToLine(drafts, items, plain);
  sensorShows(drafts, items, context.units);
}
