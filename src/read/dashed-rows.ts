import { isNumber, type Token, tokenKind } from "./token.ts";

/** How far the figures of a row of like things lie apart at most, and from where on three are no date. Our choice, no source. */
const apart = 1.6;
const noDate = 90;
const units = /^(?:amps?|a|volts?|v|vac|psi|psig|megs?|meg|ohms?|hz|microns?|legs?)$/;

const isDash = (token: Token | undefined): boolean =>
  token?.kind === tokenKind.sign && /^[-–—]$/.test(token.text);

/** The figures of "208-211-206" or "14.1 - 14.3 - 14.2" from token `i`, with dashes alone between them. */
function rowAt(tokens: readonly Token[], i: number): readonly Token[] {
  const row: Token[] = [];
  const spaced = tokens[i + 1]?.glued === false;
  for (let at = i; ; at += 2) {
    const token = tokens[at];
    if (token?.kind !== tokenKind.number) return row;
    if (at > i && token.glued === spaced) return row;
    row.push(token);
    if (!isDash(tokens[at + 1]) || tokens[at + 1]?.glued === spaced) return row;
  }
}

/** Three and more near each other are read one by one; a range has two ends, a date and a part's number lie apart. */
function isRow(row: readonly Token[], tokens: readonly Token[], from: number): boolean {
  if (row.length < 3) return false;
  const values = row.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  if (!(least > 0) || most > least * apart || row.some(({ text }) => /^0\d/.test(text)))
    return false;
  const near = [...tokens.slice(Math.max(0, from - 2), from), tokens[from + row.length * 2 - 1]];
  const named = near.some((token) => units.test(token?.text ?? ""));
  return named || least >= noDate || row.some(({ text }) => text.includes("."));
}

/** "L1 14.1 - L2 14.3": does the dash part a figure from the next leg and its own? */
function partsLegs(tokens: readonly Token[], i: number): boolean {
  const [before, dash, leg, number, value] = tokens.slice(i - 1, i + 4);
  if (!isDash(dash) || dash?.glued === true || leg?.glued === true) return false;
  if (before?.kind !== tokenKind.number && before?.word?.unit === undefined) return false;
  const letter = /^[ltuvwabc]$/.test(leg?.text ?? "");
  if (/^[lt]$/.test(leg?.text ?? "")) return number?.glued === true && isNumber(value);
  return letter && isNumber(number) && number?.glued === false;
}

/** Dashes that part the figures of a row stand as commas: they are no range and no minus. */
export function dashedRows(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(isDash)) return tokens;
  const commas = new Set<number>();
  tokens.forEach((token, i) => {
    if (partsLegs(tokens, i)) commas.add(i);
    if (token.kind !== tokenKind.number || isDash(tokens[i - 1])) return;
    const row = rowAt(tokens, i);
    if (isRow(row, tokens, i)) for (let at = 1; at < row.length; at++) commas.add(i + at * 2 - 1);
  });
  return commas.size === 0
    ? tokens
    : tokens.map((token, i) => (commas.has(i) ? { ...token, text: "," } : token));
}
