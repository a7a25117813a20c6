import type { Finding, Reading } from "../../model.ts";
import { trendBand } from "../../physics/insulation.ts";
import { hasPoint, isBound, numberOf } from "../pick.ts";
import { replacesCompressor } from "../replaces-compressor.ts";
import type { Scene } from "../scene.ts";
import { ohmWords } from "../words.ts";
import { isSaidOfBefore } from "./insulation-leads.ts";

interface Now {
  readonly about: string;
  readonly lowestOhm: number;
  readonly bound: boolean;
}

/** The same unit's insulation now against its earlier tests; `[]` where there is none to compare. */
export function insulationTrend(now: Now, scene: Scene): Finding[] {
  const told = scene.readings.filter((one) => isSaidOfBefore(scene, one));
  const before = [...pastReadings(scene), ...scene.earlier, ...told].filter(
    (one) =>
      isInsulation(one) && sameSubject(one, now.about) && !isOtherVolts(one, now.about, scene),
  );
  const last = before[before.length - 1];
  const lastOhm = last === undefined ? undefined : numberOf(last);
  if (last === undefined || lastOhm === undefined || !(lastOhm > 0)) return [];
  if (!Number.isFinite(now.lowestOhm)) return [];
  const ratio = now.lowestOhm / lastOhm;
  const band = trendBand(ratio);
  if (now.bound && band !== "steady") return [];
  const most = isBound(last) ? "at least " : "";
  const was = `${isBound(last) ? "more than " : ""}${ohmWords(lastOhm)} earlier`;
  return [
    {
      about: now.about,
      check: "insulation",
      level: band === "steady" ? "good" : "watch",
      brief: band === "steady" ? "holding" : `down by ${most}a factor of ${Math.round(1 / ratio)}`,
      says:
        band === "steady"
          ? `${ohmWords(now.lowestOhm)} against ${was}: holding`
          : `${ohmWords(now.lowestOhm)} against ${was}: down by ${most}a factor of ${Math.round(1 / ratio)}, so moisture, contamination or winding damage until a repeat test at the same temperature clears it`,
      values: {},
      basis: "own history",
      source:
        "IEEE 43-2013 12 (comparison with history); bands of one half and one tenth: common practice, no source",
      signs: band === "steady" ? [] : [`insulation:${band}`],
    },
  ];
}

/** A test at another voltage is no comparison. Source: IEEE 43-2013 12.2.3, from memory. */
function isOtherVolts(old: Reading, about: string, scene: Scene): boolean {
  const last = scene.readings.findLast((one) => isInsulation(one) && sameSubject(one, about));
  const volts = [old.test_voltage, last?.test_voltage];
  return !volts.includes(undefined) && volts[0] !== volts[1];
}

function isInsulation(reading: Reading): boolean {
  return (
    reading.quantity === "insulation_resistance" &&
    (reading.points === undefined || hasPoint(reading, "ground"))
  );
}

function sameSubject(reading: Reading, about: string): boolean {
  return reading.subject === undefined || reading.subject === about || about === "compressor";
}

/** Readings of earlier jobs, oldest first, since the compressor was last replaced. */
function pastReadings(scene: Scene): Reading[] {
  const notes = scene.history.flatMap((past) => past.notes);
  const since = notes.findLastIndex(replacesCompressor);
  return notes
    .slice(since + 1)
    .flatMap((note) => note.readings)
    .filter((one) => one.rating === undefined && one.doubtful !== true);
}
