import { isNumber, type Token } from "./token.ts";
import { commaAt } from "./unsaid-token.ts";

const verb = /^(?:is|was|reads|at)$/;

function figureBehind(tokens: readonly Token[], at: number): boolean {
  return isNumber(tokens[at + 1]) || (tokens[at + 1]?.text === "at" && isNumber(tokens[at + 2]));
}

/** "two is": a spoken digit before its own verb and a figure; 0 where none stands there. */
function nameAt(tokens: readonly Token[], i: number): number {
  const said = tokens[i]?.word?.number;
  if (said?.kind !== "ones" || tokens[i]?.apostrophe === true) return 0;
  if (!verb.test(tokens[i + 1]?.text ?? "") || !figureBehind(tokens, i + 1)) return 0;
  // "two at 7.7 three at 7.6" counts from its first word on; "fourteen two at noon" tells when
  const counts = tokens[0]?.word?.number?.kind === "ones" && tokens[1]?.text === "at";
  if (tokens[i + 1]?.text === "at" && !counts) return 0;
  return said.value;
}

/**
 * "on one is twenty four two is twenty six": the verb is the name's, so the digit before it ends no figure.
 * Where two and more are counted so, a comma parts each from the figure before it.
 */
export function namesWithVerb(tokens: readonly Token[]): readonly Token[] {
  const names = tokens.flatMap((_, i) => (nameAt(tokens, i) > 0 ? [i] : []));
  const rises = names.every(
    (at, nth) => nth === 0 || nameAt(tokens, at) > nameAt(tokens, names[nth - 1] ?? 0),
  );
  if (names.length < 2 || !rises) return tokens;
  return tokens.flatMap((token, i) => {
    const before = tokens[i - 1];
    if (!names.slice(1).includes(i) || before?.word?.number === undefined) return [token];
    return [commaAt(before.to), token];
  });
}
