import type { Finding } from "../../model.ts";
import { compressionRatio } from "../../physics/compression-ratio.ts";
import { applicationOf, isHeating } from "../application.ts";
import { type Band, ratioBand, verdictOf } from "../bands.ts";
import type { Check } from "../check.ts";
import { type Circuit, circuitsOf } from "../circuit.ts";
import { contradictionsOf } from "../contradiction.ts";
import { replacesCompressor } from "../replaces-compressor.ts";
import type { Scene } from "../scene.ts";
import { isAtRest } from "../standing.ts";
import { standsStill } from "../standing-still.ts";
import { pumpedDown } from "./pumped-down.ts";
import { told } from "./told.ts";

/** Compression ratio on absolute pressures: low where a compressor does not pump. */
export const compression: Check = {
  name: "compression",
  examples: [
    {
      level: "good",
      notes: ["suction 118 psig, discharge 365 psig"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
    {
      level: "watch",
      notes: ["suction 150 psig, discharge 190 psig, running"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
  ],
  signs: [
    "ratio:flat",
    "ratio:low",
    "ratio:usual",
    "ratio:high",
    "pump_down:fails",
    "pump_down:holds",
    "unloads:at_once",
    "sequence:line_work_done",
  ],
  judge: (scene) => [
    ...circuitsOf(scene).flatMap((one) =>
      contradictionsOf(one, scene).length === 0
        ? finding(one, scene)
        : isUpsideDown(one)
          ? []
          : finding(one, scene).map(unjudged),
    ),
    ...pumpedDown(scene),
    ...readStanding(scene),
    ...told(scene, "compression"),
  ],
};

/** The suction above the head: no ratio at all. */
function isUpsideDown({ lift }: Circuit): boolean {
  return lift !== undefined && lift.suctionPa >= lift.highPa;
}

/** Both sides as they stand while nothing pumps: neither ratio nor superheat. */
function readStanding(scene: Scene): Finding[] {
  // at rest for hours they say what gas is in it
  if (!scene.readings.some((one) => standsStill(scene, one) && !isAtRest(scene, one))) return [];
  return [
    {
      about: "system",
      check: "compression",
      level: "unknown",
      says: "Read while the compressor stands still: no ratio, superheat or subcooling to judge. First why it does not run",
      brief: "read while it stands",
      values: {},
      basis: "first principles",
      missing: "both pressures while it runs",
      signs: [],
    },
  ];
}

/** The ratio of readings that contradict others of the circuit: a figure, and no verdict on it. */
function unjudged(one: Finding): Finding {
  return {
    ...one,
    level: "unknown",
    says: `${one.says.split(":")[0]}: not judged while other readings of the circuit contradict each other`,
    brief: "ratio not judged",
    signs: [],
    missing: "readings that agree",
  };
}

/** Hardly any lift at all, as where it runs backward. Common practice, no source. */
const flat = 1.3;

const words = {
  flat: "no lift to speak of, it turns backward or pumps nothing",
  low: "low, hardly any work is done on the gas",
  usual: "usual",
  high: "high, the compressor works hard for what it moves",
} as const;

/** Heat out of cold air takes more lift than cooling: 4 to 7 at low outdoor temperatures. Common practice, no source. */
const heatingTo = 7;

function bandOf(scene: Scene): Band {
  const band = ratioBand[applicationOf(scene)];
  return isHeating(scene) ? { ...band, to: Math.max(band.to, heatingTo) } : band;
}

/** A compressor that was just set was just wired: of what pumps nothing then, its legs come first. */
function newly(verdict: string, scene: Scene): string[] {
  const low = verdict === "flat" || verdict === "low";
  return low && scene.notes.some(replacesCompressor) ? ["sequence:line_work_done"] : [];
}

function finding(circuit: Circuit, scene: Scene): Finding[] {
  const { lift, about } = circuit;
  if (lift === undefined) return [];
  const ratio = compressionRatio(lift.highPa, lift.suctionPa);
  if (ratio === undefined) return [];
  const verdict = ratio < flat ? "flat" : verdictOf(ratio, bandOf(scene));
  return [
    {
      about,
      check: "compression",
      level: verdict === "usual" ? "good" : "watch",
      says: `Compression ratio ${ratio.toFixed(1)}, absolute over absolute: ${words[verdict]}`,
      brief: `ratio ${ratio.toFixed(1)}, ${verdict}`,
      values: { compression_ratio: ratio },
      basis: "common practice",
      source: "definition; bands by application common practice, no source",
      signs:
        applicationOf(scene) === "multi_zone" ? [] : [`ratio:${verdict}`, ...newly(verdict, scene)],
    },
  ];
}
