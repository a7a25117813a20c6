import type { CaseNote, Reading } from "../model.ts";
import { figureSpan, noteOf } from "./near.ts";
import type { Scene } from "./scene.ts";

const atRest =
  /\b(off|idle|sat|sitting|standing|rest(ing|ed)?|shut (?:it |her |the unit )?(?:down|off)|stopped|powered down|not running)\b.{0,24}\b((\d+|an?|one|two|half an) ?(m|min|mins|minutes|h|hr|hrs|hour|hours)\b|overnight|all night)|\b(?:off|down|sat|sitting) (?:till|until|since|to|from) (?:the )?(?:next )?(?:morning|yesterday|last night|noon|lunch)\b|\bgauges (?:are |both )?(?:equal|even)\b|\bat rest\b|\bequali[sz]ed\b|\boff.?cycle\b|\bstanding (?:pressure|overnight)\b|\bafter a night\b|\bwith (it|the unit|everything|the compressor) off\b/;
const underNitrogen = /\bnitrogen\b|\bn2\b|\bofn\b|pressure test/;

/** Read on a machine at rest: a pressure then says what gas is in it, not how it runs. */
export function isAtRest(scene: Scene, reading: Reading): boolean {
  const note = noteOf(scene, reading);
  const from = note === undefined ? undefined : restsFrom(note);
  if (from === undefined || note === undefined) return false;
  return figureSpan(note.text ?? "", reading)[0] >= from;
}

/**
 * Where in a note the rest begins: at the clause that tells of it, so that "head 455, 86 out,
 * standing overnight 226" rests from the last one on; at the start where no figure follows.
 */
function restsFrom(note: CaseNote): number | undefined {
  const words = (note.text ?? "").toLowerCase();
  const at = words.search(atRest);
  if (at < 0) return undefined;
  if (/\brunning\b|\bwhile it runs\b/.test(words.replace(stillRunning, ""))) return undefined;
  const clause = Math.max(words.lastIndexOf(",", at), words.lastIndexOf(". ", at), 0);
  // what was measured, not for how long it stood
  const follows = /\d{2,}(?! ?(?:m\b|min|h\b|hr|hour))/.test(words.slice(clause));
  return follows ? clause : 0;
}

/** Fans that run do not make the machine run. */
const stillRunning = /not running|fans? (?:still )?running|with (?:the )?fans? running/g;

/** Read on a circuit that is filled with nitrogen. */
export function isNitrogen(scene: Scene, reading: Reading): boolean {
  return underNitrogen.test((noteOf(scene, reading)?.text ?? "").toLowerCase());
}
