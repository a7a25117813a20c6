import type { CaseNote, Reading } from "../../model.ts";
import { clauseOf } from "../clause.ts";
import { beside, noteOf } from "../near.ts";
import { ownMotor } from "../own-motor.ts";
import { bySubject, hasPoint, numberOf, ofQuantity } from "../pick.ts";
import { perScene, type Scene } from "../scene.ts";

/** What flows into one motor, sorted by what the figure tells. */
export interface MotorCurrents {
  readonly about: string;
  /** at the moment of start, or so high that it can be nothing else */
  readonly start: readonly Reading[];
  /** steady */
  readonly running: readonly Reading[];
}

/** Over RLA from which a figure without a state is a start's. Common practice, no source. */
const startOverRla = 3;
const startOverLra = 0.55;

const notTheMotor =
  /cap\b|capacitor|\bcan\b|start (?:winding|leads?|wires?|leg|terminal|side|post)|\bherm(?:etic)? (?:wire|lead|side)|heater|coil|transformer|control|fan|blower|inducer/;

/** Currents of the compressors, unit by unit. */
export const compressorCurrents: (scene: Scene) => readonly MotorCurrents[] = perScene((scene) => {
  const all = ofQuantity(scene.readings, "current").filter((one) => isMotor(scene, one));
  return bySubject(all, "compressor").map(([about, readings]) => ({
    about,
    start: readings.filter((one) => isStart(scene, one)),
    running: readings.filter((one) => !isStart(scene, one) && !isPassing(scene, one, readings)),
  }));
});

/** A word for a step right before the figure that it leads to. */
const step =
  /(?:\b(?:then|down|drop\w*|fall\w*|fell|settl\w*|after that)|->)(?: to| at)?\s*[\d.]+\s*(?:a|amps?)?$/;

/** "start peak 84, then 40, then 14.1": what it fell through on its way from the start is no load. */
function isPassing(scene: Scene, reading: Reading, readings: readonly Reading[]): boolean {
  if (!isBare(reading)) return false;
  const own = noteOf(scene, reading)?.readings.filter((one) => readings.includes(one)) ?? [];
  const at = own.indexOf(reading);
  const [from, to] = [own[at - 1], own[at + 1]];
  if (from === undefined || to === undefined || !isBare(to)) return false;
  const falls = (a: Reading, b: Reading): boolean => (numberOf(a) ?? 0) > (numberOf(b) ?? 0);
  const behindStart = isStart(scene, from) || isPassing(scene, from, readings);
  const steps = [reading, to].every((one) => step.test(beside(scene, one, [stepLetters, 0])));
  return behindStart && steps && falls(from, reading) && falls(reading, to);
}

/** Letters before a figure in which a step is named. */
const stepLetters = 16;

const isBare = ({ points, state, series }: Reading): boolean =>
  points === undefined && state !== "start" && series === undefined;

/** A: less is a flame's or a signal's. Common practice, no source. */
const leastMotorA = 0.005;

function isMotor(scene: Scene, reading: Reading): boolean {
  if (reading.kind === "dc" || reading.at === "control" || ownMotor(scene) !== undefined)
    return false;
  const ampere = numberOf(reading) ?? 0;
  if (ampere > 0 && ampere < leastMotorA) return false;
  if (isLineVolts(ampere, scene)) return false;
  if (reading.subject !== undefined) return /comp|^[a-z]+-?\d+/i.test(reading.subject);
  return !isFanNote(scene, reading) && !notTheMotor.test(ownWords(scene, reading));
}

/** Far over what the motor can draw and just the plate's volts: the line's, said behind the amps. Common practice, no source. */
const volts = { overRla: 8, overLra: 1.5, about: 0.12 } as const;

function isLineVolts(ampere: number, { facts }: Scene): boolean {
  const { rla_A, lra_A, supply_V } = facts;
  if (supply_V === undefined || Math.abs(ampere - supply_V) > volts.about * supply_V) return false;
  const most = lra_A === undefined ? volts.overRla * (rla_A ?? Infinity) : volts.overLra * lra_A;
  return ampere > most;
}

