import { digitPair } from "./digit-pairs.ts";
import {
  fractionTail,
  group,
  isSign,
  type NumberSaid,
  numberWord,
  spokenFraction,
  typedFraction,
  vulgar,
} from "./number-parts.ts";
import { plain } from "./plain.ts";
import { scan } from "./scan.ts";
import { type Token, tokenKind } from "./token.ts";
import { type Whole, whole } from "./whole-number.ts";

/** Digits behind "point": "six two", "oh five", "seventy one", "77". */
function decimals(
  tokens: readonly Token[],
  i: number,
): { digits: string; end: number } | undefined {
  const typed = tokens[i];
  if (typed?.kind === tokenKind.number && !typed.text.includes(".") && !typed.text.includes(","))
    return { digits: typed.text, end: i + 1 };
  let digits = "";
  let end = i;
  for (let next = group(tokens, end); next !== undefined; next = group(tokens, end)) {
    // "eleven point eight | three's twelve": the verb is of what follows, so the digit names it
    if (digits !== "" && next.kind === "ones" && tokens[end]?.apostrophe === true) break;
    // "point eight | two to three's point nine"
    if (digits !== "" && digitPair(tokens, end)) break;
    if (next.kind === "ones" || next.kind === "zero" || next.kind === "oh")
      digits += String(next.value);
    else if (digits === "" || /^0*$/.test(digits)) {
      return { digits: digits + String(next.value), end: next.end };
    } else break;
    end = next.end;
    if (tokens[end - 1]?.apostrophe === true) break;
  }
  return digits === "" ? undefined : { digits, end };
}

/** "one point two | one point three": the last digit begins the next number. */
function stepBack(
  tokens: readonly Token[],
  found: { digits: string; end: number },
  said: Whole,
  hasWhole: boolean,
) {
  if (!hasWhole || found.digits.length < 2) return found;
  // "zero point nine eight | point nine nine": who says the zero says no digit for it
  if (said.value === 0 && !found.digits.endsWith("0")) return found;
  if (numberWord(tokens[found.end])?.kind !== "point") return found;
  return { digits: found.digits.slice(0, -1), end: found.end - 1 };
}

function pointAt(tokens: readonly Token[], i: number): boolean {
  const token = tokens[i];
  if (numberWord(token)?.kind === "point") return true;
  return false;
}

/** "six point no wait five point nine": a number that was not said to its end goes with its "point". */
function brokenOff(tokens: readonly Token[], said: Whole): Whole {
  const next = tokens[said.end + 1]?.text ?? "";
  const mean = next === "i" && tokens[said.end + 2]?.text === "mean";
  return mean || /^(?:no|wait|sorry|scratch|correction|make|hold)$/.test(next)
    ? { ...said, end: said.end + 1 }
    : said;
}

function withDecimals(tokens: readonly Token[], said: Whole, hasWhole: boolean): Whole {
  if (!pointAt(tokens, said.end) || said.loose === true) return said;
  const found = decimals(tokens, said.end + 1);
  if (found === undefined) return brokenOff(tokens, said);
  const exact = stepBack(tokens, found, said, hasWhole);
  const value = Number(`${said.value}.${exact.digits}`);
  const scale = numberWord(tokens[exact.end]);
  if (scale?.kind === "thousand" || scale?.kind === "hundred")
    return { value: value * scale.value, end: exact.end + 1 };
  return { value, end: exact.end };
}

/** Digits with what may follow them: "7:35", "1.3e6", "2 1/4", "12 point 5", "2 million". */
function typedNumber(tokens: readonly Token[], i: number): NumberSaid | undefined {
  const first = tokens[i];
  if (first?.kind !== tokenKind.number) return undefined;
  const fraction = typedFraction(tokens, i);
  if (fraction !== undefined) return fraction;
  const colon = colonNumber(tokens, i);
  if (colon !== undefined) return colon;
  const said = whole(tokens, i) ?? { value: first.value, end: i + 1 };
  const plainWhole =
    !first.text.includes(".") && !/^0\d/.test(first.text) && first.text.length <= 3;
  const tail = plainWhole ? fractionTail(tokens, said.end) : undefined;
  if (tail !== undefined)
    return { value: said.value + tail[0], end: tail[1], spoken: false, fraction: true };
  const exact = withDecimals(tokens, said, true);
  return { value: exact.value, end: exact.end, spoken: false };
}

