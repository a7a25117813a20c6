import type { Finding } from "../../model.ts";
import { celFromFahrenheit } from "../../physics/constants.ts";
import { targetSplitK } from "../../physics/temperature-split.ts";
import { type Air, airOf } from "../air.ts";
import { applicationOf, isHeating } from "../application.ts";
import { splitBand, splitToleranceK, type Verdict, verdictOf } from "../bands.ts";
import type { Check } from "../check.ts";
import { clauseOf } from "../clause.ts";
import { type Figures, figuresOf } from "../figures.ts";
import { numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { plateRise } from "./gas-heat.ts";

/**
 * Air split over the indoor coil: against the target for the return's wet bulb, else against what
 * is usual; a figure without a verdict on variable machines and in heating.
 */
export const temperatureSplit: Check = {
  name: "temperature_split",
  examples: [
    {
      level: "good",
      notes: ["return 76 F, wet bulb 63, supply 57 F"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
    {
      level: "unknown",
      notes: ["return 70 F, supply 98 F"],
      equipment: { drive: "line", refrigerant: "R-410A", mode: "heating" },
    },
    {
      level: "watch",
      notes: ["return 76 F, wet bulb 63, supply 68 F"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
  ],
  signs: ["split:low", "split:usual", "split:high"],
  judge: (scene) => {
    const air = airOf(scene);
    const { returnCel, supplyCel } = air;
    const both = returnCel !== undefined && supplyCel !== undefined;
    const splitK = both ? Math.abs(returnCel - supplyCel) : saidSplit(scene);
    if (splitK === undefined) return [];
    const heating = both && supplyCel > returnCel;
    // the plate's rise tells more of it
    if (heating && plateRise(scene) !== undefined) return [];
    const judged =
      !heating &&
      !isHeating(scene) &&
      applicationOf(scene) === "comfort" &&
      (returnCel ?? coolestReturnCel) >= coolestReturnCel;
    return [finding(splitK, judged ? verdictFor(splitK, air) : undefined, figuresOf(scene))];
  },
};

/** Cel, 64 F: cooler air into the coil, as with an economizer open, has little to give. Common practice, no source. */
const coolestReturnCel = celFromFahrenheit(64);

/** The split as the technician worked it out. */
function saidSplit(scene: Scene): number | undefined {
  const said = scene.readings.findLast(
    (one) =>
      one.quantity === "temperature_difference" &&
      /\b(split|delta.?t|td)\b|across the (coil|evap)/.test(clauseOf(scene, one)),
  );
  return said === undefined ? undefined : numberOf(said);
}

interface SplitVerdict {
  readonly verdict: Verdict;
  readonly targetK?: number;
}

function verdictFor(splitK: number, air: Air): SplitVerdict {
  const { returnCel, returnWetBulbCel } = air;
  const targetK =
    returnCel === undefined || returnWetBulbCel === undefined
      ? undefined
      : targetSplitK(returnCel, returnWetBulbCel);
  if (targetK === undefined) return { verdict: verdictOf(splitK, splitBand) };
  const band = { from: targetK - splitToleranceK, to: targetK + splitToleranceK };
  return { verdict: verdictOf(splitK, band), targetK };
}

const meanings = {
  low: "low: little capacity, or more air than the coil is meant for",
  usual: "usual",
  high: "high: too little air over the coil",
} as const;

function finding(splitK: number, judged: SplitVerdict | undefined, figures: Figures): Finding {
  const figure = figures.difference(splitK);
  const verdict = judged?.verdict;
  const against =
    judged === undefined
      ? ""
      : judged.targetK === undefined
        ? `, commonly ${figures.difference(splitBand.from)} to ${figures.difference(splitBand.to)}`
        : `, target ${figures.difference(judged.targetK)} at this wet bulb`;
  return {
    about: "air",
    check: "temperature_split",
    level: verdict === undefined ? "unknown" : verdict === "usual" ? "good" : "watch",
    says:
      verdict === undefined
        ? `Air split ${figure}; no target holds for this mode or machine, so compare it with its own history`
        : `Air split ${figure}: ${meanings[verdict]}${against}`,
    brief: `split ${figure}${verdict === undefined ? "" : `, ${verdict}`}`,
    values: {
      temperature_split_K: splitK,
      ...(judged?.targetK === undefined ? {} : { target_split_K: judged.targetK }),
    },
    basis: judged?.targetK === undefined ? "common practice" : "wet bulb target",
    source:
      "target: California Title 24 RA3.2 (from memory); 14 to 25 F common practice, no source; for ducted single-speed units only",
    signs: verdict === undefined ? [] : [`split:${verdict}`],
    ...(verdict === undefined ? { missing: "the split of an earlier visit" } : {}),
  };
}
