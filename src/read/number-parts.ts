import { digitPair } from "./digit-pairs.ts";
import { type Token, tokenKind } from "./token.ts";
import type { NumberWord } from "./word.ts";

/** A number in a row of tokens, however it was said. */
export interface NumberSaid {
  readonly value: number;
  /** index behind its last token */
  readonly end: number;
  /** said in words, not typed in digits */
  readonly spoken: boolean;
  /** "seven four", "twenty two nine": it may be 7.4 or 74, 22.9 or 229 */
  readonly loose?: true;
  /** "1:31": hours and minutes unless a unit says otherwise */
  readonly colon?: true;
  /** "3/8", "1-1/8", "3/4": sizes are said so */
  readonly fraction?: true;
  /** digits of the value's last group said as "forty four": may belong to the next number */
  readonly tail?: number;
}

export const vulgar: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅕": 1 / 5,
  "⅖": 2 / 5,
  "⅗": 3 / 5,
  "⅘": 4 / 5,
  "⅙": 1 / 6,
  "⅚": 5 / 6,
  "⅐": 1 / 7,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
  "⅑": 1 / 9,
  "⅒": 1 / 10,
};
const denominators: readonly number[] = [2, 3, 4, 5, 6, 8, 10, 16, 32, 64];

export function numberWord(token: Token | undefined): NumberWord | undefined {
  return token?.word?.number;
}

/** A spoken digit from one to nine that is no possessive, 0 where none stands. */
export function digitAt(tokens: readonly Token[], i: number): number {
  const said = numberWord(tokens[i]);
  return said?.kind === "ones" && tokens[i]?.apostrophe !== true ? said.value : 0;
}

export function isSign(token: Token | undefined, sign: string): boolean {
  return token !== undefined && token.kind === tokenKind.sign && token.text === sign;
}

/** Nobody writes 14/16 for a fraction: two values then. */
function reduced(above: number, below: number): boolean {
  if (below % 2 === 0 && above % 2 === 0) return false;
  return !(below % 3 === 0 && above % 3 === 0) && !(below % 5 === 0 && above % 5 === 0);
}

const figures: ReadonlySet<string> = new Set(["current", "voltage", "temperature", "pressure"]);

/** "31/32 A", "15/16 psi": no meter shows such a fraction, so they are two. */
function twoFigures(token: Token | undefined): boolean {
  return figures.has(token?.word?.unit?.dimension ?? "");
}

/** "1/2" from its first digit: two numbers about a glued or spaced stroke, no third. */
export function typedFraction(tokens: readonly Token[], i: number): NumberSaid | undefined {
  const above = tokens[i];
  const below = tokens[i + 2];
  if (above?.kind !== tokenKind.number || below?.kind !== tokenKind.number) return undefined;
  if (!isSign(tokens[i + 1], "/") || tokens[i + 1]?.glued !== below.glued) return undefined;
  if (!denominators.includes(below.value) || above.value >= below.value) return undefined;
  if (!reduced(above.value, below.value)) return undefined;
  if (below.text.includes(".") || above.text.includes(".") || above.text === "") return undefined;
  if (isSign(tokens[i + 3], "/") && tokens[i + 3]?.glued === true) return undefined;
  if (isSign(tokens[i - 1], "/") && tokens[i - 2]?.kind === tokenKind.number) return undefined;
  // "1/10 min: 420/980 meg": two times
  const time = tokens[i + 3]?.word?.unit?.dimension === "time" && below.value > 4;
  if (time || (below.value >= 8 && twoFigures(tokens[i + 3]))) return undefined;
  return { value: above.value / below.value, end: i + 3, spoken: false, fraction: true };
}

/** "and a half", "and three quarters", "½", "1/8" behind a whole number; what it adds and where it ends. */
export function fractionTail(
  tokens: readonly Token[],
  i: number,
): readonly [number, number] | undefined {
  const token = tokens[i];
  if (token === undefined) return undefined;
  const sign = token.kind === tokenKind.sign ? vulgar[token.text] : undefined;
  if (sign !== undefined) return [sign, i + 1];
  const dash = isSign(token, "-") && token.glued && tokens[i + 1]?.glued === true;
  const typed = typedFraction(tokens, dash ? i + 1 : i);
  if (typed !== undefined) return [typed.value, typed.end];
  if (token.text !== "and" && token.text !== "n" && token.text !== "&") return undefined;
  return spokenFraction(tokens, i + 1);
}

/** "a half", "one quarter", "two thirds", "three eighths" */
export function spokenFraction(
  tokens: readonly Token[],
  i: number,
): readonly [number, number] | undefined {
  const lead = tokens[i];
  const half = numberWord(lead);
  if (half?.kind === "half") return [0.5, i + 1];
  const decimal = decimalPart(tokens, i);
  if (decimal !== undefined) return decimal;
  let next = tokens[i + 1];
  let at = i + 1;
  if (isSign(next, "-")) next = tokens[++at];
  const part = numberWord(next);
  if (part?.kind !== "part" && part?.kind !== "half") return undefined;
  const divisor = part.kind === "half" ? 2 : part.value;
  const count =
    lead?.text === "a" || lead?.text === "an" ? 1 : half?.kind === "ones" ? half.value : 0;
  if (count === 0 || count >= divisor) return undefined;
  return [count / divisor, at + 1];
}

/** "eighty three hundredths", "sixty hundredths": any count below the whole. */
function decimalPart(tokens: readonly Token[], i: number): readonly [number, number] | undefined {
  const count = group(tokens, i);
  const part = count === undefined ? undefined : numberWord(tokens[count.end]);
  if (count === undefined || part?.kind !== "part" || part.value !== 100) return undefined;
  return count.kind === "oh" ? undefined : [count.value / 100, count.end + 1];
}

/** A group below a hundred: "eight", "fifteen", "twenty", "twenty five". */
export interface Group {
  readonly value: number;
  readonly end: number;
  readonly kind: "ones" | "teen" | "tens" | "both" | "zero" | "oh";
}

export function group(tokens: readonly Token[], i: number): Group | undefined {
  const said = numberWord(tokens[i]);
  if (said === undefined) return undefined;
  if (said.kind === "ones" || said.kind === "teen" || said.kind === "zero" || said.kind === "oh")
    return { value: said.value, end: i + 1, kind: said.kind };
  if (said.kind !== "tens") return undefined;
  const dash = isSign(tokens[i + 1], "-") ? 1 : 0;
  const ones = numberWord(tokens[i + 1 + dash]);
  // "four sixty | one to three four fifty": the digit begins the next pair of legs
  const pair = dash === 0 && digitPair(tokens, i + 1);
  if (ones?.kind !== "ones" || tokens[i]?.apostrophe === true || pair)
    return { value: said.value, end: i + 1, kind: "tens" };
  return { value: said.value + ones.value, end: i + 2 + dash, kind: "both" };
}
