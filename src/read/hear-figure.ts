import { isNumber, type Token } from "./token.ts";

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
  const digit = tokens[i - 1]?.word?.number?.kind === "ones" && sure.test(tokens[i]?.text ?? "");
  if (digit && tokens[i - 2]?.text === "point") return true;
  if (tokens[i - 1]?.word?.number?.kind !== "point" || tokens[i - 1]?.text === "dot") return false;
  const next = tokens[i + 1];
  const more = digits.has(next?.text ?? "") || next?.word?.number?.kind === "ones";
  if (isNumber(tokens[i - 2]) || isUnit(next) || (more && isUnit(tokens[i + 2]))) return true;
  const before = tokens[i - 2]?.text ?? "";
  return (
    more &&
    (sure.test(next?.text ?? "") || /^(?:plus|minus|positive|negative|is|at|reads)$/.test(before))
  );
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
  if (kind === "oh" && sure.test(tokens[i]?.text ?? "")) return true;
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
  // "I mean for megs"
  if (/^(?:mean|meant|make)$/.test(unit?.text ?? "")) return tokens[i]?.text !== "to";
  const ounces =
    /^(?:lbs?|pounds?)$/.test(tokens[i + 1]?.text ?? "") &&
    /^(?:oz|ounces?)$/.test(tokens[i + 3]?.text ?? "");
  return ounces || (/^(?:lbs?|pounds?)$/.test(unit?.text ?? "") && isNumber(number));
}

const people = /^(?:i|we|he|she|they|you|guys?|who)$/;

/** How many tokens the pair takes that follows: "ten", "fifty five", "oh nine". */
function pairBehind(tokens: readonly Token[], i: number): number {
  const [first, second] = [tokens[i + 1], tokens[i + 2]];
  const kind = first?.word?.number?.kind;
  const ones = second?.word?.number?.kind === "ones" || sure.test(second?.text ?? "");
  if (kind === "oh") return ones ? 2 : 0;
  if (kind !== "tens" && kind !== "teen") return 0;
  return kind === "tens" && ones ? 2 : 1;
}

/** Where the point begins that ends at a token: "V", "L2"; -1 where none does. */
function pointFrom(tokens: readonly Token[], end: number): number {
  const [letter, last] = [tokens[end - 1]?.text ?? "", tokens[end]?.text ?? ""];
  if (/^[123]$/.test(last)) return /^[lt]$/.test(letter) ? end - 1 : -1;
  return /^(?:[a-cr-w]|you)$/.test(last) ? end : -1;
}

/** "U to V to twelve V to W to ten": behind a pair of points no second way leads to a number. */
function behindPair(tokens: readonly Token[], i: number): boolean {
  const from = pointFrom(tokens, i - 1);
  if (from <= 0) return false;
  // "L1 L2 to oh eight"
  const joint = tokens[from - 1]?.text === "to" ? from - 2 : from - 1;
  return pointFrom(tokens, joint) >= 0;
}

/** "at for fifty microns", "won twenty", "to oh nine", "fifty hertz to ten volts": hundreds said in pairs. */
function beforeTens(tokens: readonly Token[], i: number): boolean {
  const taken = pairBehind(tokens, i);
  const [before, behind] = [tokens[i - 1], tokens[i + taken + 1]];
  if (taken === 0) return false;
  if (before?.text === "at" || behindPair(tokens, i)) return true;
  // "still to fifty": nothing is still on its way to a figure
  if (before?.text === "still" && /^too?$/.test(tokens[i]?.text ?? "")) return true;
  if (sure.test(tokens[i]?.text ?? "")) return !people.test(before?.text ?? "");
  if (tokens[i + 1]?.word?.number?.kind === "oh") return !isNumber(before) && !isUnit(before);
  const dimension = behind?.word?.unit?.dimension;
  if (isUnit(before) && isNumber(tokens[i - 2]) && isUnit(behind))
    return before?.word?.unit?.dimension !== dimension;
  const told = /^(?:its|now|reads|reading)$/.test(before?.text ?? "");
  return told && /^fore?$/.test(tokens[i]?.text ?? "") && (isUnit(behind) || ends(behind));
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
