import { type Token, tokenKind } from "./token.ts";
import type { Word } from "./word.ts";

/** The longest known phrase at a token. */
export interface Phrase {
  readonly word: Word;
  readonly end: number;
}

function means(word: Word): boolean {
  return (
    word.roles !== 0 ||
    word.label !== undefined ||
    word.unit !== undefined ||
    word.noun !== undefined ||
    word.point !== undefined ||
    word.number !== undefined
  );
}

/** The signs of the longest phrase of signs at a token, and where it ends; it takes no words away. */
export function signsAt(
  tokens: readonly Token[],
  i: number,
): { signs: readonly number[]; end: number } | undefined {
  let word = tokens[i]?.word;
  let best: { signs: readonly number[]; end: number } | undefined;
  if (word?.signs !== undefined) best = { signs: word.signs, end: i + 1 };
  let at = i + 1;
  while (word?.next !== undefined) {
    at = skipJoint(tokens, at);
    const token = tokens[at];
    if (token === undefined) break;
    word = word.next.get(token.text);
    if (word === undefined) break;
    at++;
    if (word.signs !== undefined)
      best = { signs: best === undefined ? word.signs : [...word.signs, ...best.signs], end: at };
  }
  return best;
}

/** Words that are written short with a full stop within a phrase: "12 in. of mercury". */
const shortened: ReadonlySet<string> = new Set([
  "in",
  "deg",
  "sq",
  "cu",
  "ft",
  "temp",
  "press",
  "evap",
  "cond",
  "disch",
  "suct",
]);

/** A dash, stroke or dot glued between two words does not part a phrase: "set-point", "p.s.i". */
function skipJoint(tokens: readonly Token[], i: number): number {
  const token = tokens[i];
  if (token?.kind !== tokenKind.sign || !token.glued) return i;
  if (token.text !== "-" && token.text !== "/" && token.text !== ".") return i;
  const next = tokens[i + 1];
  if (
    token.text === "." &&
    next?.kind === tokenKind.word &&
    shortened.has(tokens[i - 1]?.text ?? "")
  )
    return i + 1;
  return next?.glued === true && next.kind === tokenKind.word ? i + 1 : i;
}

/** The phrase looked up last: the same place is asked about several times in a row. */
const last: { tokens: readonly Token[] | undefined; i: number; phrase: Phrase | undefined } = {
  tokens: undefined,
  i: -1,
  phrase: undefined,
};

/** The longest phrase at a token that means something here. */
export function phraseAt(tokens: readonly Token[], i: number): Phrase | undefined {
  if (last.tokens === tokens && last.i === i) return last.phrase;
  const phrase = longest(tokens, i);
  last.tokens = tokens;
  last.i = i;
  last.phrase = phrase;
  return phrase;
}

/** "all six | hundred": a phrase may not end within a number. */
function cutsNumber(tokens: readonly Token[], end: number): boolean {
  const last = tokens[end - 1];
  // "CO two's eight point nine percent": behind its verb the next number begins
  if (last?.word?.number?.kind === "minus" || last?.apostrophe === true) return false;
  if (last?.word?.number === undefined && last?.kind !== tokenKind.number) return false;
  const next = tokens[end]?.word?.number?.kind;
  return next !== undefined && next !== "minus" && last?.word?.number?.kind !== "point";
}

/** "should be | at least 24": the bound's word is not the tail of what stands before it. */
function cutsBound(tokens: readonly Token[], end: number): boolean {
  return (
    tokens[end - 1]?.text === "at" && /^(?:least|most|minimum|max)$/.test(tokens[end]?.text ?? "")
  );
}

/** "P-N" are the rails of a bus; "p/n" and "p n" a part's number. */
function isPartNumber(tokens: readonly Token[], i: number, end: number): boolean {
  if (tokens[i]?.text !== "p" || tokens[end - 1]?.text !== "n") return false;
  return !/^(?:-|to)$/.test(tokens[i + 1]?.text ?? "");
}

function longest(tokens: readonly Token[], i: number): Phrase | undefined {
  let word = tokens[i]?.word;
  if (word === undefined) return undefined;
  let best: Phrase | undefined = means(word) ? { word, end: i + 1 } : undefined;
  let at = i + 1;
  while (word.next !== undefined) {
    at = skipJoint(tokens, at);
    const token = tokens[at];
    if (token === undefined) break;
    const longer: Word | undefined = word.next.get(token.text);
    if (longer === undefined) break;
    word = longer;
    at++;
    const cut = cutsNumber(tokens, at) || cutsBound(tokens, at) || isPartNumber(tokens, i, at);
    if (means(word) && !cut) best = { word, end: at };
  }
  return best;
}
