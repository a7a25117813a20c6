import { lookUp } from "./dictionary.ts";
import { digitOf } from "./digit-pairs.ts";
import { named } from "./legs-by-number.ts";
import { isNumber, type Token, tokenKind } from "./token.ts";

/** Cases of one line-up at most; common practice, no source. */
const CASES = 60;

const joint = /^(?:,|;|and|&|\.)$/;

function numberOf(token: Token | undefined): number {
  if (token?.kind === tokenKind.number && /^\d{1,2}$/.test(token.text)) return token.value;
  return digitOf(token);
}

/** Where the numbers of the cases stand: each with a value behind it, the next one higher. */
function numbersFrom(tokens: readonly Token[], from: number): readonly number[] {
  const found: number[] = [];
  let at = from;
  while (at < tokens.length) {
    const last = found.at(-1);
    const next = last === undefined ? undefined : numberOf(tokens[last]) + 1;
    const number = numberOf(tokens[at]);
    if (!(number >= 1 && number <= CASES) || (next !== undefined && number !== next)) break;
    const is = /^(?:is|at|:|=)$/.test(tokens[at + 1]?.text ?? "") ? at + 2 : at + 1;
    const below = tokens[is]?.text === "-" ? is + 1 : is;
    if (!isNumber(tokens[below])) break;
    found.push(at);
    at = below + 1;
    if (tokens[at]?.word?.unit?.dimension === "temperature") at++;
    while (joint.test(tokens[at]?.text ?? "") || tokens[at]?.kind === tokenKind.line) at++;
  }
  return found;
}

/** "cases 4 38 5 40 6 37": each case's number and how cold it is; the word is said once for all of them. */
export function casesByNumber(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findIndex(({ text }) => text === "cases");
  const noun = tokens[at];
  const from = tokens[at + 1]?.text === ":" ? at + 2 : at + 1;
  const found = noun === undefined ? [] : numbersFrom(tokens, from);
  if (noun === undefined || found.length < 2) return tokens;
  const [, ...others] = found;
  const single: Token = { ...noun, text: "case", word: lookUp("case") };
  const colon = from > at + 1 ? tokens[at + 1] : undefined;
  return named(tokens, others, "case")
    .filter((token) => token !== colon)
    .map((token) => (token === noun ? single : token));
}
