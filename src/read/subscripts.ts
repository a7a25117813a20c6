import { lookUp } from "./dictionary.ts";
import { isNumber, type Token } from "./token.ts";

/** Evaporating and condensing, as they stand in European data sheets: p0, t0, pc, tc. Common practice, no source. */
const meant: ReadonlyMap<string, string> = new Map([
  ["po", "lp"],
  ["p0", "lp"],
  ["to", "t0"],
  ["pc", "hp"],
]);

function figureBehind(tokens: readonly Token[], i: number): boolean {
  const sign = /^[-+=:]$/.test(tokens[i + 1]?.text ?? "") ? 2 : 1;
  return isNumber(tokens[i + sign]);
}

/** "Po 6.9 bar Pc 24.8 bar to 3 tc 41": where two of the four stand with their figures, "to" is one of them. */
export function withSubscripts(tokens: readonly Token[]): readonly Token[] {
  const sure = tokens.filter(
    ({ text }, i) => /^(?:po|p0|pc|tc)$/.test(text) && figureBehind(tokens, i),
  );
  if (new Set(sure.map(({ text }) => text)).size < 2) return tokens;
  return tokens.map((token, i) => {
    const text = meant.get(token.text);
    if (text === undefined || !figureBehind(tokens, i)) return token;
    return { ...token, text, word: lookUp(text) };
  });
}
