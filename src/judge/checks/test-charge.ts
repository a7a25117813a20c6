import type { Finding } from "../../model.ts";
import { kelvinPerFahrenheit } from "../../physics/constants.ts";
import { applicationOf, inTestOperation } from "../application.ts";
import { type Circuit, circuitsOf } from "../circuit.ts";
import { contradictionsOf } from "../contradiction.ts";
import type { Figures } from "../figures.ts";
import { numberOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { subcoolingOf } from "./subcooling.ts";

/** Bounds in a settled test operation. Source: common practice, no source. */
const bounds = {
  subcoolingLowK: 4 * kelvinPerFahrenheit,
  subcoolingHighK: 18 * kelvinPerFahrenheit,
  dischargeSuperheatHighK: 70 * kelvinPerFahrenheit,
  dischargeSuperheatLowK: 15 * kelvinPerFahrenheit,
  openingWidePercent: 85,
  openingNarrowPercent: 20,
} as const;

type Outcome = "short" | "right" | "over";

/** The votes of subcooling, discharge superheat and valve openings; at least two figures are needed. */
export function testCharge(scene: Scene, figures: Figures): Finding[] {
  if (applicationOf(scene) !== "multi_zone") return [];
  if (!inTestOperation(scene)) return openingsAsItRuns(scene);
  return circuitsOf(scene)
    .filter((one) => contradictionsOf(one, scene).length === 0)
    .flatMap((one) => verdict(one, scene, figures));
}

const valve = "(?:eevs?|levs?|exvs?|txvs?|valves?)";
const ofEveryValve = new RegExp(
  `\\b(?:all|every|each|both)\\b[^.;,]{0,24}\\b${valve}\\b|\\b(?:eevs|levs|exvs|valves)\\b|\\b${valve}\\b[^.;]{0,24}\\b(?:all|each|every)\\b`,
);

/** "unit 3 EEV at 0 %": the valve of a zone that is off stands shut, and says nothing of the others. */
function isOneShut(scene: Scene): boolean {
  const [only, ...more] = ofQuantity(scene.readings, "valve_opening");
  return only !== undefined && more.length === 0 && (numberOf(only) ?? 1) <= 0;
}

/**
 * All valves wide open or pinched as it runs normally: the machine answers so to too little or too
 * much in it, among other things, so it leans the diagnosis and is no verdict.
 */
function openingsAsItRuns(scene: Scene): Finding[] {
  const outcome = byOpening(scene)[0]?.outcome;
  if (
    outcome === undefined ||
    outcome === "right" ||
    !ofEveryValve.test(scene.words) ||
    isOneShut(scene)
  )
    return [];
  const wide = outcome === "short";
  return [
    {
      about: "system",
      check: "charge",
      level: "watch",
      says: wide
        ? "Every valve stands wide open as it runs: it looks for more liquid than it gets. That settles no charge: weigh it, or run the forced test operation"
        : "Every valve is throttled down as it runs: more liquid stands before them than they want. That settles no charge: weigh it, or run the forced test operation",
      brief: wide ? "every valve wide open" : "every valve throttled",
      values: {},
      basis: "common practice",
      source: "common practice, no source",
      signs: [wide ? "openings:wide" : "openings:narrow"],
    },
  ];
}

interface Vote {
  readonly outcome: Outcome;
  readonly says: string;
}

function verdict(circuit: Circuit, scene: Scene, figures: Figures): Finding[] {
  const votes = [
    ...bySubcooling(circuit, figures),
    ...byDischarge(circuit, figures),
    ...byOpening(scene),
  ];
  if (votes.length === 0) return [];
  const count = (outcome: Outcome) => votes.filter((one) => one.outcome === outcome).length;
  const [short, over] = [count("short"), count("over")];
  const decided: Outcome | undefined =
    short > 0 && over > 0 ? undefined : short > over ? "short" : over > 0 ? "over" : "right";
  const seen = votes.map((one) => one.says).join(", ");
  if (decided === undefined || votes.length < 2 || isTooEarly(scene))
    return [undecided(circuit, seen, votes.length)];
  return [
    {
      about: circuit.about,
      check: "charge",
      level: decided === "right" ? "good" : "bad",
      says: `In test operation ${seen}: ${meanings[decided]}`,
      brief: meanings[decided],
      values: {},
      basis: "test operation",
      source:
        "outdoor subcooling, discharge superheat and valve openings in a settled test run: common practice, no source",
      signs: [`test_charge:${decided}`],
    },
  ];
}

/** Minutes that a test run needs to settle. Source: common practice, no source. */
const settledMin = 15;

/** The longest run that was said of the test is too short. */
function isTooEarly(scene: Scene): boolean {
  const runs = scene.words
    .split("\n")
    .filter((line) => /\b(test|forced|trial|settl)/.test(line))
    .flatMap((line) => [...line.matchAll(/\b(\d+) ?(?:min|mins|minutes)\b/g)])
    .map((found) => Number(found[1]));
  return runs.length > 0 && Math.max(...runs) < settledMin;
}

const meanings: Readonly<Record<Outcome, string>> = {
  short: "the charge is short",
  right: "the charge fits",
  over: "there is too much in it",
};

function undecided(circuit: Circuit, seen: string, votes: number): Finding {
  const missing =
    votes < 2
      ? "outdoor subcooling, discharge superheat and valve openings together"
      : "figures that agree, settled 15 to 20 minutes";
  return {
    about: circuit.about,
    check: "charge",
    level: "unknown",
    says: `In test operation ${seen}; that alone does not settle the charge`,
    brief: "charge not settled",
    values: {},
    basis: "test operation",
    missing,
  };
}

function bySubcooling(circuit: Circuit, figures: Figures): Vote[] {
  const kelvin = subcoolingOf(circuit);
  if (kelvin === undefined) return [];
  const outcome =
    kelvin < bounds.subcoolingLowK ? "short" : kelvin > bounds.subcoolingHighK ? "over" : "right";
  return [{ outcome, says: `subcooling is ${figures.difference(kelvin)}` }];
}

function byDischarge(circuit: Circuit, figures: Figures): Vote[] {
  const { dischargeCel, dewCel, saidDischargeSuperheatK } = circuit;
  const overK =
    dischargeCel === undefined || dewCel === undefined
      ? saidDischargeSuperheatK
      : dischargeCel - dewCel;
  if (overK === undefined) return [];
  const outcome =
    overK > bounds.dischargeSuperheatHighK
      ? "short"
      : overK < bounds.dischargeSuperheatLowK
        ? "over"
        : "right";
  return [{ outcome, says: `discharge superheat ${figures.difference(overK)}` }];
}

/** Openings in percent; "wide open" and "nearly shut" where only words were said. */
function byOpening(scene: Scene): Vote[] {
  // of a range its middle
  const openings = ofQuantity(scene.readings, "valve_opening").flatMap((one) => {
    const low = numberOf(one);
    return low === undefined ? [] : (low + (one.high ?? low)) / 2;
  });
  const mean = openings.reduce((sum, one) => sum + one, 0) / openings.length;
  if (openings.length === 0) return byOpeningWords(scene);
  const outcome =
    mean > bounds.openingWidePercent
      ? "short"
      : mean < bounds.openingNarrowPercent
        ? "over"
        : "right";
  return [{ outcome, says: `valves ${Math.round(mean)} percent open` }];
}

function byOpeningWords(scene: Scene): Vote[] {
  if (
    /\b(valves?|eevs?|levs?|exvs?|all)\b.{0,40}\b(wide open|full(y)? open|maxed|at max)\b/.test(
      scene.words,
    )
  )
    return [{ outcome: "short", says: "the valves stand wide open" }];
  if (
    /\b(valves?|eevs?|levs?|exvs?)\b.{0,40}\b(nearly shut|almost (shut|closed)|pinched|at min)/.test(
      scene.words,
    )
  )
    return [{ outcome: "over", says: "the valves stand nearly shut" }];
  return [];
}
