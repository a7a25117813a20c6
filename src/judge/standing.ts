import type { CaseNote, Reading } from "../model.ts";
import { noteOf } from "./near.ts";
import { isOfNitrogen, nitrogenNotes, restGoesOn, restsIn } from "./rest.ts";
import { perScene, type Scene } from "./scene.ts";

/** Read on a machine at rest: a pressure then says what gas is in it, not how it runs. */
export function isAtRest(scene: Scene, reading: Reading): boolean {
  const note = noteOf(scene, reading);
  if (note === undefined) return false;
  if (restsIn(note, reading)) return true;
  const before = scene.notes[scene.notes.indexOf(note) - 1];
  return before !== undefined && restGoesOn(before, note);
}

/** Read on a circuit that is filled with nitrogen. */
export function isNitrogen(scene: Scene, reading: Reading): boolean {
  const note = noteOf(scene, reading);
  if (note === undefined) return false;
  return isOfNitrogen(note) || (reading.at === undefined && filledNotes(scene).has(note));
}

/** The notes of a circuit that is filled with nitrogen. */
export const filledNotes: (scene: Scene) => ReadonlySet<CaseNote> = perScene((scene) =>
  nitrogenNotes(scene.notes),
);
