import type { Reading } from "../../model.ts";
import { clauseOf } from "../clause.ts";
import { wayNamed } from "../in-and-out.ts";
import { beside, noteOf, sentenceBefore } from "../near.ts";
import { hasPoint, numberOf, numbersOf, ofQuantity } from "../pick.ts";
import { isThirdOfRow, leastMachineV, textBetween } from "../row-of-volts.ts";
import { perScene, type Scene } from "../scene.ts";

/** V; below it an ac voltage that is not 0 is control voltage. Common practice, no source. */
export const controlBelowV = 60;

const otherThing =
  /across the ca|\bcap\b|capacitor|comm|transducer|signal|\bpair\b|bus\b|\brail|board|\bR (?:to|-) ?C\b|coil/i;

/**
 * Voltages that a supply delivers, line to line or to ground: not control, dc, drive output, parts.
 * Where the line side of a contactor was read too, its load side is the contactor's matter.
 */
export const supplyVoltages: (scene: Scene) => readonly Reading[] = perScene((scene) => {
  const all = allVoltages(scene);
  const line = all.filter((one) => sideOf(scene, one) === "line");
  return line.length === 0 ? all : all.filter((one) => sideOf(scene, one) !== "load");
});

/** The same, with the load side of a contactor. */
export const allVoltages: (scene: Scene) => readonly Reading[] = perScene((scene) =>
  ofQuantity(scene.readings, "voltage").filter((one) => isSupply(scene, one)),
);

/** Which side of the contactor a voltage was read at, where that was said. */
export function sideOf(scene: Scene, reading: Reading): "line" | "load" | undefined {
  return namesSides(scene) || readsBothSides(scene) ? sides(scene).get(reading) : undefined;
}

const sides: (scene: Scene) => ReadonlyMap<Reading, "line" | "load" | undefined> = perScene(
  (scene) =>
    new Map(
      ofQuantity(scene.readings, "voltage").map((one) => [one, sideSaid(scene, one)] as const),
    ),
);

function sideSaid(scene: Scene, reading: Reading): "line" | "load" | undefined {
  const byPoint = sideByPoint(scene, reading);
  if (byPoint !== undefined || !namesSides(scene)) return byPoint;
  const before = beside(scene, reading, [wholeNote, 0]);
  const words = beside(scene, reading, [0, sideAfter]);
  // the words of a figure may begin far before it: "contactor 1 pulled in, 476 line side"
  const after =
    words.slice(Math.max(0, words.indexOf(reading.figure.number))).split(/[,;.]/)[0] ?? "";
  const own = before.split(/[,;]/).at(-1) ?? "";
  const right =
    /^ ?v?(?:olts?)? ?(?:to (?:ground|gnd|neutral) )?(?:on|at) the (?:load|line) side/.exec(
      beside(scene, reading, [0, sideAfter]).slice(figureLength(reading)),
    )?.[0];
  if (right !== undefined) return lastSide(right);
  return lastSide(own) ?? lastSide(after) ?? wayNamed(scene, before) ?? lastSide(before);
}

/** L before and T behind the contactor, where voltages between both were read. */
function sideByPoint(scene: Scene, reading: Reading): "line" | "load" | undefined {
  if (!readsBothSides(scene)) return;
  return isBetween(reading, "T") ? "load" : "line";
}

const readsBothSides: (scene: Scene) => boolean = perScene((scene) => {
  const volts = ofQuantity(scene.readings, "voltage");
  const lines = volts.filter((one) => isLineLevel(one) && !isBetween(one, "T"));
  return lines.length >= setSize && volts.some((one) => isBetween(one, "T"));
});

const setSize = 3;
function isLineLevel(one: Reading): boolean {
  return (numberOf(one) ?? 0) >= controlBelowV && one.kind !== "dc" && one.at !== "drive_output";
}

function isBetween(reading: Reading, side: "L" | "T"): boolean {
  const points = reading.points ?? [];
  return points.length === 2 && points.every((one) => one.startsWith(side) && /\d$/.test(one));
}

