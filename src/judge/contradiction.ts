import { airOf } from "./air.ts";
import { applicationOf, isHeating } from "./application.ts";
import { probesK } from "./bands.ts";
import type { Circuit } from "./circuit.ts";
import { type Figures, figuresOf } from "./figures.ts";
import { numberOf } from "./pick.ts";
import type { Scene } from "./scene.ts";

/** Cel of the warmest air that an evaporator meets where nobody measured it. Common practice, no source. */
const warmestCooledCel = 35;

/** A pair of readings that physics does not allow. */
export interface Contradiction {
  readonly side: "low" | "high";
  readonly says: string;
}

/**
 * Readings of a running circuit that contradict each other: liquid warmer than it condenses,
 * suction colder than it boils, discharge colder than it condenses, low side above high side, a coil on the wrong side of its air.
 */
export function contradictionsOf(circuit: Circuit, scene: Scene): Contradiction[] {
  const figures = figuresOf(scene);
  return [
    ...linesAgainstSaturation(circuit, figures),
    ...linesExchanged(circuit, figures),
    ...coilsAgainstAir(circuit, scene, figures),
    ...gaugeSetsApart(scene, figures),
  ];
}

/** Share by which two sets of gauges on the same ports may differ. Common practice, no source. */
const setsShare = 0.08;

const twoSets =
  /\b(?:second|2nd|other|another|different|spare|his|buddy'?s) (?:gauge )?(?:set|gauges?|manifold)\b/;

/** "First gauge set 128 and 390, second set 101 and 318": one of both is wrong, and nothing tells which. */
function gaugeSetsApart(scene: Scene, figures: Figures): Contradiction[] {
  if (!twoSets.test(scene.words)) return [];
  return (["suction", "discharge"] as const).flatMap((at) => {
    const [first, ...rest] = scene.readings
      .filter((one) => one.quantity === "pressure" && one.at === at)
      .flatMap((one) => numberOf(one) ?? []);
    const last = rest.at(-1);
    if (first === undefined || last === undefined) return [];
    if (Math.abs(first - last) <= setsShare * Math.max(first, last)) return [];
    const says = `Two sets of gauges read ${figures.gauge(first)} and ${figures.gauge(last)} at one port: one of them is off, so zero both at open air and read again`;
    return [{ side: at === "suction" ? ("low" as const) : ("high" as const), says }];
  });
}

/** K over boiling and under condensing in which the lines of a running circuit mostly lie. Common practice, no source. */
const usualK = { superheat: 20, subcooling: 15 } as const;

/** Each line's temperature fits the other line's pressure: the probes hang on each other's pipe. */
function linesExchanged(circuit: Circuit, figures: Figures): Contradiction[] {
  const { suctionCel, liquidCel, evaporatingCel, bubbleCel } = circuit;
  if (suctionCel === undefined || liquidCel === undefined) return [];
  if (evaporatingCel === undefined || bubbleCel === undefined) return [];
  const lies = (kelvin: number, most: number) => kelvin >= 0 && kelvin <= most;
  const fits =
    suctionCel > liquidCel + probesK &&
    lies(bubbleCel - suctionCel, usualK.subcooling) &&
    lies(liquidCel - evaporatingCel, usualK.superheat);
  if (!fits) return [];
  const says = `The suction line at ${figures.temperature(suctionCel)} and the liquid line at ${figures.temperature(liquidCel)} fit only the other way round: the probes look exchanged`;
  return [
    { side: "low", says },
    { side: "high", says },
  ];
}

function linesAgainstSaturation(circuit: Circuit, figures: Figures): Contradiction[] {
  const { lift, evaporatingCel, bubbleCel, dewCel } = circuit;
  const { suctionCel, liquidCel, dischargeCel } = circuit;
  const found: Contradiction[] = [];
  if (lift !== undefined && lift.suctionPa > lift.highPa * 1.02)
    found.push({
      side: "low",
      says: "The suction reads above the head: the hoses look swapped, or the reversing valve has changed over",
    });
  if (below(suctionCel, evaporatingCel))
    found.push({
      side: "low",
      says: `The suction line at ${figures.temperature(suctionCel ?? 0)} is colder than the refrigerant boils at that pressure, ${figures.temperature(evaporatingCel ?? 0)}`,
    });
  if (below(bubbleCel, liquidCel))
    found.push({
      side: "high",
      says: `The liquid line at ${figures.temperature(liquidCel ?? 0)} is warmer than the refrigerant condenses at that pressure, ${figures.temperature(bubbleCel ?? 0)}`,
    });
  if (below(dischargeCel, dewCel))
    found.push({
      side: "high",
      says: `The discharge line at ${figures.temperature(dischargeCel ?? 0)} is colder than the refrigerant condenses, ${figures.temperature(dewCel ?? 0)}`,
    });
  return found;
}

/** An air coil that condenses below its air, or boils above it, does not do so running. */
function coilsAgainstAir(circuit: Circuit, scene: Scene, figures: Figures): Contradiction[] {
  if (applicationOf(scene) === "chiller") return [];
  const found: Contradiction[] = [];
  const { outdoorCel, returnCel } = airOf(scene);
  const [condenserCel, evaporatorCel] = isHeating(scene)
    ? [returnCel, outdoorCel]
    : [outdoorCel, returnCel];
  if (below(circuit.dewCel, condenserCel))
    found.push({
      side: "high",
      says: `The head condenses at ${figures.temperature(circuit.dewCel ?? 0)}, colder than the air that cools it, ${figures.temperature(condenserCel ?? 0)}`,
    });
  const boils = `The suction boils at ${figures.temperature(circuit.evaporatingCel ?? 0)}, warmer than`;
  if (below(evaporatorCel, circuit.evaporatingCel))
    found.push({
      side: "low",
      says: `${boils} the air that it cools, ${figures.temperature(evaporatorCel ?? 0)}`,
    });
  else if (evaporatorCel === undefined && below(warmestCooledCel, circuit.evaporatingCel))
    found.push({ side: "low", says: `${boils} any air that a machine cools` });
  return found;
}

/** The first is lower than the second by more than both instruments can be off. */
function below(first: number | undefined, second: number | undefined): boolean {
  return first !== undefined && second !== undefined && first < second - probesK;
}
