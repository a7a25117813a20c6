import type { CaseNote, Reading } from "../model.ts";
import { figureSpan } from "./figure-span.ts";
import { perScene, type Scene } from "./scene.ts";

export { figureSpan } from "./figure-span.ts";

/** Letters looked at on each side of a reading's own words. */
const around = 60;

/** The note that holds a reading. */
export function noteOf(scene: Scene, reading: Reading): CaseNote | undefined {
  return scene.noteOf.get(reading);
}

/** What stands about a reading in its note, lower case: subject, place and words. */
export function wordsNear(scene: Scene, reading: Reading): string {
  const own = [reading.subject ?? "", reading.at ?? "", reading.said].join(" ");
  return `${own} ${beside(scene, reading, [around, around])}`.toLowerCase();
}

/**
 * The note's own words about a reading's figure, lower case: so many letters before it, the figure
 * with the words that were read with it, and so many after.
 */
export function beside(
  scene: Scene,
  reading: Reading,
  [before, after]: readonly [before: number, after: number],
): string {
  const text = noteOf(scene, reading)?.text;
  if (text === undefined) return reading.said.toLowerCase();
  const [from, to] = figureSpan(text, reading);
  return text.slice(Math.max(0, from - before), to + after).toLowerCase();
}

/** The words of the note that holds a reading, lower case. */
export function noteWords(scene: Scene, reading: Reading): string {
  return (noteOf(scene, reading)?.text ?? reading.said).toLowerCase();
}

/** The valve by its names. */
export const reversingValve =
  /revers\w+ valve|4.?way|four.?way|(?:switching|changeover|change-over|shuttle|rev\.?) valve|\brv\b/;

const namesReversingValve: (scene: Scene) => boolean = perScene((scene) =>
  reversingValve.test(scene.words),
);

/** A pipe at a reversing valve, said in the valve's own sentence: its temperature speaks of the valve alone. */
export function isAtReversingValve(scene: Scene, reading: Reading): boolean {
  if (!namesReversingValve(scene)) return false;
  const note = noteOf(scene, reading);
  if (note === undefined || !reversingValve.test(sentenceOf(note, reading))) return false;
  return note.readings.filter((one) => one.quantity === "temperature").length >= 2;
}

/** The sentence of its note that a reading stands in, lower case. */
function sentenceOf(note: CaseNote, reading: Reading): string {
  const text = (note.text ?? "").toLowerCase();
  const [from, to] = figureSpan(text, reading);
  const start = Math.max(text.lastIndexOf(". ", from), text.lastIndexOf("; ", from), 0);
  const ends = [text.indexOf(". ", to), text.indexOf("; ", to)].filter((one) => one >= 0);
  return text.slice(start, ends.length === 0 ? text.length : Math.min(...ends));
}

/** What its sentence says before a figure. */
export function sentenceBefore(text: string, reading: Reading): string {
  const [from] = figureSpan(text, reading);
  const sentences = text.slice(0, from).split(/[.;]\s/);
  return sentences[sentences.length - 1] ?? "";
}
