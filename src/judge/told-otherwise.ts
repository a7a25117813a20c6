import type { Finding } from "../model.ts";
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

const saturations = { superheat: "dew point", subcooling: "bubble point" };

/** Said otherwise than worked out, and it matters: neither is judged before it is read again. */
export function questioned(
  { about }: Circuit,
  { name, saidK, kelvin }: { name: "superheat" | "subcooling"; saidK: number; kelvin: number },
  figures: Figures,
): Finding {
  const basis = saturations[name];
  return {
    about,
    check: name,
    level: "unknown",
    says: `${figures.difference(saidK)} of ${name} was said, but pressure and line told with it give ${figures.difference(kelvin)}: read both again at the same place, and mind which column and which refrigerant`,
    brief: `${name} said and read differ, read again`,
    values: { [`${name}_K`]: kelvin },
    basis,
    source: `${basis}: definition; allowance common practice, no source`,
    missing: "pressure and line read again together",
  };
}

/** The same where both mean one thing: named beside the verdict. */
export function otherWords(otherK: number | undefined, figures: Figures): string {
  return otherK === undefined
    ? ""
    : `. ${figures.difference(otherK)} was said with it: read it again`;
}
