import type { Finding } from "../../model.ts";
import { saturationCel } from "../../physics/saturation-temperature.ts";
import { bands } from "../bands.ts";
import type { Circuit } from "../circuit.ts";
import type { Figures } from "../figures.ts";

/** K; glide below it can't be told from a probe. Common practice, no source. */
const telling = 1.5;
/** K within which the technician's figure is the one of a column. */
const same = 1.2;

/**
 * A superheat or subcooling that someone worked out of the wrong column of a blend's table: it
 * fits the wrong line and not the right one.
 */
export function wrongLine(circuit: Circuit, figures: Figures): Finding[] {
  const { refrigerant, suctionPa, highPa, suctionCel, liquidCel } = circuit;
  if (refrigerant === undefined) return [];
  const found: Finding[] = [];
  const { evaporatingCel, bubbleCel, dewCel } = circuit;
  const saidSuperheatK = circuit.saidSuperheatK ?? circuit.toldSuperheatK;
  const saidSubcoolingK = circuit.saidSubcoolingK ?? circuit.toldSubcoolingK;
  const suctionBubbleCel =
    suctionPa === undefined ? undefined : saturationCel(refrigerant, "bubble", suctionPa);
  if (suctionCel !== undefined && evaporatingCel !== undefined && suctionBubbleCel !== undefined)
    if (isWrong(saidSuperheatK, suctionCel - evaporatingCel, suctionCel - suctionBubbleCel))
      found.push(
        finding(
          circuit,
          "superheat",
          "dew",
          [saidSuperheatK ?? 0, suctionCel - evaporatingCel],
          figures,
        ),
      );
  if (
    liquidCel !== undefined &&
    bubbleCel !== undefined &&
    dewCel !== undefined &&
    highPa !== undefined
  )
    if (isWrong(saidSubcoolingK, bubbleCel - liquidCel, dewCel - liquidCel))
      found.push(
        finding(
          circuit,
          "subcooling",
          "bubble",
          [saidSubcoolingK ?? 0, bubbleCel - liquidCel],
          figures,
        ),
      );
  return found;
}

function isWrong(said: number | undefined, rightK: number, wrongK: number): boolean {
  if (said === undefined || Math.abs(wrongK - rightK) < telling) return false;
  return Math.abs(said - wrongK) < same && Math.abs(said - rightK) > same;
}

/** The figure by the right column finds nothing amiss: only then does the slip explain the call. */
function isUsual(name: "superheat" | "subcooling", rightK: number): boolean {
  const { from, to } = name === "superheat" ? bands.superheat.expansion_valve : bands.subcooling;
  return rightK >= from && rightK <= to;
}

function finding(
  circuit: Circuit,
  name: "superheat" | "subcooling",
  line: "dew" | "bubble",
  [saidK, rightK]: readonly [number, number],
  figures: Figures,
): Finding {
  const other = line === "dew" ? "bubble" : "dew";
  return {
    about: circuit.about,
    check: "saturation",
    level: "watch",
    says: `The ${name} of ${figures.difference(saidK)} is what the ${other} column of ${circuit.refrigerant} gives; ${name} goes by the ${line} column and is ${figures.difference(rightK)}`,
    brief: `${other} column used, ${name} is ${figures.difference(rightK)}`,
    values: name === "superheat" ? { superheat_K: rightK } : { subcooling_K: rightK },
    basis: `${line} point`,
    source:
      "definition; ASHRAE Handbook Refrigeration uses dew for superheat, bubble for subcooling",
    signs: isUsual(name, rightK) ? ["column:wrong"] : [],
  };
}
