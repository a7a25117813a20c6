import type { CaseNote, Reading } from "../model.ts";
import type { Scene } from "./scene.ts";

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

/** The note's own words from so many letters before a reading to so many after it, lower case. */
export function beside(
  scene: Scene,
  reading: Reading,
  [before, after]: readonly [before: number, after: number],
): string {
  const text = noteOf(scene, reading)?.text;
  const from = reading.spans[0]?.[0];
  const to = reading.spans[reading.spans.length - 1]?.[1];
  if (text === undefined || from === undefined || to === undefined)
    return reading.said.toLowerCase();
  return text.slice(Math.max(0, from - before), to + after).toLowerCase();
}

/** The words of the note that holds a reading, lower case. */
export function noteWords(scene: Scene, reading: Reading): string {
  return (noteOf(scene, reading)?.text ?? reading.said).toLowerCase();
}
