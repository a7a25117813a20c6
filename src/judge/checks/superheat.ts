import type { Finding, Level } from "../../model.ts";
import { targetSuperheatK } from "../../physics/target-superheat.ts";
import type { Air } from "../air.ts";
import { airOf } from "../air.ts";
import { applicationOf, isHeating, meteringOf } from "../application.ts";
import { bands, verdictOf } from "../bands.ts";
import type { Check } from "../check.ts";
import type { Circuit } from "../circuit.ts";
import { circuitsOf } from "../circuit.ts";
import { contradictionsOf } from "../contradiction.ts";
import { type Figures, figuresOf } from "../figures.ts";
import type { Scene } from "../scene.ts";
import { otherWords, questioned, toldOtherwise } from "../told-otherwise.ts";
import { wrongLine } from "./wrong-line.ts";

type Outcome = "none" | "low" | "usual" | "high";

/**
 * Superheat at the dew point: against the target for a fixed orifice, against the usual band for a
 * valve. On equipment that controls it, a figure without a charge verdict.
 */
export const superheat: Check = {
  name: "superheat",
  examples: [
    {
      level: "good",
      notes: ["suction 118 psig, suction line 50 F"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
    {
      level: "bad",
      notes: ["suction 118 psig, suction line 85 F"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
    {
      level: "unknown",
      notes: ["suction 118 psig, suction line 50 F"],
      equipment: { drive: "line" },
    },
  ],
  signs: ["superheat:none", "superheat:low", "superheat:usual", "superheat:high"],
  judge: (scene) => {
    const found = circuitsOf(scene).flatMap((circuit) => {
      if (contradictionsOf(circuit, scene).some((one) => one.side === "low")) return [];
      const kelvin = superheatOf(circuit);
      return kelvin === undefined ? missing(circuit) : [finding(circuit, kelvin, scene)];
    });
    return found.length > 0 ? found : targetAlone(scene);
  },
};

/** The weather's target before anything was read on the circuit. */
function targetAlone(scene: Scene): Finding[] {
  const targetK = targetFor(airOf(scene), scene);
  if (targetK === undefined) return [];
  const target = figuresOf(scene).difference(targetK);
  return [
    {
      about: "system",
      check: "superheat",
      level: "unknown",
      says: `The target superheat is ${target} in this weather; suction pressure and suction line temperature tell how far off it is`,
      brief: `target superheat ${target}`,
      values: { target_superheat_K: targetK },
      basis: "target superheat rule",
      source: "rule of thumb for fixed orifices: common practice, no source",
      missing: "suction pressure and suction line temperature",
    },
  ];
}

/** Worked out from pressure and line; the technician's own figure where they were not given. */
export function superheatOf(circuit: Circuit): number | undefined {
  const { evaporatingCel, suctionCel, saidSuperheatK } = circuit;
  if (evaporatingCel === undefined || suctionCel === undefined) return saidSuperheatK;
  return suctionCel - evaporatingCel;
}

function missing(circuit: Circuit): Finding[] {
  const { suctionPa, suctionCel, refrigerant, about } = circuit;
  if (suctionPa === undefined || suctionCel === undefined) return [];
  const known = refrigerant !== undefined;
  return [
    {
      about,
      check: "superheat",
      level: "unknown",
      says: known
        ? "That suction pressure lies outside the tables, so there is no superheat to give"
        : "No superheat without the refrigerant: read it off the plate",
      brief: known ? "pressure outside the tables" : "refrigerant not known",
      values: {},
      basis: "dew point tables",
      missing: known ? "a suction pressure within the tables" : "refrigerant",
    },
  ];
}

function finding(circuit: Circuit, kelvin: number, scene: Scene): Finding {
  const figures = figuresOf(scene);
  const figure = figures.difference(kelvin);
  const verdict = verdictFor(kelvin, airOf(scene), scene);
  const otherK =
    wrongLine(circuit, figures).length > 0
      ? undefined
      : toldOtherwise(circuit, "superheat", kelvin);
  if (otherK !== undefined && verdictFor(otherK, airOf(scene), scene).outcome !== verdict.outcome)
    return questioned(circuit, { name: "superheat", saidK: otherK, kelvin }, figures);
  const from =
    circuit.evaporatingCel !== undefined && circuit.suctionCel !== undefined
      ? `line ${figures.temperature(circuit.suctionCel)} over a dew point of ${figures.temperature(circuit.evaporatingCel)}`
      : "as said";
  return {
    about: circuit.about,
    check: "superheat",
    level: verdict.level,
    says: `Superheat ${figure}, ${from}: ${verdict.says(figures)}${otherWords(otherK, figures)}`,
    brief: `superheat ${figure}, ${verdict.brief}`,
    values: {
      superheat_K: kelvin,
      ...(verdict.targetK === undefined ? {} : { target_superheat_K: verdict.targetK }),
      ...(circuit.evaporatingCel === undefined ? {} : { saturation_Cel: circuit.evaporatingCel }),
    },
    basis: verdict.basis,
    source:
      "dew point: ASHRAE Handbook Refrigeration; target rule and bands: common practice, no source; tolerance ANSI/ACCA 5 QI 2015 (from memory)",
    signs: verdict.outcome === undefined ? [] : [`superheat:${verdict.outcome}`],
  };
}

interface SuperheatVerdict {
  readonly level: Level;
  readonly outcome?: Outcome;
  readonly targetK?: number;
  readonly brief: string;
  readonly basis: string;
  readonly says: (figures: Figures) => string;
}

function verdictFor(kelvin: number, air: Air, scene: Scene): SuperheatVerdict {
  if (applicationOf(scene) === "multi_zone") return controlled(kelvin);
  const target = targetFor(air, scene);
  return target === undefined ? againstBand(kelvin, scene) : againstTarget(kelvin, target);
}

function targetFor(air: Air, scene: Scene): number | undefined {
  if (meteringOf(scene) !== "fixed_orifice" || isHeating(scene)) return undefined;
  if (air.returnWetBulbCel === undefined || air.outdoorCel === undefined) return undefined;
  return targetSuperheatK(air.returnWetBulbCel, air.outdoorCel);
}

function controlled(kelvin: number): SuperheatVerdict {
  const flooding = kelvin < bands.floodbackK;
  return {
    level: flooding ? "watch" : "good",
    basis: "common practice",
    brief: flooding ? "liquid may reach the compressor" : "held by the machine",
    says: () =>
      flooding
        ? "so little that liquid may reach the compressor; the machine sets it, so it says nothing of the charge"
        : "the machine sets it with its valves, so it says nothing of the charge",
  };
}

function againstTarget(kelvin: number, targetK: number): SuperheatVerdict {
  const tolerance = bands.targetToleranceK;
  const offK = kelvin - targetK;
  const outcome =
    kelvin < bands.floodbackK
      ? "none"
      : offK < -tolerance
        ? "low"
        : offK > tolerance
          ? "high"
          : "usual";
  const chargeable = targetK >= bands.targetToleranceK;
  return {
    level: outcome === "usual" ? "good" : outcome === "low" ? "watch" : "bad",
    outcome,
    targetK,
    basis: "target superheat rule",
    brief: outcome === "usual" ? "on target" : words[outcome],
    says: (figures) =>
      `${words[outcome]}, the target for this weather is ${figures.difference(targetK)}, give or take ${figures.difference(tolerance)}${chargeable ? "" : "; below 5 F of target a fixed orifice can't be charged by superheat"}`,
  };
}

const words = {
  none: "hardly any, liquid may reach the compressor",
  low: "low",
  usual: "usual",
  high: "high",
} as const;

function againstBand(kelvin: number, scene: Scene): SuperheatVerdict {
  const band = bands.superheat[meteringOf(scene) ?? "expansion_valve"];
  const outcome = kelvin < bands.floodbackK ? "none" : verdictOf(kelvin, band);
  return {
    level: outcome === "usual" ? "good" : outcome === "low" ? "watch" : "bad",
    outcome,
    basis: "common practice",
    brief: words[outcome],
    says: (figures) =>
      `${words[outcome]}, commonly ${figures.difference(band.from)} to ${figures.difference(band.to)}`,
  };
}