const namesSides: (scene: Scene) => boolean = perScene((scene) =>
  /side|contactor|lugs|\bload \d/.test(scene.words),
);

/** Letters before a figure, all of its note, and after it, that may name its side. */
const wholeNote = 10_000;
const sideAfter = 44;

function figureLength({ figure }: Reading): number {
  return figure.number.length;
}

const sideWords =
  /(load side|(?<!under |full |no )\bload(?= \d)|out of the contactor|leaving the contactor|bottom of the contactor)|(line side|\bline(?= \d{3})|into the contactor|top of the contactor|line lugs)/g;

/** The side named last. */
function lastSide(words: string): "line" | "load" | undefined {
  const last = [...words.matchAll(sideWords)].at(-1);
  if (last === undefined) return;
  return last[1] === undefined ? "line" : "load";
}

function isSupply(scene: Scene, reading: Reading): boolean {
  if (reading.kind === "dc" || numberOf(reading) === undefined) return false;
  if (reading.at !== undefined && reading.at !== "supply") return false;
  if (isDriveOutputVoltage(scene, reading) || isAcrossContact(reading)) return false;
  if (reading.subject !== undefined && otherThing.test(reading.subject)) return false;
  if (isBusLike(scene, reading)) return false;
  if (isOfOtherUnit(scene, reading)) return false;
  if (isPlugged(scene, reading) || isOfTransformer(scene, reading) || isOfControl(scene, reading))
    return false;
  const value = numberOf(reading) ?? 0;
  if (isLostOverPart(scene, reading) || acrossCap.test(clauseOf(scene, reading))) return false;
  const isControl =
    value >= deadLineV && value < controlBelowV && (reading.points ?? []).length < 2;
  if (hasLinePoint(reading)) return !isControl;
  if (value < controlBelowV)
    return (
      isThirdOfRow(scene, reading) ||
      (value < deadLineV && (isInRow(scene, reading) || sideOf(scene, reading) === "load"))
    );
  const own = `${reading.subject ?? ""} ${reading.said} ${clauseOf(scene, reading)}`.toLowerCase();
  return !/across|capacitor|\bcap\b/.test(own) || value < 300;
}

/** "378 volts over the run cap, herm to common" */
const acrossCap = /\b(?:over|across|on) (?:the |its |that )?(?:\w+ )?(?:cap|capacitor|can)\b/;

/** Share of the plate's volts that a rectified bus has and a line has not. Source: rectifier theory, sqrt(2). */
const busShare = { from: 1.3, to: 1.48 } as const;

/** "board gives the fan 650 V": on a 460 V inverter that is its bus, whoever is fed with it. */
function isBusLike(scene: Scene, reading: Reading): boolean {
  const { drive, supply_V } = scene.facts;
  if (drive !== "inverter" || supply_V === undefined || hasLinePoint(reading)) return false;
  if (reading.at === "supply" || isInRow(scene, reading)) return false;
  const share = (numberOf(reading) ?? 0) / supply_V;
  if (share < busShare.from || share > busShare.to) return false;
  return !/\b(?:line|lines|supply|disconnect|phase|phases|legs?|input|utility|feed)\b/.test(
    clauseOf(scene, reading),
  );
}

/** "4.1 V drop line to lug", "89 V across pole 3": what a joint or a contact loses, no supply. */
function isLostOverPart(scene: Scene, reading: Reading): boolean {
  if (!namesDrops(scene)) return false;
  const value = numberOf(reading) ?? 0;
  const clause = clauseOf(scene, reading);
  const small = value > 0 && value < controlBelowV;
  const lost = dropped.test(clause) || overIt.test(clause) || isHeaded(scene, reading);
  return (small && (lost || isBesideDrop(scene, reading))) || overPart.test(clause);
}

