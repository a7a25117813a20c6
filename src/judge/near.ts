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
  const text = noteOf(scene, reading)?.text ?? "";
  const from = reading.spans[0]?.[0];
  const to = reading.spans[reading.spans.length - 1]?.[1];
  if (from === undefined || to === undefined) return own.toLowerCase();
  return `${own} ${text.slice(Math.max(0, from - around), to + around)}`.toLowerCase();
}

/** The words of the note that holds a reading, lower case. */
export function noteWords(scene: Scene, reading: Reading): string {
  return (noteOf(scene, reading)?.text ?? reading.said).toLowerCase();
}
