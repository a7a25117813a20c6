import type { Finding, Level, Reading } from "../../model.ts";
import { airOf } from "../air.ts";
import { applicationOf, isHeating, isWaterCooled } from "../application.ts";
import {
  type Band,
  bands,
  condensingBand,
  evaporatingBand,
  type Verdict,
  verdictOf,
} from "../bands.ts";
import type { Circuit } from "../circuit.ts";
import type { Figures } from "../figures.ts";
import { noteOf } from "../near.ts";
import { numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { areTogether } from "../together.ts";

/** A saturation temperature against what it works on. */
interface Comparison {
  readonly verdict: Verdict;
  /** "38 F under the return air, commonly 20 to 43 F" */
  readonly words: string;
}

/** Evaporating and condensing temperature, each against its air; without it, against what is usual. */
export function coilLevels(circuit: Circuit, scene: Scene, figures: Figures): Finding[] {
  const low = circuit.evaporatingCel;
  const highCel = condensingMidCel(circuit);
  return [
    ...(low === undefined
      ? []
      : [side(circuit, "suction", low, lowSide(low, scene, figures), scene, figures)]),
    ...(highCel === undefined
      ? []
      : [side(circuit, "head", highCel, highSide(highCel, scene, figures), scene, figures)]),
  ];
}

/** Middle of bubble and dew, which is what a blend condenses at. */
function condensingMidCel(circuit: Circuit): number | undefined {
  const { bubbleCel, dewCel } = circuit;
  return bubbleCel === undefined || dewCel === undefined ? undefined : (bubbleCel + dewCel) / 2;
}

function side(
  circuit: Circuit,
  name: "suction" | "head",
  cel: number,
  comparison: Comparison | undefined,
  scene: Scene,
  figures: Figures,
): Finding {
  const verdict = comparison?.verdict ?? "usual";
  const controlled = applicationOf(scene) === "multi_zone" && controls(name, scene);
  const at = `${name === "suction" ? "Boils" : "Condenses"} at ${figures.temperature(cel)}`;
  const words = controlled
    ? "a target that the machine holds, so no word on the charge"
    : (comparison?.words ?? "nothing to compare it with yet");
  return {
    about: circuit.about,
    check: "saturation",
    level: levelOf(controlled, comparison),
    says: `${at}, ${words}`,
    brief: `${at.charAt(0).toLowerCase()}${at.slice(1)}${controlled || comparison === undefined ? "" : `, ${verdict}`}`,
    values: { saturation_Cel: cel },
    basis: "saturation tables",
    source: "own fit to reference equations of state; bands common practice, no source",
    ...(controlled || comparison !== undefined ? {} : { missing: wantedAir(name, scene) }),
    signs: comparison === undefined || isSilent(name, verdict, scene) ? [] : [`${name}:${verdict}`],
  };
}

function levelOf(controlled: boolean, comparison: Comparison | undefined): Level {
  if (controlled) return "good";
  if (comparison === undefined) return "unknown";
  return comparison.verdict === "usual" ? "good" : "watch";
}

/** The temperature that this one is judged against. */
function wantedAir(name: "suction" | "head", scene: Scene): string {
  const outdoor = (name === "head") !== isHeating(scene);
  if (applicationOf(scene) === "chiller") return `water temperature at the ${name} side`;
  return outdoor ? "outdoor air temperature" : "return air temperature";
}

/** Of a variable machine only a high head in cooling speaks of a fault: the rest is held or part load. */
function isSilent(name: "suction" | "head", verdict: Verdict, scene: Scene): boolean {
  if (applicationOf(scene) !== "multi_zone") return false;
  return isHeating(scene) || name === "suction" || verdict !== "high";
}

/** What a variable machine holds: suction in cooling, head in heating. */
function controls(name: "suction" | "head", scene: Scene): boolean {
  return isHeating(scene) ? name === "head" : name === "suction";
}

function compare(differenceK: number, band: Band, words: string, figures: Figures): Comparison {
  return {
    // a large difference is a low suction or a high head: the caller says which way round
    verdict: verdictOf(differenceK, band),
    words: `${figures.difference(differenceK)} ${words}, commonly ${figures.difference(band.from)} to ${figures.difference(band.to)}`,
  };
}

const turned = { low: "high", usual: "usual", high: "low" } as const;

function lowSide(cel: number, scene: Scene, figures: Figures): Comparison | undefined {
  const air = airOf(scene);
  const application = applicationOf(scene);
  const [airCel, band, words] = isHeating(scene)
    ? [air.outdoorCel, bands.underOutdoor, "under the outdoor air"]
    : application === "chiller"
      ? [air.chilledCel, bands.underWater, "under the leaving water"]
      : air.boxCel !== undefined
        ? [
            boxBeside(scene, air.boxCel),
            reachIn.test(scene.facts.kind ?? "") ? bands.underReachIn : bands.underBox,
            "under the box air",
          ]
        : [air.returnCel, bands.underReturn, "under the return air"];
  if (airCel !== undefined) {
    const found = compare(airCel - cel, band, words, figures);
    return { ...found, verdict: turned[found.verdict] };
  }
  return isHeating(scene) ? undefined : withoutAir(cel, evaporatingBand[application], figures);
}

/** Minutes that a box and its suction may be apart to be held against each other. Common practice, no source. */
const besideMin = 30;

/** The box air that was read with the suction: one of another hour, or behind a repair, says nothing of it. */
function boxBeside(scene: Scene, lastCel: number): number | undefined {
  const suction = scene.readings.findLast(
    (one) => one.quantity === "pressure" && one.at === "suction",
  );
  if (suction === undefined) return lastCel;
  const box = scene.readings.findLast(
    (one) =>
      one.quantity === "temperature" &&
      one.at === "box" &&
      areTogether(scene, one, suction) &&
      minutesApart(scene, one, suction) <= besideMin,
  );
  return box === undefined ? undefined : numberOf(box);
}

function minutesApart(scene: Scene, one: Reading, other: Reading): number {
  const [a, b] = [one, other].map((each) => Date.parse(noteOf(scene, each)?.at ?? ""));
  return a === undefined || b === undefined || Number.isNaN(a - b) ? 0 : Math.abs(a - b) / 60_000;
}

function withoutAir(cel: number, band: Band | undefined, figures: Figures): Comparison | undefined {
  if (band === undefined) return undefined;
  return {
    verdict: verdictOf(cel, band),
    words: `commonly ${figures.temperature(band.from)} to ${figures.temperature(band.to)}`,
  };
}

function highSide(cel: number, scene: Scene, figures: Figures): Comparison | undefined {
  const air = airOf(scene);
  if (applicationOf(scene) === "chiller" && /water/.test(scene.facts.kind ?? "")) return undefined;
  if (isHeating(scene))
    return air.returnCel === undefined
      ? undefined
      : compare(cel - air.returnCel, bands.overReturn, "over the return air", figures);
  // tower water, whatever the weather is
  return air.outdoorCel === undefined || isWaterCooled(scene)
    ? withoutAir(cel, condensingBand[applicationOf(scene)], figures)
    : compare(cel - air.outdoorCel, bands.overOutdoor, "over the outdoor air", figures);
}

const reachIn = /reach-?in|prep table|undercounter|merchandis/i;
