import { type Token, tokenKind } from "./token.ts";
import { role } from "./word.ts";

/** How far away the next pair may stand. */
const reach = 14;

/** The digit of a leg or a terminal: 1 to 3, or 0; a phone hears "won to two". */
export function digitOf(token: Token | undefined): number {
  if (token?.text === "won") return 1;
  const value =
    token?.kind === tokenKind.number && token.text.length === 1
      ? token.value
      : token?.word?.number?.kind === "ones"
        ? token.word.number.value
        : 0;
  return value >= 1 && value <= 3 ? value : 0;
}

/** "one to two is", "two to three's", "1 to 3 .9": two of three, and what was read between them. */
function pairTo(tokens: readonly Token[], i: number): boolean {
  const [one, joint, two, next] = tokens.slice(i, i + 4);
  if (joint?.text !== "to" || one?.apostrophe === true) return false;
  const [first, second] = [digitOf(one), digitOf(two)];
  if (first === 0 || second === 0 || first === second || next === undefined) return false;
  const roles = next.word?.roles ?? 0;
  if (two?.apostrophe === true || (roles & (role.is | role.over | role.same)) !== 0) return true;
  return next.kind === tokenKind.number || next.word?.number !== undefined;
}

/** Does one of several such pairs begin here? One alone may be a range. */
export function digitPair(tokens: readonly Token[], i: number): boolean {
  if (!pairTo(tokens, i)) return false;
  if (tokens[i]?.text === "won") return true;
  for (let at = Math.max(0, i - reach); at < i + reach && at < tokens.length; at++)
    if (at !== i && pairTo(tokens, at)) return true;
  return false;
}

/** "four fifty eight" behind a pair: hundreds said in pairs, no digit of the pair itself. */
function saysHundreds(tokens: readonly Token[], at: number): boolean {
  const [before, digit, rest] = [tokens[at - 1], tokens[at], tokens[at + 1]];
  if (digit?.word?.number?.kind !== "ones" || before?.text === "to") return false;
  return before?.text !== "point" && /^(?:tens|teen|oh)$/.test(rest?.word?.number?.kind ?? "");
}

/** Are volts what is read between such pairs? */
export function pairsAreVolts(tokens: readonly Token[]): boolean {
  // "1-2 .118 … megs 600 plus": what is beside megohms is no voltage
  const ohms = (at: number): boolean =>
    [at - 1, at + 1].some((next) => tokens[next]?.word?.unit?.dimension === "resistance");
  const inOhms = tokens.some(({ word }) => word?.unit?.dimension === "resistance");
  return tokens.some(
    (token, at) =>
      (!inOhms && saysHundreds(tokens, at)) ||
      (token.kind === tokenKind.number && token.value >= 90 && !ohms(at)) ||
      token.word?.number?.kind === "hundred" ||
      token.word?.unit?.dimension === "voltage",
  );
}

const digit: ReadonlySet<string | undefined> = new Set(["ones", "zero", "oh"]);

/** "comp two | point six eight point six nine point six eight": rows of as many digits, each behind its own point. */
export function rowOfPoints(tokens: readonly Token[], from: number): boolean {
  const kindAt = (i: number): string | undefined => tokens[i]?.word?.number?.kind;
  const lengths: number[] = [];
  let parted = 0;
  let at = from;
  while (kindAt(at) === "point") {
    let end = at + 1;
    while (digit.has(kindAt(end))) end++;
    lengths.push(end - at - 1);
    at = end;
    if (/^(?:,|and)$/.test(tokens[at]?.text ?? "")) parted++;
    while (/^(?:,|and)$/.test(tokens[at]?.text ?? "")) at++;
  }
  const [first = 0] = lengths;
  // "comp one point five, point five and point five"
  if (lengths.length === 3 && parted === 2) return true;
  return first > 1 && lengths.length > 1 && lengths.every((length) => length === first);
}
