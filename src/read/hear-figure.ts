import { type Token, tokenKind } from "./token.ts";

/** What the phone writes for a digit, and the digit. */
const digits: ReadonlyMap<string, string> = new Map([
  ["for", "four"],
  ["fore", "four"],
  ["to", "two"],
  ["too", "two"],
  ["won", "one"],
  ["ate", "eight"],
]);
/** Words that mean nothing else beside a figure. */
const sure = /^(?:ate|won)$/;
/** Words behind which stands a figure, no second preposition. */
const leads =
  /^(?:at|around|about|roughly|reads|is|its|was|amps|pulls|pulling|draws|drawing|reading)$/;

function isNumber(token: Token | undefined): boolean {
  return token?.kind === tokenKind.number || token?.word?.number !== undefined;
}

/** A unit by its name, no letter and no time: "for a while", "for hours". */
function isUnit(token: Token | undefined): boolean {
  const unit = token?.word?.unit;
  return unit !== undefined && unit.dimension !== "time" && (token?.text.length ?? 0) > 1;
}

function ends(token: Token | undefined): boolean {
  return token === undefined || /^(?:and|,|\.)$/.test(token.text);
}

/** "fifteen point for", "T2 point for ate ohms": behind "point" of a number only a digit stands. */
function behindPoint(tokens: readonly Token[], i: number): boolean {
  if (tokens[i - 1]?.word?.number?.kind !== "point" || tokens[i - 1]?.text === "dot") return false;
  const next = tokens[i + 1];
  const more = digits.has(next?.text ?? "") || next?.word?.number?.kind === "ones";
  return isNumber(tokens[i - 2]) || isUnit(next) || (more && isUnit(tokens[i + 2]));
}

/** "compressor one ate point five amps", "at for point two amps" */
function beforePoint(tokens: readonly Token[], i: number): boolean {
  const text = tokens[i]?.text ?? "";
  if (tokens[i + 1]?.text !== "point") return false;
  if (!isNumber(tokens[i + 2]) && !digits.has(tokens[i + 2]?.text ?? "")) return false;
  if (sure.test(text) || text === "too" || leads.test(tokens[i - 1]?.text ?? "")) return true;
  return afterSuch(tokens, i, digits.get(text));
}

/** "for point eight for point nine and for point seven": the first was heard, so were the others. */
function afterSuch(tokens: readonly Token[], i: number, digit: string | undefined): boolean {
  const before = tokens[i - 1]?.text === "and" ? i - 1 : i;
  if (!isNumber(tokens[before - 1])) return false;
  for (let at = before - 2; at > before - 5; at--)
    if (tokens[at]?.text === "point") return tokens[at - 1]?.text === digit;
  return false;
}

/** "thirty ate", "two hundred and ate", "twenty for volts", "thirty for and …" */
function behindTens(tokens: readonly Token[], i: number): boolean {
  const before = tokens[i - 1];
  const joined = before?.text === "and" && tokens[i - 2]?.word?.number?.kind === "hundred";
  const kind = joined ? "hundred" : before?.word?.number?.kind;
  if (before?.apostrophe === true || (kind !== "tens" && kind !== "hundred")) return false;
  if (sure.test(tokens[i]?.text ?? "")) return true;
  const text = tokens[i]?.text ?? "";
  if (kind !== "tens") return false;
  return isUnit(tokens[i + 1]) || (/^fore?$/.test(text) && ends(tokens[i + 1]));
}

/** "ate pounds for ounces": before a unit, or between the unit of a number and the next. */
function beforeUnit(tokens: readonly Token[], i: number): boolean {
  const [unit, number] = [tokens[i - 1], tokens[i - 2]];
  if (!isUnit(tokens[i + 1])) return false;
  if (sure.test(tokens[i]?.text ?? "")) return true;
  return /^(?:lbs?|pounds?)$/.test(unit?.text ?? "") && isNumber(number);
}

/** "at for fifty microns", "at too ten": a figure of hundreds said in pairs. */
function beforeTens(tokens: readonly Token[], i: number): boolean {
  const kind = tokens[i + 1]?.word?.number?.kind;
  return (kind === "tens" || kind === "teen") && tokens[i - 1]?.text === "at";
}

/** The digit that a phone wrote as another word, where what stands about it leaves nothing else. */
export function figureHeard(tokens: readonly Token[], i: number): string | undefined {
  const digit = digits.get(tokens[i]?.text ?? "");
  if (digit === undefined || tokens[i]?.apostrophe === true) return undefined;
  const heard =
    behindPoint(tokens, i) ||
    beforePoint(tokens, i) ||
    behindTens(tokens, i) ||
    beforeUnit(tokens, i) ||
    beforeTens(tokens, i);
  return heard ? digit : undefined;
}
