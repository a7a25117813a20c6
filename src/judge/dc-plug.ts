import type { CaseNote } from "../model.ts";
import { numbersOf, ofQuantity } from "./pick.ts";

/** V at the plug of an electronically driven fan motor: its bus, the supply of its own electronics, 15 V usual, and its speed command. Common practice, no source. */
const plug = { busV: 140, ownV: { from: 11, to: 19 } } as const;

const plugWords =
  /\b(?:fan|motor|blower)\b[^.;]{0,30}\b(?:plug|connector|harness|pins?|terminals?)\b|\b(?:plug|connector|harness)\b[^.;]{0,20}\b(?:fan|motor|blower)\b/i;

/** "310 on the big pins and 15 on the control, speed pin 3.2 V": volts at a dc motor's plug, none of a 24 V circuit. */
export function isDcPlug(note: CaseNote | undefined): boolean {
  if (note === undefined || !plugWords.test(note.text ?? "")) return false;
  const volts = numbersOf(ofQuantity(note.readings, "voltage"));
  const { from, to } = plug.ownV;
  return volts.some((one) => one >= plug.busV) && volts.some((one) => one >= from && one <= to);
}

/** One of its volts is missing, so it has no reason to turn. */
export function isUncommanded(volts: readonly number[]): boolean {
  return volts.some((one) => one < leastCommandV);
}

/** V of a speed command that asks for anything. Common practice, no source. */
const leastCommandV = 0.5;

/** It is fed at its plug and does not turn, in words that tell of no fan by name. */
export const staysPut =
  /\b(?:twitch\w*|jerks?|just (?:sits|hums|clicks)|won'?t (?:turn|spin|run|move|start)|does ?n'?t (?:turn|spin|run|move|start)|not (?:turning|spinning|moving)|never (?:turns|moves|spins)|sits there|dead)\b/;
