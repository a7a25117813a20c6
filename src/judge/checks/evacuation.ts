import type { Finding, Level, Reading } from "../../model.ts";
import {
  type Decay,
  type DecayPoint,
  type DecayShape,
  decayLimits,
  isShallow,
  vacuumDecay,
} from "../../physics/vacuum-decay.ts";
import { waterBoilingCel } from "../../physics/water-vapor.ts";
import type { Check } from "../check.ts";
import { type Figures, figuresOf } from "../figures.ts";
import { ownBasis, ownSource } from "../own-limit.ts";
import { numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { told } from "./told.ts";

/** A standing vacuum: tight, leaking, wet or too short to say, from its timed readings. */
export const evacuation: Check = {
  name: "evacuation",
  examples: [
    {
      level: "good",
      notes: ["240 microns, valved off. 2 min 310, 5 min 335, 10 min 342, 20 min 344"],
    },
    {
      level: "bad",
      notes: ["400 microns, valved off. 1 min 1200, 3 min 2800, 6 min 5200, 10 min 8400"],
    },
    {
      level: "bad",
      notes: ["valved off. 10 min 1350 microns, 20 min 1760, 40 min 1875, 60 min 1880"],
    },
    { level: "unknown", notes: ["1350 microns, valved off, 10 min 1760, 40 min 1880"] },
    { level: "unknown", notes: ["380 microns, valved off, 1 min 460"] },
  ],
  signs: [
    "evacuation:tight",
    "evacuation:leak",
    "evacuation:wet",
    "evacuation:rising",
    "sight_glass:sight_glass_shows_moisture",
  ],
  judge: (scene) => [...stands(scene), ...told(scene, "evacuation")],
};

/** Pa, 100 Torr: above it a pump has hardly begun, and a compressor pumping down may be meant. Common practice, no source. */
const shallowestPa = 13_332;

function stands(scene: Scene): Finding[] {
  const readings = ofQuantity(scene.readings, "vacuum")
    .filter((one) => (numberOf(one) ?? Number.POSITIVE_INFINITY) <= shallowestPa)
    .filter((one) => !onPump(scene, one));
  if (readings.length === 0) return [];
  const points = standOf(readings, scene);
  const hold = holdOf(scene);
  const decay = vacuumDecay(points, hold.pa);
  const held = decay === undefined ? heldAt(readings, hold.pa) : undefined;
  if (held !== undefined) return [holds(held, hold, figuresOf(scene))];
  return [
    decay === undefined
      ? untimed(readings, scene, hold)
      : finding(decay, { figures: figuresOf(scene), points, hold }),
  ];
}

const pumping =
  /\b(?:on the (?:vac(?:uum)? )?pump|pump(?:'s| has| is)?(?: been)? (?:on|running|ran|going)|been pulling|(?:pulled|pulling|evacuated|evacuating)(?: (?:a|the|on|down|it|vac|vacuum))* for)\b/i;
const shutOff =
  /\b(?:isolat\w*|valv\w+|blank\w*|pump off|off the pump|closed|held|hold\w*|stood|stand\w*|rose|decay)\b/i;

/** "350 microns after an hour on the pump": how long it was pumped, no stand. */
function onPump(scene: Scene, reading: Reading): boolean {
  if (reading.after_s === undefined && reading.for_s === undefined) return false;
  const note = scene.notes.find(({ readings }) => readings.includes(reading));
  const text = note?.text ?? "";
  return pumping.test(text) && !shutOff.test(text);
}

/** What a stand may end at: the company's own limit, else the usual one. */
interface Hold {
  readonly pa: number;
  readonly says: string;
  readonly basis: string;
  readonly source: (usual: string) => string;
}

function holdOf(scene: Scene): Hold {
  const own = scene.limits.vacuum_hold?.most;
  const pa = own ?? decayLimits.holdPa;
  const hold = `${figuresOf(scene).vacuum(pa)} hold`;
  return own === undefined
    ? { pa, says: hold, basis: hold, source: (usual) => usual }
    : { pa, says: `company's own ${hold}`, basis: ownBasis, source: ownSource };
}

/**
 * The points of the last stand. Seconds are those that were said; where none were, the notes' own
 * times. A reading without a time before the first timed one is where the stand began.
 */
function standOf(readings: readonly Reading[], scene: Scene): DecayPoint[] {
  const timed = readings.flatMap((one) => seriesPoints(one));
  const firstTimed = readings.findIndex((one) => one.after_s !== undefined);
  const before = firstTimed > 0 ? readings[firstTimed - 1] : undefined;
  const start = before === undefined ? undefined : numberOf(before);
  if (timed.length > 0) {
    const points = lastStand(timed);
    return start !== undefined && !points.some((one) => one.afterS === 0)
      ? [{ afterS: 0, absolutePa: start }, ...points]
      : points;
  }
  return byClock(readings, scene);
}

function seriesPoints(reading: Reading): DecayPoint[] {
  const value = numberOf(reading);
  if (value === undefined || reading.after_s === undefined) return [];
  const first = reading.series?.[0];
  const end = { afterS: reading.after_s, absolutePa: value };
  return first === undefined ? [end] : [{ afterS: 0, absolutePa: first }, end];
}

/** A time that goes back begins a new stand. */
function lastStand(points: readonly DecayPoint[]): DecayPoint[] {
  const restart = points.findLastIndex((one, at) => {
    const before = points[at - 1];
    return before !== undefined && one.afterS < before.afterS;
  });
  return points.slice(Math.max(0, restart));
}

/** Without said times, the messages' own; only from the isolation or the lowest reading on. */
function byClock(readings: readonly Reading[], scene: Scene): DecayPoint[] {
  const points = scene.notes.flatMap((note) =>
    note.readings
      .filter((one) => readings.includes(one))
      .flatMap((one) => {
        const afterS = clockS(one.measured_at ?? note.at, note.text);
        const pa = numberOf(one);
        return afterS === undefined || pa === undefined ? [] : [{ afterS, absolutePa: pa }];
      }),
  );
  const lowest = Math.min(...points.map((one) => one.absolutePa));
  const stand = points.slice(points.findIndex((one) => one.absolutePa === lowest));
  const beganS = stand[0]?.afterS ?? 0;
  return stand.map((one) => ({ ...one, afterS: one.afterS - beganS }));
}

/** "held at 290 for 30 minutes", "380 after an hour": one reading at the end of a stand. */
function heldAt(readings: readonly Reading[], holdPa: number): number | undefined {
  const last = readings.at(-1);
  const pa = last === undefined ? undefined : numberOf(last);
  const seconds = Math.max(last?.for_s ?? 0, last?.after_s ?? 0);
  return pa !== undefined && pa <= holdPa && seconds >= decayLimits.shortestS ? pa : undefined;
}

function holds(pa: number, hold: Hold, figures: Figures): Finding {
  return {
    about: "system",
    check: "evacuation",
    level: "good",
    says: `The vacuum stands at ${figures.vacuum(pa)} at the end of the stand: tight and dry by the ${hold.says}`,
    brief: "vacuum holds: tight and dry",
    values: {},
    basis: hold.basis,
    source: hold.source("500 micron after five minutes or more: common practice, no source"),
    signs: ["evacuation:tight"],
  };
}

const hangs =
  /\b(won'?t|wont|can'?t|cannot|will not|does(n'?t| not)|never)\b.{0,16}\b(pull|get|go|drop)|\b(stuck|stalls?|stalled|hung|hangs|hanging|stays?)\b.{0,12}\b(at|around|above|there)\b/;

/** s of the day's or the calendar's clock: the moment where it is known, else "10:05" as said. */
function clockS(moment: string | undefined, text: string | undefined): number | undefined {
  const at = Date.parse(moment ?? "");
  if (!Number.isNaN(at)) return at / 1_000;
  const said = /\b(\d{1,2}):(\d{2})\b/.exec(text ?? "");
  return said === null ? undefined : Number(said[1]) * 3_600 + Number(said[2]) * 60;
}

function untimed(readings: readonly Reading[], scene: Scene, hold: Hold): Finding {
  const last = readings.at(-1);
  const pa = (last === undefined ? undefined : numberOf(last)) ?? 0;
  const deep = pa <= hold.pa;
  const figures = figuresOf(scene);
  if (!deep && hangs.test(scene.words)) return stalled(pa, scene);
  return {
    about: "system",
    check: "evacuation",
    level: "unknown",
    says: `${figures.vacuum(pa)}${deep ? "" : `, not yet at the ${hold.says}`}: valve it off at the core tool and read it again over 10 to 20 minutes, the rise tells`,
    brief: `${figures.vacuum(pa)}, no timed rise yet`,
    values: {},
    basis: hold.basis === ownBasis ? ownBasis : "common practice",
    source: hold.source("targets of 500 micron and below: common practice, no source"),
    missing: `the ${figures.vacuumName} at 10 min after isolation`,
  };
}

/** The pump comes no deeper: hoses, its oil, moisture or a leak. */
function stalled(pa: number, scene: Scene): Finding {
  const cel = waterBoilingCel(pa);
  const figures = figuresOf(scene);
  const ice = cel === undefined ? "" : `, where ice stands at ${figures.temperature(cel)}`;
  return {
    about: "system",
    check: "evacuation",
    level: "watch",
    says: `The pump hangs at ${figures.vacuum(pa)}${ice}: fresh pump oil and short wide hoses with the cores out first, then valve it off, a straight rise is a leak, a levelling one moisture`,
    brief: `hangs at ${figures.vacuum(pa)}`,
    values: {},
    basis: "common practice",
    source: "common practice, no source",
    signs: ["evacuation:rising"],
  };
}

const levels: Readonly<Record<DecayShape, Level>> = {
  tight: "good",
  above_hold: "watch",
  leak: "bad",
  wet: "bad",
  short: "unknown",
};

const signOf: Readonly<Record<DecayShape, string | undefined>> = {
  tight: "tight",
  above_hold: undefined,
  leak: "leak",
  wet: "wet",
  short: undefined,
};

interface Stood {
  readonly figures: Figures;
  readonly points: readonly DecayPoint[];
  readonly hold: Hold;
}

function finding(decay: Decay, { figures, points, hold }: Stood): Finding {
  const next = nextReading(points, figures);
  const rising = decay.shape === "short" && decay.paPerMin > 0 && decay.lastPa > hold.pa;
  const sign = rising ? "rising" : signOf[decay.shape];
  return {
    about: "system",
    check: "evacuation",
    level: levels[decay.shape],
    says:
      decay.shape === "short"
        ? `${figures.vacuum(decay.lastPa)}, too early to tell: next, ${next}`
        : says[decay.shape](decay, figures, hold),
    brief: decay.shape === "short" ? `too early to tell: ${next}` : briefs[decay.shape],
    values: { decay_Pa_per_min: decay.paPerMin },
    basis: hold.basis,
    source: hold.source(
      "straight rise for a leak, levelling rise for moisture (physics); 500, 1000 and 4600 micron, five minutes, three readings: common practice, no source",
    ),
    signs: sign === undefined ? [] : [`evacuation:${sign}`],
    ...(decay.shape === "short" ? { missing: next } : {}),
  };
}

/** Minutes to the first look behind the isolation, and between later ones; common practice, no source. */
const lookMin = { first: 10, again: 5 };

/** The one reading that is needed next, by its minute. */
function nextReading(points: readonly DecayPoint[], figures: Figures): string {
  const [first] = points;
  const last = points.at(-1);
  if (first !== undefined && isShallow(first))
    return `pump below ${figures.vacuum(decayLimits.startPa)}, then valve it off again`;
  const minutes = ((last?.afterS ?? 0) - (first?.afterS ?? 0)) / 60;
  return `the ${figures.vacuumName} at ${Math.max(lookMin.first, Math.round(minutes) + lookMin.again)} min after isolation`;
}

const briefs: Readonly<Record<Exclude<DecayShape, "short">, string>> = {
  tight: "vacuum holds: tight and dry",
  above_hold: "levels off above the hold",
  leak: "rises straight on: a leak",
  wet: "levels off: moisture, or refrigerant in oil",
};

const says: Readonly<
  Record<Exclude<DecayShape, "short">, (decay: Decay, figures: Figures, hold: Hold) => string>
> = {
  tight: (decay, figures, hold) =>
    `The vacuum holds at ${figures.vacuum(decay.lastPa)}, rising ${figures.vacuum(decay.paPerMin)} a minute: tight and dry by the ${hold.says}`,
  above_hold: (decay, figures, hold) =>
    `It levels off near ${figures.vacuum(decay.restsAtPa ?? decay.lastPa)}, ${figures.vacuum(decay.lastPa)} at the end: above the ${hold.says}. No leak by its shape; a rest of moisture, an oil film or warm hoses: pull deeper and hold again`,
  leak: (decay, figures) =>
    `It rises straight on, ${figures.vacuum(decay.paPerMin)} a minute to ${figures.vacuum(decay.lastPa)}: a leak`,
  wet: (decay, figures) =>
    `It levels off near ${figures.vacuum(decay.restsAtPa ?? decay.lastPa)}${boilsAt(decay, figures)}: moisture. Refrigerant boiling out of the oil looks alike; a second pull tells`,
};

function boilsAt(decay: Decay, figures: Figures): string {
  const cel = waterBoilingCel(decay.restsAtPa ?? decay.lastPa);
  return cel === undefined ? "" : `, where ice stands at ${figures.temperature(cel)}`;
}
