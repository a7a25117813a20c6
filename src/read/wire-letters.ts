import { isNumber, type Token, tokenKind } from "./token.ts";

const colours: ReadonlyMap<string, string> = new Map([
  ["r", "red"],
  ["w", "white"],
  ["b", "blue"],
]);

/** "w-b .62": index of the first letter of a pair of wires with a figure behind it. */
function pairAt(tokens: readonly Token[], i: number): boolean {
  const [one, joint, other, figure] = tokens.slice(i, i + 4);
  if (!colours.has(one?.text ?? "") || !colours.has(other?.text ?? "")) return false;
  return one?.text !== other?.text && /^(?:-|to|\/)$/.test(joint?.text ?? "") && isNumber(figure);
}

/** "r-w .61 w-b .62 r-b .61": a motor's wires by the first letters of their colours, no wet bulb and no thermostat. */
export function wireLetters(tokens: readonly Token[]): readonly Token[] {
  const dashed = tokens.some(({ text }) => /^(?:w|b)$/.test(text));
  if (!dashed) return tokens;
  const pairs = tokens.flatMap((_, i) => (pairAt(tokens, i) ? [i] : []));
  const letters = new Set(pairs.flatMap((i) => [tokens[i]?.text, tokens[i + 2]?.text]));
  if (pairs.length < 2 || letters.size < 3) return tokens;
  const named = new Set(pairs.flatMap((i) => [i, i + 2]));
  return tokens.map((token, i) => {
    const text = named.has(i) ? colours.get(token.text) : undefined;
    return text === undefined ? token : { ...token, text, word: undefined, kind: tokenKind.word };
  });
}
