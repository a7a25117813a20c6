import type { Reading } from "../../model.ts";
import { clauseOf } from "../clause.ts";
import { noteWords } from "../near.ts";
import type { Scene } from "../scene.ts";

/** What is read on a cable, at an indoor unit or on a contactor's or a valve's coil is no motor's winding. */
export function isNoWinding(one: Reading, scene: Scene): boolean {
  if (/^(?:unit|head|port|zone)\b/.test(one.subject ?? "")) return true;
  const clause = clauseOf(scene, one);
  if (/\bcore to core|\bcomms?\b|\bthe (?:pair|cable)\b/.test(clause)) return true;
  if (/\bcoil\b/.test(clause) && !/\bcomp|\bmotor|\bwinding/.test(clause)) return true;
  const note = noteWords(scene, one);
  const ofContactor =
    /\b(?:contactor|coil) (?:has|gets|reads|is)\b/.test(note) && /pull/.test(note);
  return one.points === undefined && ofContactor;
}