function colonNumber(tokens: readonly Token[], i: number): NumberSaid | undefined {
  const hours = tokens[i];
  const minutes = tokens[i + 2];
  if (!isSign(tokens[i + 1], ":") || tokens[i + 1]?.glued !== true) return undefined;
  if (hours === undefined || minutes?.kind !== tokenKind.number || !minutes.glued) return undefined;
  if (minutes.text.length !== 2 || hours.text.length > 2 || hours.text.includes("."))
    return undefined;
  return { value: hours.value * 100 + minutes.value, end: i + 3, spoken: false, colon: true };
}

/** Does a figure begin with this word: "twelve", "forty", "point"? No "hundred". */
export function beginsFigure(token: Token | undefined): boolean {
  const kind = numberWord(token)?.kind;
  return kind === "ones" || kind === "teen" || kind === "tens" || kind === "point";
}

/** "all three twelve point four", "other two thirty one": how many, and then what each of them reads. */
function countOfAll(tokens: readonly Token[], i: number): NumberSaid | undefined {
  const few = numberWord(tokens[i]);
  if (!/^(?:all|other)$/.test(tokens[i - 1]?.text ?? "") || few?.kind !== "ones") return undefined;
  if (few.value < 2 || few.value > 6 || !beginsFigure(tokens[i + 1])) return undefined;
  return { value: few.value, end: i + 1, spoken: true };
}

/** A number in words from token `i`. */
function spokenNumber(tokens: readonly Token[], i: number): NumberSaid | undefined {
  const count = countOfAll(tokens, i);
  if (count !== undefined) return count;
  const part = spokenFraction(tokens, i);
  if (part !== undefined && numberWord(tokens[i])?.kind !== "half")
    return { value: part[0], end: ofOne(tokens, part[1]), spoken: true, fraction: true };
  if (pointAt(tokens, i)) {
    const exact = withDecimals(tokens, { value: 0, end: i }, false);
    return exact.end > i ? { value: exact.value, end: exact.end, spoken: true } : undefined;
  }
  const said = whole(tokens, i);
  if (said === undefined) return halfAlone(tokens, i);
  if (numberWord(tokens[i])?.kind === "oh" && !pointAt(tokens, said.end)) return undefined;
  const tail = fractionTail(tokens, said.end);
  // in eighths a pipe is called, no gauge is read
  const eighths = tail !== undefined && (tail[0] * 8) % 2 === 1;
  if (tail !== undefined && said.loose !== true) {
    const sum = { value: said.value + tail[0], end: tail[1], spoken: true };
    return eighths ? { ...sum, fraction: true } : sum;
  }
  const exact = withDecimals(tokens, said, true);
  if (exact.loose === true)
    return { value: exact.value, end: exact.end, spoken: true, loose: true };
  if (exact === said && said.tail !== undefined)
    return { value: exact.value, end: exact.end, spoken: true, tail: said.tail };
  return { value: exact.value, end: exact.end, spoken: true };
}

/** "a half a pound", "three quarters of a pound": behind the fraction the article counts nothing. */
function ofOne(tokens: readonly Token[], end: number): number {
  const at = tokens[end]?.text === "of" ? end + 1 : end;
  const article = tokens[at]?.text === "a" || tokens[at]?.text === "an";
  return article && tokens[at + 1]?.word?.unit !== undefined ? at + 1 : end;
}

/** "quarter till nine", "half past seven": a part of the hour that is named behind it. */
export function partOfHour(tokens: readonly Token[], i: number): NumberSaid | undefined {
  const text = tokens[i]?.text;
  const joint = tokens[i + 1]?.text ?? "";
  const near = text === "quarter" ? /^(?:to|til|till|of|past|after|before)$/ : /^past$/;
  if ((text !== "quarter" && text !== "half") || !near.test(joint)) return undefined;
  const hour = numberWord(tokens[i + 2]);
  const spoken = hour?.kind === "ones" || hour?.kind === "teen" ? hour.value : 0;
  const value = tokens[i + 2]?.kind === tokenKind.number ? (tokens[i + 2]?.value ?? 0) : spoken;
  if (!Number.isInteger(value) || value < 1 || value > 12) return undefined;
  if (tokens[i + 3]?.word?.unit !== undefined && tokens[i + 3]?.word?.beside !== true)
    return undefined;
  return { value: text === "half" ? 0.5 : 0.25, end: i + 1, spoken: true, fraction: true };
}

