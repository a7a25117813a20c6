import type { Reading } from "../model.ts";
import { noteOf } from "./near.ts";
import type { Scene } from "./scene.ts";

const atRest =
  /\b(off|idle|sat|sitting|standing|rest(ing|ed)?|shut (?:it |her |the unit )?(?:down|off)|stopped|powered down|not running)\b.{0,24}\b((\d+|an?|one|two|half an) ?(m|min|mins|minutes|h|hr|hrs|hour|hours)\b|overnight|all night)|\b(?:off|down|sat|sitting) (?:till|until|since|to|from) (?:the )?(?:next )?(?:morning|yesterday|last night|noon|lunch)\b|\bgauges (?:are |both )?(?:equal|even)\b|\bat rest\b|\bequali[sz]ed\b|\boff.?cycle\b|\bstanding pressure\b|\bwith (it|the unit|everything|the compressor) off\b/;
const underNitrogen = /\bnitrogen\b|\bn2\b|\bofn\b|pressure test/;

/** Read on a machine at rest: a pressure then says what gas is in it, not how it runs. */
export function isAtRest(scene: Scene, reading: Reading): boolean {
  const words = (noteOf(scene, reading)?.text ?? "").toLowerCase();
  return (
    atRest.test(words) && !/\brunning\b|\bwhile it runs\b/.test(words.replace("not running", ""))
  );
}

/** Read on a circuit that is filled with nitrogen. */
export function isNitrogen(scene: Scene, reading: Reading): boolean {
  return underNitrogen.test((noteOf(scene, reading)?.text ?? "").toLowerCase());
}