/** "4.1 V across the L3 lug, 0.1 on the other two": nothing but what joints lose was read in its note. */
function isBesideDrop(scene: Scene, reading: Reading): boolean {
  const note = noteOf(scene, reading);
  const volts = numbersOf(ofQuantity(note?.readings ?? [], "voltage"));
  return overIt.test((note?.text ?? "").toLowerCase()) && Math.max(...volts) < controlBelowV;
}

/** "drop lug to wire: L1 0.04, L2 2.7": the sentence began with what its row of volts is. */
function isHeaded(scene: Scene, reading: Reading): boolean {
  const before = beside(scene, reading, [wholeNote, 0]).split(/\.\s/).at(-1) ?? "";
  return dropped.test(before.split(":").at(-2) ?? "");
}

const dropped = /\bdrop(?:s|ped)?\b/;
/** "lug is burnt, 6.1 V across it": lost in the joint, no voltage of the supply. */
export const overIt =
  /\b(?:over|across) (?:it|(?:the |that |a |each )?(?:(?:l ?\d|[abc]|(?:leg|phase) \w+|\w+ (?:leg|phase)) )?(?:lug|joint|connection|splice|terminal|blade)s?|l ?[123](?! ?(?:and|to|&|[-/lt])))\b/;
const overPart =
  /\b(?:over|across) (?:the |that |a )?(?:pole|contacts?|points|(?:closed|made|pulled.?in|held.?in) (?:contactor|contacts?|poles?|points))\b/;
const namesDrops: (scene: Scene) => boolean = perScene((scene) =>
  [dropped, overIt, overPart].some((words) => words.test(scene.words)),
);

/** Live at a box or an indoor unit that has a supply of its own, which the outdoor unit's plate does not tell. */
function isOfOtherUnit(scene: Scene, reading: Reading): boolean {
  const { subject } = reading;
  if (subject === undefined || (numberOf(reading) ?? 0) < controlBelowV) return false;
  const key = (tag: string | undefined): string => (tag ?? "").replace(/\W/g, "").toLowerCase();
  return (
    key(subject) !== key(scene.facts.tag) &&
    (scene.site.tree ?? []).some(
      ({ tag, parent }) => parent !== undefined && key(tag) === key(subject),
    )
  );
}

/** A control transformer's own side, which says little of the three lines. */
function isOfTransformer(scene: Scene, reading: Reading): boolean {
  if (reading.at === "supply" || hasLinePoint(reading)) return false;
  return /\b(?:transformer|xfmr|primary)\b/.test(clauseOf(scene, reading));
}

/** V of a control circuit of 120 V: a coil works between low and high (NEMA ICS 2: 85 to 110 percent, from memory), over the most it is another circuit (common practice). */
export const controlAtLineV = { low: 102, high: 132, most: 140 } as const;

/** "112 at the contactor coil": a control circuit of 120 V, on a machine of more. */
export function isOfControl(scene: Scene, reading: Reading): boolean {
  const value = numberOf(reading) ?? 0;
  if (value < controlBelowV || value > controlAtLineV.most) return false;
  if ((scene.facts.supply_V ?? 0) < leastMachineV || (reading.points ?? []).length > 0)
    return false;
  if (reading.kind === "dc" || isInRow(scene, reading)) return false;
  // "coil is 120, measured 84 while it chatters"
  const sentence = sentenceBefore(noteOf(scene, reading)?.text ?? "", reading).toLowerCase();
  return /\b(?:coil|control|ctrl|solenoid)\b/.test(`${clauseOf(scene, reading)} ${sentence}`);
}

/** "inducer pulls 1.4 and 120 at the plug", "blower plug has 120": a motor of one line and neutral. */
function isPlugged(scene: Scene, reading: Reading): boolean {
  const value = numberOf(reading) ?? 0;
  if (value < controlAtLineV.low || value > controlAtLineV.high) return false;
  if ((scene.facts.supply_V ?? 0) < leastMachineV || (reading.points ?? []).length > 0)
    return false;
  return !isInRow(scene, reading) && plugged.test(clauseOf(scene, reading));
}