/** The words about a figure, behind it no farther than its clause: "84 A then trips, cap 44.8". */
function ownWords(scene: Scene, reading: Reading): string {
  const [before, after] = atHand;
  const behind = beside(scene, reading, [0, after]).split(/[,;]/)[0] ?? "";
  return `${beside(scene, reading, [before, 0])} ${behind}`;
}

/** Letters about a figure that name what it flows in: more after it than before. */
const atHand = [22, 32] as const;

function isStart(scene: Scene, reading: Reading): boolean {
  if (reading.state !== undefined) return reading.state === "start" && reading.series === undefined;
  if (reading.series !== undefined) return false;
  if (reading.stat === "peak") return true;
  if (
    /\b(?:locks?|stalls?)(?: up)? at|(?:every|each) (?:try|attempt|start)/.test(
      beside(scene, reading, atHand),
    )
  )
    return true;
  const value = numberOf(reading) ?? 0;
  const { rla_A, lra_A } = scene.facts;
  if (lra_A !== undefined && value >= startOverLra * lra_A) return true;
  return rla_A !== undefined && value >= startOverRla * rla_A;
}

/** Currents that leave a drive. */
export function isDriveOutput(scene: Scene, reading: Reading): boolean {
  if (reading.at === "drive_output") return true;
  const phases = ["U", "V", "W"].some((one) => hasPoint(reading, one));
  return scene.facts.drive === "inverter" && phases && reading.at === undefined;
}

/** The reading with the highest number. */
export function highestOf(readings: readonly Reading[]): Reading | undefined {
  return [...readings].sort((a, b) => (numberOf(b) ?? 0) - (numberOf(a) ?? 0))[0];
}

/** A note that gives a fan's plate, or speaks of a fan and of no compressor. */
export function isFanNote(scene: Scene, reading: Reading): boolean {
  const note = noteOf(scene, reading);
  // "blower 4.1 amps fla 4.8, comp 14.6 rla 17.9": its own clause says whose it is
  const clause = clauseOf(scene, reading);
  if (/\bcomp/.test(clause) && !/\b(?:fan|blower)/.test(clause)) return false;
  if (note?.readings.some((one) => one.rating === "FLA")) return true;
  const words = (note?.text ?? "").toLowerCase();
  // "belt changed, motor 5.2 5.1 5.3 A", "spare motor in, 0.9 A"
  if (fitsFan.test(words) && !/\bcomp/.test(words)) return true;
  if (/\bcomp|\bboth\b|line|legs?\b|runs|rla/.test(words)) return false;
  if (/\b(?:fan|blower|inducer|blades?)\b/.test(words)) return true;
  if (note === undefined) return false;
  const onlyFans = !/\bcomp|\bscroll/.test(scene.words) && ofWinding.test(words);
  if (!/\bmotor\b/.test(words) && !unpluggedIt.test(words) && !onlyFans) return false;
  return followsFan(scene, note);
}

const fitsFan =
  /\b(?:new|spare|replacement) (?:\w+ ){0,2}(?:motor|belt|blower|wheel|sheave)\b|\b(?:motor|belt|blower|wheel|sheave)s? (?:is |was )?(?:changed|replaced|swapped|in|on)\b/;

/** "fan 2 won't turn", then "winding plug: 1-2 19 ohms, 2-3 OL": nothing else with a winding was spoken of. */
const ofWinding = /\bwindings?\b|\bplug\b|\bohms?\b|\bpins?\b/;

/** "unplugged it: common to run OL": the motor that was spoken of. */
const unpluggedIt =
  /\b(?:unplugged|unhooked|disconnected|pulled|lifted|ohmed|ohm'?d|megged) it\b|\bits (?:windings?|leads?|plug|ohms)\b/;

/** "motor unplugged" after a note that spoke last of a fan. */
function followsFan(scene: Scene, note: CaseNote): boolean {
  const before = scene.notes.slice(0, scene.notes.indexOf(note)).map((one) => one.text ?? "");
  const named = before
    .join(" ")
    .toLowerCase()
    // what a hand can spin is no compressor
    .match(/\b(?:fan|blower|blade|spins? (?:free|easy|by hand)|comp\w*)\b/g);
  return /^(?:fan|blower|blade|spin.*)$/.test(named?.at(-1) ?? "");
}
