import type { Circuit } from "./circuit.ts";
import type { Figures } from "./figures.ts";

/** K past saturation that probes and gauges may be off together. Common practice, no source. */
const toleranceK = 2.8;

/** A pair of readings that physics does not allow. */
export interface Contradiction {
  readonly side: "low" | "high";
  readonly says: string;
}

/**
 * Readings of a running circuit that contradict each other: liquid warmer than it condenses,
 * suction colder than it boils, discharge colder than it condenses, low side above high side.
 */
export function contradictionsOf(circuit: Circuit, figures: Figures): Contradiction[] {
  const { suctionPa, highPa, evaporatingCel, bubbleCel, dewCel } = circuit;
  const { suctionCel, liquidCel, dischargeCel } = circuit;
  const found: Contradiction[] = [];
  if (suctionPa !== undefined && highPa !== undefined && suctionPa > highPa * 1.02)
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

/** The first is lower than the second by more than both instruments can be off. */
function below(first: number | undefined, second: number | undefined): boolean {
  return first !== undefined && second !== undefined && first < second - toleranceK;
}
