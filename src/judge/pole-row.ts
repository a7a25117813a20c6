import type { Reading } from "../model.ts";
import { noteOf, sentenceBefore } from "./near.ts";
import { numberOf } from "./pick.ts";
import type { Scene } from "./scene.ts";

/** V; more is what a line delivers, not what a closed contact loses. Common practice, no source. */
const leastLineV = 60;

const drops = "(?:drops?|dropped|dropping|lost|loss|loses|losing)";
const contacts = "(?:poles?|contacts?|contactor)";
const head = new RegExp(
  `\\b(?:${drops}\\b[^.;]*\\b${contacts}|${contacts}\\b[^.;]*\\b${drops})\\b(?!.*\\b(?:coil|line|legs?|supply|amps)\\b)([^;]*)$`,
  "i",
);
/** What may stand between a head and the figures of its row: figures, their names, and that it runs. */
const row =
  /^(?:[\s\d.,:/=()-]|m?v(?:olts?)?\b|each\b|running\b|under load\b|loaded\b|closed\b|poles?\b|l[123]\b|and\b|then\b|is\b|are\b|only\b|of\b|a\b|the\b|others?\b|about\b|one\b|two\b|three\b|left\b|middle\b|right\b)*$/i;

/** "drop over the contactor poles: 0.1, 0.1, 4.1 volts": a figure in the row that these words head. */
export function isInPoleRow(scene: Scene, reading: Reading): boolean {
  if (Math.abs(numberOf(reading) ?? 0) >= leastLineV) return false;
  const text = noteOf(scene, reading)?.text;
  if (text === undefined) return false;
  const between = head.exec(sentenceBefore(text, reading))?.[1];
  return between !== undefined && row.test(between);
}