const plugged =
  /\b(?:plug|receptacle|outlet|molex|ecm|x13|inducer|igniter|ignitor|hsi|condensate|hot to neutral)\b/;

/** V; a dead line among live ones may pick up a little. Common practice, no source. */
const deadLineV = 15;

/** Said in one breath with line voltages: "466 0 465". */
function isInRow(scene: Scene, reading: Reading): boolean {
  if (reading.points !== undefined) return false;
  const note = noteOf(scene, reading);
  const text = note?.text ?? "";
  return (note?.readings ?? []).some((other) => {
    if (other === reading || other.quantity !== "voltage") return false;
    if ((numberOf(other) ?? 0) < controlBelowV || other.kind === "dc") return false;
    return /^[\s,/&v-]*(?:and)?[\s-]*$/i.test(textBetween(text, reading, other));
  });
}

const linePoints = ["L1", "L2", "L3", "T1", "T2", "T3", "phase A", "phase B", "phase C"] as const;

export function hasLinePoint(reading: Reading): boolean {
  const points = reading.points ?? [];
  return (
    linePoints.some((one) => points.includes(one)) || (points.length > 0 && points.every(isLetter))
  );
}

/** Phases by letter; R and C are terminals. */
function isLetter(point: string): boolean {
  return /^(?:(?:leg )?[ABC]|ground|N)$/.test(point);
}

export function isToGround(reading: Reading): boolean {
  return hasPoint(reading, "ground") || hasPoint(reading, "N");
}

/** Between the two ends of one pole, L1 and T1: what a closed contact loses. */
export function isAcrossContact(reading: Reading): boolean {
  const points = reading.points ?? [];
  return ["1", "2", "3"].some((pole) => points.includes(`L${pole}`) && points.includes(`T${pole}`));
}

/** Volts that a drive makes. */
export function isDriveOutputVoltage(scene: Scene, reading: Reading): boolean {
  if (reading.quantity !== "voltage") return false;
  if (reading.at === "drive_output") return true;
  if (scene.facts.drive === "inverter" && reading.at === undefined && isPutOut(scene, reading))
    return true;
  const phases = (reading.points ?? []).filter((one) => ["U", "V", "W"].includes(one));
  return scene.facts.drive === "inverter" && phases.length > 0 && reading.at === undefined;
}

/** "drive pushes 3 matching phases, 188 188 189": said of what the drive makes, in its own sentence. */
function isPutOut(scene: Scene, reading: Reading): boolean {
  const before =
    beside(scene, reading, [outWordsAhead, 0])
      .split(/\.\s|;/)
      .at(-1) ?? "";
  return putOut.test(before) || bareDrive.test(before);
}

/** "with the leads hanging the inverter ramps up fine, 211 212 211": run without its motor, what is read is what it makes. */
const bareDrive =
  /\b(?:leads?|motor|comp\w*|plug|output)\b.{0,16}\b(?:hanging|off|lifted|open|unplugged|unhooked|disconnected|loose|out)\b.{0,16}\b(?:drive|inverter|vfd|module|it)\b.{0,8}\b(?:ramps?|runs?|comes?|spools?|starts?|goes|climbs?)\b(?!.*\b(?:line|supply|bus|input)\b)/;

/** Letters before a figure that tell where it comes out. */
const outWordsAhead = 70;
const putOut =
  /\b(?:drive|inverter|vfd|module)(?: \w+)? (?:pushes|puts(?: out)?|makes|sends|gives|delivers|outputs?|is putting out|out)\b(?!.*\b(?:line|supply|bus)\b)/;

/** The supply's mean line to line voltage, V, not at the moment of start; undefined if not measured. */
export function lineVolts(scene: Scene): number | undefined {
  const steady = supplyVoltages(scene).filter(
    (one) => one.state !== "start" && one.stat !== "minimum" && !isToGround(one),
  );
  const values = numbersOf(steady).filter((one) => one >= controlBelowV);
  return values.length === 0
    ? undefined
    : values.reduce((sum, one) => sum + one, 0) / values.length;
}
