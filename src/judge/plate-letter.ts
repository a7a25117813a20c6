import type { EquipmentFacts } from "../model.ts";
import { kvaPerHpOfLetter, lockedRotorA } from "../physics/locked-rotor.ts";

const horses = /((?:\d+[ -])?\d+\/\d+|\d+(?:\.\d+)?)[ -]?(?:hp|horse(?:power|s)?)\b/g;
const letter = /\b(?:kva |lr |nema )?code(?: letter)?(?: is|:)? ?"?([a-hj-npr-v])\b(?!\d|-\d|\/)/;
const otherMotor = /\b(?:fan|blower|pump|belt|tower)\b[^.;\n]*$/;

/**
 * Locked-rotor current, A at the plate's volts, of the horsepower and code letter that the notes tell
 * of the compressor's plate: the middle of the letter's band. Source: NFPA 70, 430.7(B).
 */
export function lockedByLetterA(
  { phases, supply_V: volts }: EquipmentFacts,
  words: string,
): number | undefined {
  const said = letter.exec(words);
  const band = kvaPerHpOfLetter(said?.[1] ?? "");
  const horsepower = horsesOf(words);
  if (said === null || band === undefined || horsepower === undefined) return;
  if (phases === undefined || volts === undefined) return;
  if (otherMotor.test(words.slice(0, said.index))) return;
  const kva = band.to === undefined ? band.from : (band.from + band.to) / 2;
  return lockedRotorA(kva, { phases, horsepower, volts });
}

/** The one motor's horsepower; where two differ, nobody knows whose the letter is. */
function horsesOf(words: string): number | undefined {
  const all = [...words.matchAll(horses)].map(([, figure = ""]) => {
    // "7 1/2 hp"
    const [, ones = "0", over, under] = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(figure) ?? [];
    return over === undefined ? Number(figure) : Number(ones) + Number(over) / Number(under);
  });
  const [first] = all;
  return all.every((one) => one === first) ? first : undefined;
}