/** "half", "a half", "half a": 0.5; "quarter hour": 0.25 */
function halfAlone(tokens: readonly Token[], i: number): NumberSaid | undefined {
  const at = tokens[i]?.text === "a" ? i + 1 : i;
  const hour = partOfHour(tokens, at);
  if (hour !== undefined) return hour;
  if (
    tokens[at]?.text === "quarter" &&
    /^(?:hour|mile|turn|pound)/.test(tokens[at + 1]?.text ?? "")
  )
    return { value: 0.25, end: at + 1, spoken: true };
  // "quarter horse", "third horse"
  const part = numberWord(tokens[at]);
  if (part?.kind === "part" && /^(?:horse|horsepower|hp)$/.test(tokens[at + 1]?.text ?? ""))
    return { value: 1 / part.value, end: at + 1, spoken: true, fraction: true };
  if (numberWord(tokens[i])?.kind === "half") {
    const article = tokens[i + 1]?.text === "a" || tokens[i + 1]?.text === "an" ? 1 : 0;
    return { value: 0.5, end: article > 0 ? i + 2 : ofOne(tokens, i + 1), spoken: true };
  }
  return undefined;
}

/** Is the dash at `i` a minus sign: glued to a number, and to nothing before it? */
function minusAt(tokens: readonly Token[], i: number): boolean {
  const dash = tokens[i];
  if (!isSign(dash, "-") || dash === undefined) return false;
  const next = tokens[i + 1];
  const digits =
    next?.kind === tokenKind.number ||
    (next?.kind === tokenKind.sign && vulgar[next.text] !== undefined);
  if (!digits || next?.glued !== true) return false;
  if (!dash.glued) return true;
  const before = tokens[i - 1];
  return (
    before?.kind === tokenKind.line ||
    (before?.kind === tokenKind.sign && ":=(/~<>@,;".includes(before.text))
  );
}

/** The number that begins at token `i`, if one does. */
export function numberAt(tokens: readonly Token[], i: number): NumberSaid | undefined {
  const token = tokens[i];
  if (token === undefined) return undefined;
  if (token.kind === tokenKind.number) return typedNumber(tokens, i);
  if (token.kind === tokenKind.sign) {
    const part = vulgar[token.text];
    if (part !== undefined) return { value: part, end: i + 1, spoken: false, fraction: true };
    if (
      token.text === "+" &&
      !token.glued &&
      tokens[i + 1]?.kind === tokenKind.number &&
      tokens[i + 1]?.glued === true
    )
      return numberAt(tokens, i + 1);
    return minusAt(tokens, i) ? negative(numberAt(tokens, i + 1)) : undefined;
  }
  const said = token.word?.number;
  if (said?.kind === "minus") return negative(numberAt(tokens, i + 1));
  if (said === undefined && token.text !== "a" && token.text !== "an") return undefined;
  return spokenNumber(tokens, i);
}

function negative(said: NumberSaid | undefined): NumberSaid | undefined {
  return said === undefined ? undefined : { ...said, value: said.value === 0 ? 0 : -said.value };
}

/** The value of a phrase that is a number and nothing else; undefined where it is not one. */
export function readNumber(phrase: string): number | undefined {
  const tokens = scan(plain(phrase.trim()));
  let start = 0;
  let sign = 1;
  if (isSign(tokens[0], "-") || isSign(tokens[0], "+")) {
    sign = isSign(tokens[0], "-") ? -1 : 1;
    start = 1;
  }
  const said = numberAt(tokens, start);
  if (said === undefined) return undefined;
  return said.end === tokens.length ? sign * said.value : scaled(tokens, said, sign);
}

/** "10k", "1.2M": a number and its multiplier. */
function scaled(tokens: readonly Token[], said: NumberSaid, sign: number): number | undefined {
  if (said.end !== tokens.length - 1) return undefined;
  const multiplier = { k: 1e3, m: 1e6, g: 1e9 }[tokens[said.end]?.text ?? ""];
  return multiplier === undefined ? undefined : sign * said.value * multiplier;
}
