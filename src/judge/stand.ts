import type { CaseNote, Reading } from "../model.ts";
import { figureSpan, sentenceBefore } from "./near.ts";
import { newPart } from "./new-in.ts";
import type { Stages } from "./stages.ts";

/**
 * The notes as they speak of the machine now: what was measured before a repair stands only while
 * the same thing was not measured again after it, and its part was not replaced.
 */
export function standingNotes(stages: Stages): readonly CaseNote[] {
  if (stages.after.length === 0) return stages.before;
  const later = stages.after.flatMap((note) => note.readings);
  const again = new Set([...later.map(keyOf), ...later.flatMap(linesOf)]);
  const replaced = replacedWords(stages);
  const before = stages.before.map((note) => ({
    ...note,
    readings: note.readings.filter(
      (one) => isKept(one, again, replaced) && !isOfOldMotor(one, note, replaced),
    ),
  }));
  const after = stages.after.map((note) => ({
    ...note,
    readings: note.readings.filter((one) => !isOfOldPart(one, note, replaced)),
  }));
  return [...before, ...after];
}

/** "replaced the cap, the old one was 12": told after the deed, of what is gone. */
function isOfOldPart(one: Reading, note: CaseNote, replaced: readonly string[]): boolean {
  const text = note.text ?? "";
  const [from] = figureSpan(text, one);
  const before = text.slice(Math.max(0, from - oldAhead), from);
  const old = one.rating === undefined && /\bold\b[^.;]*$/i.test(before);
  return old && replaced.some((word) => belongsTo(one, word));
}

/** "fan motor locked, winding 0.02 meg": of a fan's motor that was replaced since, by its sentence. */
function isOfOldMotor(one: Reading, note: CaseNote, replaced: readonly string[]): boolean {
  if (one.rating !== undefined || one.earlier === true) return false;
  if (!/^(?:insulation_resistance|winding_resistance|resistance)$/.test(one.quantity)) return false;
  if (!replaced.some((word) => /fan|blower|motor/.test(word) && !/comp/.test(word))) return false;
  const sentence = sentenceBefore(note.text ?? "", one);
  return (
    /\b(?:fan|blower)\b/i.test(`${one.subject ?? ""} ${sentence}`) && !/\bcomp/i.test(sentence)
  );
}

/** Letters before a figure in which "old" names its part. */
const oldAhead = 24;

/** Plates and earlier visits stand; the rest as long as nothing newer speaks of it. */
function isKept(one: Reading, again: ReadonlySet<string>, replaced: readonly string[]): boolean {
  if (one.rating !== undefined || one.earlier === true || isOfTest(one)) return true;
  return !again.has(keyOf(one)) && !replaced.some((word) => belongsTo(one, word));
}

/** A weight, a vacuum, a timed reading or a hold's: one of a row, that no later one replaces. */
function isOfTest(one: Reading): boolean {
  if (one.quantity === "mass" || one.quantity === "vacuum") return true;
  const placeless =
    (one.quantity === "pressure" || one.quantity === "temperature") && one.at === undefined;
  const timed = one.after_s !== undefined && one.quantity !== "insulation_resistance";
  return timed || placeless;
}

function keyOf(one: Reading): string {
  return [one.quantity, one.at ?? "", one.kind === "dc" ? "dc" : "", one.subject ?? ""].join("|");
}

const lowSide = ["temperature|suction||", "temperature|evaporator_out||", "pressure|suction||"];
const highSide = [
  "temperature|liquid||",
  "temperature|condenser_out||",
  "pressure|liquid||",
  "pressure|discharge||",
];

/**
 * "superheat 11" after the work: worked out from figures that nobody wrote down, so the old ones are past;
 * and with gauges read anew the superheat and the subcooling that were told before are.
 */
function linesOf(one: Reading): string[] {
  if (one.rating !== undefined || one.earlier === true) return [];
  if (one.quantity === "pressure" && one.at !== undefined) return toldOf(one);
  if (one.quantity === "superheat" && one.at !== "discharge") return lowSide;
  return one.quantity === "subcooling" ? highSide : [];
}

function toldOf({ at, subject = "" }: Reading): string[] {
  if (at === "suction") return [`superheat|||${subject}`];
  return at === "discharge" || at === "liquid" ? [`subcooling|||${subject}`] : [];
}

function replacedWords(stages: Stages): string[] {
  const notes = [...stages.before, ...stages.after];
  const fitted = newPart(notes);
  const said = notes
    .flatMap((note) => note.statements)
    .flatMap((one) => {
      if (one.kind === "part" && one.state === "fitted") return [one.part.toLowerCase()];
      const swapped = one.kind === "action" && one.action === "replaced" && one.planned !== true;
      return swapped ? [(one.what ?? "").toLowerCase()] : [];
    });
  return fitted === undefined ? said : [...said, fitted];
}

/** Parts whose drop along the liquid line is past once they are new. */
const liquidPart = /drier|dryer|strainer|solenoid/;

function belongsTo(one: Reading, word: string): boolean {
  if (/comp/.test(word)) return /insulation|winding/.test(one.quantity) || isStart(one);
  if (/cap/.test(word)) return one.quantity === "capacitance";
  if (liquidPart.test(word))
    return one.quantity.startsWith("temperature") && liquidPart.test(one.said.toLowerCase());
  if (/fan|blower|motor/.test(word) && /fan|blower/.test(one.subject ?? ""))
    return /voltage|winding|current/.test(one.quantity);
  if (/contactor/.test(word)) return one.quantity === "resistance";
  if (/drive|inverter|module|board/.test(word)) return one.quantity === "diode_drop";
  return false;
}

/** A start current, or one that held until something tripped: of the motor that drew it. */
function isStart(one: Reading): boolean {
  return one.quantity === "current" && (one.state === "start" || one.for_s !== undefined);
}
