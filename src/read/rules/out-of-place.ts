import type { Note } from "../note.ts";

/** "pulling out of the lot", "pulled out of their driveway": away from where the van stood. */
export function outOfPlace(note: Note, i: number): boolean {
  const from = note.items[i]?.from ?? 0;
  return /^pull(?:ed|ing) (?:out|away)(?: (?:of|from))?(?: (?:the|their|this|my|your|school|church|store|parking|back|front|loading))* (?:lot|driveway|drive|gate|gates|yard|site|garage|alley|parking|dock|property|street|here|there|place|complex|now|at|it['’]?s)\b/.test(
    note.plain.slice(from, from + 80),
  );
}
