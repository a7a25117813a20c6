import { ascii, classOf, DIGIT, LETTER } from "./characters.ts";
import { lookUp } from "./dictionary.ts";
import { digitsEnd } from "./digits.ts";

/** May these letters stand glued to a number as a unit, a label or a noun? */
function splits(piece: string, afterNumber: boolean, last: boolean): boolean {
  if (afterNumber && last && /^[ap]m$/.test(piece)) return true;
  const word = lookUp(piece);
  if (word === undefined) return false;
  if (afterNumber && word.unit !== undefined) return true;
  // "sh12sc9"
  const heat = word.label?.quantity === "superheat" || word.label?.quantity === "subcooling";
  if (afterNumber)
    return (
      (last || (heat && piece.length > 1)) &&
      (word.label !== undefined || /^(?:ish|st|nd|rd|th|x|am|pm|p|ga|awg|ph|pole|deg)$/.test(piece))
    );
  return (
    (piece.length > 1 && (word.label !== undefined || word.roles !== 0)) || word.noun !== undefined
  );
}

/** Where letters and digits meet in a glued run, or nothing where the run is one name ("8vx", "dr2290"). */
export function cutPoints(text: string, from: number, to: number): number[] | undefined {
  const cuts: number[] = [];
  let i = from;
  let afterNumber = false;
  while (i < to) {
    const digit = ascii[text.charCodeAt(i)] === DIGIT || text.charCodeAt(i) === 46;
    let end = i;
    if (digit) end = Math.max(digitsEnd(text, i), i + 1);
    else while (end < to && classOf(text, end) === LETTER) end++;
    if (!digit && !splits(text.slice(i, end), afterNumber, end === to)) return undefined;
    cuts.push(end);
    afterNumber = digit;
    i = end;
  }
  return cuts;
}
