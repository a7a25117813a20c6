import type { Finding, Level } from "../../model.ts";
import { airOf } from "../air.ts";
import { applicationOf, inTestOperation, isHeating } from "../application.ts";
import { bands } from "../bands.ts";
import type { Check } from "../check.ts";
import type { Circuit } from "../circuit.ts";
import { circuitsOf } from "../circuit.ts";
import { contradictionsOf } from "../contradiction.ts";
import { type Figures, figuresOf } from "../figures.ts";
import { numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { otherWords, questioned, toldOtherwise } from "../told-otherwise.ts";
import { wrongLine } from "./wrong-line.ts";

type Outcome = "none" | "low" | "usual" | "high";

/**
 * Subcooling at the bubble point, against the plate's figure where one was said, else against the
 * usual band; with a receiver a low one says nothing.
 */
export const subcooling: Check = {
  name: "subcooling",
  examples: [
    {
      level: "good",
      notes: ["liquid 365 psig, liquid line 100 F"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
    {
      level: "bad",
      notes: ["liquid 365 psig, liquid line 109 F"],
      equipment: {
        drive: "line",
        refrigerant: "R-410A",
        metering: "expansion_valve",
        mode: "cooling",
      },
    },
    {
      level: "unknown",
      notes: ["liquid 365 psig, liquid line 100 F"],
      equipment: { drive: "line" },
    },
  ],
  signs: ["subcooling:none", "subcooling:low", "subcooling:usual", "subcooling:high"],
  judge: (scene) =>
    circuitsOf(scene).flatMap((circuit) => {
      if (contradictionsOf(circuit, scene).some((one) => one.side === "high")) return [];
      const kelvin = subcoolingOf(circuit);
      return kelvin === undefined ? missing(circuit) : [finding(circuit, kelvin, scene)];
    }),
};

/** Worked out from pressure and line; the technician's own figure where they were not given. */
export function subcoolingOf(circuit: Circuit): number | undefined {
  const { bubbleCel, liquidCel, saidSubcoolingK } = circuit;
  return bubbleCel === undefined || liquidCel === undefined
    ? saidSubcoolingK
    : bubbleCel - liquidCel;
}

function missing(circuit: Circuit): Finding[] {
  const { highPa, liquidCel, refrigerant, about } = circuit;
  if (highPa === undefined || liquidCel === undefined) return [];
  const known = refrigerant !== undefined;
  return [
    {
      about,
      check: "subcooling",
      level: "unknown",
      says: known
        ? "That head pressure lies outside the tables, so there is no subcooling to give"
        : "No subcooling without the refrigerant: read it off the plate",
      brief: known ? "pressure outside the tables" : "refrigerant not known",
      values: {},
      basis: "bubble point tables",
      missing: known ? "a head pressure within the tables" : "refrigerant",
    },
  ];
}

function finding(circuit: Circuit, kelvin: number, scene: Scene): Finding {
  const figures = figuresOf(scene);
  const figure = figures.difference(kelvin);
  const verdict = verdictFor(kelvin, scene);
  const otherK =
    wrongLine(circuit, figures).length > 0
      ? undefined
      : toldOtherwise(circuit, "subcooling", kelvin);
  if (otherK !== undefined && verdictFor(otherK, scene).outcome !== verdict.outcome)
    return questioned(circuit, { name: "subcooling", saidK: otherK, kelvin }, figures);
  const from =
    circuit.bubbleCel !== undefined && circuit.liquidCel !== undefined
      ? `line ${figures.temperature(circuit.liquidCel)} under a bubble point of ${figures.temperature(circuit.bubbleCel)}`
      : "as said";
  return {
    about: circuit.about,
    check: "subcooling",
    level: verdict.level,
    says: `Subcooling ${figure}, ${from}: ${verdict.says(figures)}${otherWords(otherK, figures)}`,
    brief: `subcooling ${figure}, ${verdict.brief}`,
    values: {
      subcooling_K: kelvin,
      ...(circuit.bubbleCel === undefined ? {} : { saturation_Cel: circuit.bubbleCel }),
      ...approachOf(circuit, scene),
    },
    basis: verdict.basis,
    source:
      "bubble point: ASHRAE Handbook Refrigeration; band common practice, no source; tolerance ANSI/ACCA 5 QI 2015 (from memory)",
    signs: verdict.outcome === undefined ? [] : [`subcooling:${verdict.outcome}`],
    ...(verdict.missing === undefined ? {} : { missing: verdict.missing }),
  };
}

/** Liquid line over outdoor air: falls as charge is added, rises as it goes. */
function approachOf(circuit: Circuit, scene: Scene): { approach_K?: number } {
  const { outdoorCel } = airOf(scene);
  const { liquidCel } = circuit;
  return liquidCel === undefined || outdoorCel === undefined || isHeating(scene)
    ? {}
    : { approach_K: liquidCel - outdoorCel };
}

interface SubcoolingVerdict {
  readonly level: Level;
  readonly outcome?: Outcome;
  readonly brief: string;
  readonly basis: string;
  readonly missing?: string;
  readonly says: (figures: Figures) => string;
}

function verdictFor(kelvin: number, scene: Scene): SubcoolingVerdict {
  if (applicationOf(scene) === "multi_zone" && !inTestOperation(scene)) return notInTest;
  const plateK = plateFigure(scene);
  const from = plateK === undefined ? bands.subcooling.from : plateK - bands.plateToleranceK;
  const to = plateK === undefined ? bands.subcooling.to : plateK + bands.plateToleranceK;
  if (kelvin < from && hasReceiver(scene)) return receiver;
  const outcome = outcomeOf(kelvin, { from, to, thin: plateK === undefined });
  return {
    level: levels[outcome],
    outcome,
    basis: plateK === undefined ? "common practice" : "the plate's figure",
    brief: words[outcome],
    says: (figures) =>
      plateK === undefined
        ? `${words[outcome]}, commonly ${figures.difference(bands.subcooling.from)} to ${figures.difference(bands.subcooling.to)} where the plate names none`
        : `${words[outcome]}, the plate asks for ${figures.difference(plateK)}, give or take ${figures.difference(bands.plateToleranceK)}`,
  };
}

interface Bounds {
  readonly from: number;
  readonly to: number;
  /** no plate's figure: between none and plenty lies a thin one */
  readonly thin: boolean;
}

function outcomeOf(kelvin: number, { from, to, thin }: Bounds): Outcome {
  if (kelvin < from) return "none";
  if (thin && kelvin < bands.thinK) return "low";
  return kelvin > to ? "high" : "usual";
}

const levels = { none: "bad", low: "watch", usual: "good", high: "bad" } as const;
const words = { none: "next to none", low: "thin", usual: "usual", high: "high" } as const;

const notInTest: SubcoolingVerdict = {
  level: "unknown",
  basis: "common practice",
  brief: "says nothing outside test operation",
  missing: "forced test operation, settled 15 to 20 minutes",
  says: () =>
    "on a variable machine it speaks of the charge only in forced test operation, settled 15 to 20 minutes, without defrost or oil return",
};

/** On the plate, or looked at and not found empty: "receiver half", "receiver glass full". */
function hasReceiver(scene: Scene): boolean {
  if (scene.facts.receiver !== undefined) return scene.facts.receiver;
  return /\breceiver\b.{0,20}\b(?:half|full|third|quarter|two thirds|\d+ ?(?:%|percent)|level (?:is )?(?:good|ok|fine|normal))\b/.test(
    scene.words,
  );
}

const receiver: SubcoolingVerdict = {
  level: "good",
  basis: "common practice",
  brief: "nothing to conclude with a receiver",
  says: () => "with a receiver it stays low until the receiver runs empty, so look at its level",
};

/** The subcooling that plate or literature asks for, where it was said. */
function plateFigure(scene: Scene): number | undefined {
  const said = scene.ratings.findLast(
    (one) => one.quantity === "subcooling" && one.rating !== "setpoint",
  );
  return said === undefined ? undefined : numberOf(said);
}
