import { plain } from "./plain.ts";
import { scan } from "./scan.ts";
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

const vulgar: Readonly<Record<string, number>> = {
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

function numberWord(token: Token | undefined): NumberWord | undefined {
  return token?.word?.number;
}

function isSign(token: Token | undefined, sign: string): boolean {
  return token !== undefined && token.kind === tokenKind.sign && token.text === sign;
}

/** Nobody writes 14/16 for a fraction: two values then. */
function reduced(above: number, below: number): boolean {
  if (below % 2 === 0 && above % 2 === 0) return false;
  return !(below % 3 === 0 && above % 3 === 0) && !(below % 5 === 0 && above % 5 === 0);
}

/** "1/2" from its first digit: two numbers about a glued or spaced stroke, no third. */
function typedFraction(tokens: readonly Token[], i: number): NumberSaid | undefined {
  const above = tokens[i];
  const below = tokens[i + 2];
  if (above?.kind !== tokenKind.number || below?.kind !== tokenKind.number) return undefined;
  if (!isSign(tokens[i + 1], "/") || tokens[i + 1]?.glued !== below.glued) return undefined;
  if (!denominators.includes(below.value) || above.value >= below.value) return undefined;
  if (!reduced(above.value, below.value)) return undefined;
  if (below.text.includes(".") || above.text.includes(".") || above.text === "") return undefined;
  if (isSign(tokens[i + 3], "/") && tokens[i + 3]?.glued === true) return undefined;
  return { value: above.value / below.value, end: i + 3, spoken: false, fraction: true };
}

/** "and a half", "and three quarters", "½", "1/8" behind a whole number; what it adds and where it ends. */
function fractionTail(tokens: readonly Token[], i: number): readonly [number, number] | undefined {
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
function spokenFraction(
  tokens: readonly Token[],
  i: number,
): readonly [number, number] | undefined {
  const lead = tokens[i];
  const half = numberWord(lead);
  if (half?.kind === "half") return [0.5, i + 1];
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

/** A group below a hundred: "eight", "fifteen", "twenty", "twenty five". */
interface Group {
  readonly value: number;
  readonly end: number;
  readonly kind: "ones" | "teen" | "tens" | "both" | "zero" | "oh";
}

function group(tokens: readonly Token[], i: number): Group | undefined {
  const said = numberWord(tokens[i]);
  if (said === undefined) return undefined;
  if (said.kind === "ones" || said.kind === "teen" || said.kind === "zero" || said.kind === "oh")
    return { value: said.value, end: i + 1, kind: said.kind };
  if (said.kind !== "tens") return undefined;
  const dash = isSign(tokens[i + 1], "-") ? 1 : 0;
  const ones = numberWord(tokens[i + 1 + dash]);
  if (ones?.kind !== "ones" || tokens[i]?.apostrophe === true)
    return { value: said.value, end: i + 1, kind: "tens" };
  return { value: said.value + ones.value, end: i + 2 + dash, kind: "both" };
}

/** Whole part so far. */
interface Whole {
  readonly value: number;
  readonly end: number;
  readonly loose?: boolean;
  readonly tail?: number;
}

/** What follows "hundred" or "thousand": "and ten", "fifty one", "two hundred". */
function below(tokens: readonly Token[], i: number, limit: number): Whole | undefined {
  let at = i;
  if (isSign(tokens[at], ",") && limit > 100) at++;
  if (tokens[at]?.text === "and") at++;
  if (limit > 100) {
    const hundreds = group(tokens, at);
    const dash = isSign(tokens[hundreds?.end ?? 0], "-") ? 1 : 0;
    if (hundreds !== undefined && hundreds.value > 0 && hundreds.value < 10) {
      const word = numberWord(tokens[hundreds.end + dash]);
      if (word?.kind === "hundred")
        return withHundred(tokens, hundreds.value, hundreds.end + dash + 1);
    }
  }
  const rest = group(tokens, at) ?? typedGroup(tokens, at, limit);
  if (rest === undefined || rest.kind === "zero") return undefined;
  if (rest.kind === "oh") {
    const ones = group(tokens, rest.end);
    return ones?.kind === "ones" ? { value: ones.value, end: ones.end } : undefined;
  }
  return { value: rest.value, end: rest.end };
}

/** "3 hundred and 21": digits count as a group only behind "and". */
function typedGroup(tokens: readonly Token[], i: number, limit: number): Group | undefined {
  const token = tokens[i];
  if (token?.kind !== tokenKind.number || tokens[i - 1]?.text !== "and") return undefined;
  return token.value < limit ? { value: token.value, end: i + 1, kind: "both" } : undefined;
}

function withHundred(tokens: readonly Token[], count: number, i: number): Whole {
  const rest = below(tokens, i, 100);
  if (rest === undefined || startsAnother(tokens, rest.end, i))
    return { value: count * 100, end: i };
  return { value: count * 100 + rest.value, end: rest.end };
}

/** "two hundred | four hundred": the group behind "hundred" counts hundreds itself. */
function startsAnother(tokens: readonly Token[], end: number, i: number): boolean {
  return numberWord(tokens[end])?.kind === "hundred" && tokens[i]?.text !== "and";
}

/** "four eighty", "two oh eight", "twelve fifty": pairs as people say them. */
function pair(tokens: readonly Token[], head: Group): Whole | undefined {
  if (tokens[head.end - 1]?.apostrophe === true) return undefined;
  const dash = isSign(tokens[head.end], "-") && head.kind === "ones" ? 1 : 0;
  const next = group(tokens, head.end + dash);
  if (next === undefined || head.kind === "zero" || head.kind === "oh") return undefined;
  const scale = numberWord(tokens[next.end])?.kind;
  if (scale === "hundred" || scale === "thousand") return undefined;
  if (next.kind === "oh" || (next.kind === "zero" && head.value < 100))
    return withOh(tokens, head, next);
  if (next.kind === "ones") return digitsOrLoose(tokens, head, next);
  if (next.kind === "teen" && head.kind === "teen" && Math.abs(next.value - head.value) <= 3)
    return undefined;
  if (head.kind === "both" && Math.abs(next.value - head.value) <= head.value * 0.2)
    return undefined;
  const tail = next.kind === "both" ? next.value % 10 : 0;
  return { value: head.value * 100 + next.value, end: next.end, ...(tail > 0 ? { tail } : {}) };
}

function withOh(tokens: readonly Token[], head: Group, oh: Group): Whole | undefined {
  const ones = group(tokens, oh.end);
  if (ones?.kind === "ones" || ones?.kind === "oh" || ones?.kind === "zero")
    return { value: head.value * 100 + ones.value, end: ones.end };
  if (head.kind === "both" && oh.kind === "oh") return { value: head.value * 10, end: oh.end };
  return undefined;
}

/** "four eight zero" spelled, or a loose pair like "seven four" and "twenty two nine". */
function digitsOrLoose(tokens: readonly Token[], head: Group, next: Group): Whole | undefined {
  if (head.kind === "ones") {
    let value = head.value * 10 + next.value;
    let end = next.end;
    let count = 2;
    for (let digit = group(tokens, end); digit !== undefined; digit = group(tokens, end)) {
      if (digit.kind !== "ones" && digit.kind !== "zero" && digit.kind !== "oh") break;
      value = value * 10 + digit.value;
      end = digit.end;
      count++;
    }
    if (count > 2) return { value, end };
  }
  if (numberWord(tokens[next.end])?.kind === "point") return undefined;
  return { value: head.value + next.value / 10, end: next.end, loose: true };
}

function whole(tokens: readonly Token[], i: number): Whole | undefined {
  const first = tokens[i];
  if (first === undefined) return undefined;
  const article = first.text === "a" || first.text === "an";
  const said = numberWord(article ? tokens[i + 1] : first);
  if (said?.kind === "hundred" || said?.kind === "thousand") {
    const at = article ? i + 2 : i + 1;
    return said.kind === "hundred"
      ? thousands(tokens, withHundred(tokens, 1, at))
      : thousands(tokens, { value: 1, end: at - 1 });
  }
  if (article) return undefined;
  const typed = first.kind === tokenKind.number;
  const head: Group | undefined = typed
    ? { value: first.value, end: i + 1, kind: "both" }
    : group(tokens, i);
  if (head === undefined) return undefined;
  const dash = isSign(tokens[head.end], "-") ? 1 : 0;
  if (numberWord(tokens[head.end + dash])?.kind === "hundred")
    return thousands(tokens, withHundred(tokens, head.value, head.end + dash + 1));
  if (numberWord(tokens[head.end + dash])?.kind === "thousand") return thousands(tokens, head);
  if (typed) return { value: head.value, end: head.end };
  return pair(tokens, head) ?? { value: head.value, end: head.end };
}

/** "… thousand two hundred and six", "… million" */
function thousands(tokens: readonly Token[], said: Whole): Whole {
  const dash = isSign(tokens[said.end], "-") ? 1 : 0;
  const scale = numberWord(tokens[said.end + dash]);
  if (scale?.kind !== "thousand") return said;
  const value = said.value * scale.value;
  const end = said.end + dash + 1;
  const again = numberWord(tokens[end]);
  if (again?.kind === "thousand") return { value: value * again.value, end: end + 1 };
  const rest = below(tokens, end, 1000);
  if (rest === undefined) return { value, end };
  return { value: value + rest.value, end: rest.end };
}

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
  hasWhole: boolean,
) {
  if (!hasWhole || found.digits.length < 2) return found;
  if (numberWord(tokens[found.end])?.kind !== "point") return found;
  return { digits: found.digits.slice(0, -1), end: found.end - 1 };
}

function pointAt(tokens: readonly Token[], i: number): boolean {
  const token = tokens[i];
  if (numberWord(token)?.kind === "point") return true;
  return false;
}

function withDecimals(tokens: readonly Token[], said: Whole, hasWhole: boolean): Whole {
  if (!pointAt(tokens, said.end) || said.loose === true) return said;
  const found = decimals(tokens, said.end + 1);
  if (found === undefined) return said;
  const exact = stepBack(tokens, found, hasWhole);
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

/** A number in words from token `i`. */
function spokenNumber(tokens: readonly Token[], i: number): NumberSaid | undefined {
  const part = spokenFraction(tokens, i);
  if (part !== undefined && numberWord(tokens[i])?.kind !== "half")
    return { value: part[0], end: part[1], spoken: true, fraction: true };
  if (pointAt(tokens, i)) {
    const exact = withDecimals(tokens, { value: 0, end: i }, false);
    return exact.end > i ? { value: exact.value, end: exact.end, spoken: true } : undefined;
  }
  const said = whole(tokens, i);
  if (said === undefined) return halfAlone(tokens, i);
  if (numberWord(tokens[i])?.kind === "oh" && !pointAt(tokens, said.end)) return undefined;
  const tail = fractionTail(tokens, said.end);
  if (tail !== undefined && said.loose !== true)
    return { value: said.value + tail[0], end: tail[1], spoken: true };
  const exact = withDecimals(tokens, said, true);
  if (exact.loose === true)
    return { value: exact.value, end: exact.end, spoken: true, loose: true };
  if (exact === said && said.tail !== undefined)
    return { value: exact.value, end: exact.end, spoken: true, tail: said.tail };
  return { value: exact.value, end: exact.end, spoken: true };
}

/** "half", "a half", "half a": 0.5; "quarter hour": 0.25 */
function halfAlone(tokens: readonly Token[], i: number): NumberSaid | undefined {
  const at = tokens[i]?.text === "a" ? i + 1 : i;
  if (
    tokens[at]?.text === "quarter" &&
    /^(?:hour|mile|turn|pound)/.test(tokens[at + 1]?.text ?? "")
  )
    return { value: 0.25, end: at + 1, spoken: true };
  if (numberWord(tokens[i])?.kind === "half") {
    const article = tokens[i + 1]?.text === "a" || tokens[i + 1]?.text === "an" ? 1 : 0;
    return { value: 0.5, end: i + 1 + article, spoken: true };
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
