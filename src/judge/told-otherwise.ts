import { kelvinPerFahrenheit } from "../physics/constants.ts";
import type { Circuit } from "./circuit.ts";
import type { Figures } from "./figures.ts";

/**
 * K by which a figure worked out on the spot may differ from the one that the same note's pressure
 * and line give: another place of the probe, a round chart. Common practice, no source.
 */
const allowedK = { superheat: 8 * kelvinPerFahrenheit, subcooling: 6 * kelvinPerFahrenheit };

/** The technician's own figure where it does not go with the pressure and line told beside it, K. */
export function toldOtherwise(
  circuit: Circuit,
  name: "superheat" | "subcooling",
  kelvin: number,
): number | undefined {
  const saidK = name === "superheat" ? circuit.besideSuperheatK : circuit.besideSubcoolingK;
  if (saidK === undefined || saidK === kelvin) return undefined;
  return Math.abs(saidK - kelvin) > allowedK[name] ? saidK : undefined;
}

/** What to say of both. */
export function askWhich(
  name: string,
  [saidK, kelvin]: readonly [number, number],
  figures: Figures,
) {
  return `${figures.difference(saidK)} of ${name} was said, but pressure and line told with it give ${figures.difference(kelvin)}: read both again at the same place, and mind which column and which refrigerant`;
}

/** The same where both mean one thing: named beside the verdict. */
export function otherWords(otherK: number | undefined, figures: Figures): string {
  return otherK === undefined
    ? ""
    : `. ${figures.difference(otherK)} was said with it: read it again`;
}
