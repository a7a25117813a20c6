import type { CaseNote, Reading } from "../model.ts";
import { figureSpan } from "./figure-span.ts";

const atRest =
  /\b(off|idle|sat|sits?|sitting|(?<!(?:pull|pump|evac|brought|come|comes|came|went|going|goes|settle|settled|it|up and|pulled|pumped|pumping|pulling|vacuum|vac|slow|slowed|wind|winds) )down(?= (?:for )?(?:\d|a |an |half|two|three|four))|standing|rest(ing|ed)?|shut (?:it |her |the unit )?(?:down|off)|stopped|powered down|not running)\b.{0,24}\b((\d+|an?|one|two|three|four|five|six|eight|ten|twelve|a few|a couple(?: of)?|half an) ?(m|min|mins|minutes|h|hr|hrs|hour|hours)\b|overnight|all night|(?:over|for|through|during) (?:lunch|the night|the weekend))|\b(?:off|down|sat|sitting) (?:till|until|since|to|from) (?:the )?(?:next )?(?:morning|yesterday|last night|noon|lunch)\b|\b(?:off|down|idle) since (?:about |around )?(?:midnight|breakfast|dawn|(?:last |yesterday |the )?(?:evening|night|afternoon|weekend|week|monday|tuesday|wednesday|thursday|friday|saturday|sunday)\b|yesterday\b|(?:\d{1,2}(?::\d\d)?|five|six|seven|eight|nine|ten)(?: ?(?:am|pm|o'?clock|this morning|last night|yesterday))?)\b|\bgauges (?:are |both )?(?:equal|even)\b|\bat rest\b|\d ?(?:psig?|bar|lbs?|pounds)? ?(?:just |both )?(?:sitting|standing|static|idle)\b(?! (?:in|on|at|high|pressure))|\bequali[sz]ed\b|\boff.?cycle\b|\bstand(?:s|ing) (?:at )?[\d.]+ ?(?:bar|psig?|kpa|on (?:both|the|either) (?:gauges?|sides?)|both sides)\b|\bstanding (?:pressure|overnight)\b|\bafter a night\b|\bwith (it|the unit|everything|the compressor) off\b/;
const underNitrogen = /\bnitro(?:gen)?\b|\bn2\b|\bofn\b|pressure test/;

/** A reading that its note says was read at rest. */
export function restsIn(note: CaseNote, reading: Reading): boolean {
  const from = restsFrom(note);
  return from !== undefined && figureSpan(note.text ?? "", reading)[0] >= from;
}

const goes = /\b(?:runs?|running|ran|starts?|started|fired|kicked|turned (?:it )?on|back on|now)\b/;

/** "been off since last evening, coil 77", then "both gauges sit at 265": the rest goes on in the next note. */
export function restGoesOn(before: CaseNote, note: CaseNote): boolean {
  if (restsFrom(before) === undefined || goes.test((note.text ?? "").toLowerCase())) return false;
  const pressures = note.readings.filter(({ quantity }) => quantity === "pressure");
  return pressures.length === 1 && pressures.every((one) => !isSided(one) && one.at !== "liquid");
}

/** A note that speaks of a circuit filled with nitrogen. */
export function isOfNitrogen(note: CaseNote): boolean {
  return underNitrogen.test((note.text ?? "").toLowerCase());
}

const ending: readonly string[] = [
  "nitrogen_out",
  "vacuum_started",
  "vacuum_broken",
  "charged",
  "started",
];

/** Ends the nitrogen: let off, evacuated, charged, or gauges that name their side again. */
function endsNitrogen(note: CaseNote): boolean {
  return (
    note.statements.some((one) => one.kind === "action" && ending.includes(one.action)) ||
    note.readings.some(
      (one) => one.quantity === "vacuum" || (one.quantity === "mass" && one.action === "charged"),
    )
  );
}

const isSided = (one: Reading): boolean =>
  one.quantity === "pressure" && (one.at === "suction" || one.at === "discharge");

/**
 * The notes that tell of a circuit under nitrogen: those that name it, and those behind them ("still
 * 20 bar, let it off") up to what ends it.
 */
export function nitrogenNotes(notes: readonly CaseNote[]): ReadonlySet<CaseNote> {
  const found = new Set<CaseNote>();
  let filled = false;
  for (const note of notes) {
    if (note.readings.some(isSided)) filled = false;
    if (isOfNitrogen(note)) filled = true;
    if (filled) found.add(note);
    if (endsNitrogen(note)) filled = false;
  }
  return found;
}

/**
 * Where in a note the rest begins: at the clause that tells of it, so that "head 455, 86 out,
 * standing overnight 226" rests from the last one on; at the start where no figure follows.
 */
function restsFrom(note: CaseNote): number | undefined {
  const words = (note.text ?? "").toLowerCase();
  const at = words.search(atRest);
  if (at < 0) return undefined;
  if (
    /\brunning\b|\bwhile it runs\b|\bcomp\w* (?:is )?(?:on|going|turning)\b/.test(
      words.replace(stillRunning, ""),
    )
  )
    return undefined;
  const clause = Math.max(words.lastIndexOf(",", at), words.lastIndexOf(". ", at), 0);
  // what was measured, not for how long it stood
  const follows = /\d{2,}(?! ?(?:m\b|min|h\b|hr|hour))/.test(words.slice(clause));
  return follows ? clause : 0;
}

/** Fans that run do not make the machine run. */
const stillRunning = /not running|fans? (?:still )?running|with (?:the )?fans? running/g;
