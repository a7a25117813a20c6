import { named } from "./legs-by-number.ts";
import { isNumber, type Token, tokenKind } from "./token.ts";
import { role } from "./word.ts";

const electric = /^(?:a|amps?|amperes?|v|volts?|meg|megs|megohms?|megged|windings?|ohms?)$/;
const joint = /^(?:is|at|-|=|:)$/;
/** What a row of phases is led by; behind another word a letter is a machine's own, or a circuit's. */
const heads =
  /^(?:amps?|amperes?|volts?|megs?|megged|meg|windings?|ohms?|running|legs|phases|draws|drawing|pulls|pulling|reads|reading|readings|current|now|and|ground|gnd|grd|earth|case|frame|chassis)$/;

function isFigure(token: Token | undefined): boolean {
  if (token === undefined) return false;
  if (isNumber(token) || token.text === "dead") return true;
  return ((token.word?.roles ?? 0) & role.over) !== 0;
}

/** Where a letter with its figure stands: "a 12.1", "b: 13", "c is 0"; index of the figure, or -1. */
function figureAt(tokens: readonly Token[], i: number): number {
  const [before, token, next] = [tokens[i - 1], tokens[i], tokens[i + 1]];
  if (token?.kind !== tokenKind.word || !/^[abc]$/.test(token.text)) return -1;
  if (token.glued && isNumber(before)) return -1;
  if (/^(?:[-/]|to)$/.test(before?.text ?? "")) return -1;
  if (
    before?.kind === tokenKind.word &&
    !isNumber(before) &&
    before.word?.unit === undefined &&
    !heads.test(before.text)
  )
    return -1;
  const at = joint.test(next?.text ?? "") ? i + 2 : i + 1;
  return isFigure(tokens[at]) ? at : -1;
}

/** Is electricity measured: by a word, or by the unit glued to a figure? */
function isElectric(tokens: readonly Token[]): boolean {
  return tokens.some(
    ({ text, glued }, i) =>
      electric.test(text) && (text.length > 1 || (glued && isNumber(tokens[i - 1]))),
  );
}

/** "amps A 23.6 B 0 C 23.1", "comp amps A is 9, C is 9.3": letters in their order, each with a figure, are phases; no degrees. */
export function phaseLetters(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(({ text }) => text === "b" || text === "c") || !isElectric(tokens))
    return tokens;
  const row: number[] = [];
  let reach = -1;
  for (let i = 0; i < tokens.length; i++) {
    const figure = figureAt(tokens, i);
    if (figure < 0) continue;
    const last = tokens[row[row.length - 1] ?? -1]?.text ?? "";
    const near = row.length === 0 || i - reach <= 3;
    if (!near || (tokens[i]?.text ?? "") <= last) {
      if (row.length > 1) break;
      row.length = 0;
    }
    row.push(i);
    reach = figure;
  }
  return row.length > 1 ? named(tokens, row, "phase") : tokens;
}
