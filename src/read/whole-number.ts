import { type Group, group, isSign, numberWord } from "./number-parts.ts";
import { type Token, tokenKind } from "./token.ts";

/** Whole part so far. */
export interface Whole {
  readonly value: number;
  readonly end: number;
  readonly loose?: boolean;
  readonly tail?: number;
}

/** What follows "hundred" or "thousand": "and ten", "fifty one", "two hundred". */
function below(tokens: readonly Token[], i: number, limit: number): Whole | undefined {
  let at = i;
  if (isSign(tokens[at], ",") && limit > 100) at++;
  if (/^(?:and|n|&)$/.test(tokens[at]?.text ?? "")) at++;
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

/** "twenty nine hundred | ten minutes later": nobody waits hundreds of minutes, so the rest is the time. */
function longTime(tokens: readonly Token[], count: number, rest: Whole, i: number): boolean {
  if (tokens[i]?.text === "and" || count < 3 || rest.value % 5 !== 0) return false;
  return /^(?:minutes?|mins?)$/.test(tokens[rest.end]?.text ?? "");
}

/** "one hundred twenty | one hundred thirty": the digit behind the tens counts the hundreds of the next. */
function countsNext(
  tokens: readonly Token[],
  rest: Whole | undefined,
  i: number,
): Whole | undefined {
  const at = tokens[i]?.text === "and" ? i + 1 : i;
  if (rest === undefined || rest.end !== at + 2) return undefined;
  if (numberWord(tokens[rest.end])?.kind !== "hundred") return undefined;
  const tens = numberWord(tokens[at]);
  return tens?.kind === "tens" ? { value: tens.value, end: at + 1 } : undefined;
}

function withHundred(tokens: readonly Token[], count: number, i: number): Whole {
  const rest = below(tokens, i, 100);
  const cut = countsNext(tokens, rest, i);
  if (cut !== undefined) return { value: count * 100 + cut.value, end: cut.end };
  const another =
    rest !== undefined &&
    (longTime(tokens, count, rest, i) ||
      startsAnother(tokens, rest, i) ||
      paces(tokens, i, rest.end) ||
      firstPace(tokens, rest, i));
  if (rest === undefined || another) return { value: count * 100, end: i };
  return { value: count * 100 + rest.value, end: rest.end };
}

const times = /^(?:seconds?|secs?|minutes?|mins?|hours?|hrs?)$/;

/** "five minutes nine hundred | ten minutes nine twenty five": behind a time before, the next time's number. */
function paces(tokens: readonly Token[], from: number, end: number): boolean {
  if (!times.test(tokens[end]?.text ?? "")) return false;
  return tokens.slice(Math.max(0, from - 8), from).some(({ text }) => times.test(text));
}

/** "megging at five hundred | one minute ninety two meg": behind a tester's volts the first time of its test. */
function firstPace(tokens: readonly Token[], rest: Whole, i: number): boolean {
  const behind = tokens[rest.end]?.text ?? "";
  if (tokens[i]?.text === "and" || !times.test(behind)) return false;
  // nobody says "five hundred one minute" of minutes
  if (rest.value === 1) return !behind.endsWith("s");
  const tests = /^(?:meg|megs|megged|megging|megger|meggered|insulation|megohms?)$/;
  const near = tokens.slice(Math.max(0, i - 14), i + 14);
  return /^(?:10|15|30|60)$/.test(String(rest.value)) && near.some(({ text }) => tests.test(text));
}

/** "two hundred | four hundred", "two hundred | two ten": the group behind "hundred" counts hundreds itself. */
function startsAnother(tokens: readonly Token[], rest: Whole, i: number): boolean {
  const next = numberWord(tokens[rest.end])?.kind;
  // "four hundred and | three hundred ninety nine"
  if (next === "hundred") return true;
  // "four hundred and | three ninety five": nobody says "and three ninety" of one number
  if (tokens[i]?.text === "and")
    return next === "tens" && rest.end === i + 2 && numberWord(tokens[i + 1])?.kind === "ones";
  const kind = numberWord(tokens[i])?.kind;
  const single = rest.end === i + 1;
  // "eleven hundred | eleven fifty"
  if (single && kind === "teen" && (next === "tens" || next === "oh")) return true;
  const one = single && kind === "ones";
  return one && (next === "teen" || next === "tens" || next === "oh");
}

/** "four eighty", "two oh eight", "twelve fifty": pairs as people say them. */
function pair(tokens: readonly Token[], head: Group): Whole | undefined {
  if (tokens[head.end - 1]?.apostrophe === true) return undefined;
  const dash = isSign(tokens[head.end], "-") && head.kind === "ones" ? 1 : 0;
  const next = group(tokens, head.end + dash);
  if (next === undefined || head.kind === "zero" || head.kind === "oh") return undefined;
  const scale = numberWord(tokens[next.end])?.kind;
  // "three ninety | four hundred"
  if (scale === "hundred" && head.kind === "ones" && next.kind === "both")
    return { value: head.value * 100 + next.value - (next.value % 10), end: next.end - 1 };
  if (scale === "hundred" || scale === "thousand") return undefined;
  if (threeInRow(tokens, head, next)) return undefined;
  if (head.value >= 10 && next.value >= 10 && countsDegrees(tokens, next.end)) return undefined;
  // "ambient ninety | twenty four volt side": what control volts are called
  if (head.value >= 10 && next.value === 24 && /^(?:v|volts?)$/.test(tokens[next.end]?.text ?? ""))
    return undefined;
  // "superheat's eleven two's at twenty": the second begins what is told of another
  if (next.kind === "ones" && tokens[next.end - 1]?.apostrophe === true) return undefined;
  if (paces(tokens, head.end, next.end))
    return next.kind === "both"
      ? { value: head.value * 100 + next.value - (next.value % 10), end: next.end - 1 }
      : undefined;
  const row = tenths(tokens, head, next);
  if (row !== undefined) return row;
  if (next.kind === "oh" || (next.kind === "zero" && head.value < 100))
    return withOh(tokens, head, next);
  if (next.kind === "ones") return digitsOrLoose(tokens, head, next);
  if (endsInNext(tokens, head, next) || ohBehind(tokens, head, next))
    return { value: head.value * 100 + next.value - (next.value % 10), end: next.end - 1 };
  if (next.kind === "teen" && head.kind === "teen" && Math.abs(next.value - head.value) <= 3)
    return undefined;
  if (head.kind === "both" && Math.abs(next.value - head.value) <= head.value * 0.2)
    return undefined;
  const tail = next.kind === "both" ? next.value % 10 : 0;
  return { value: head.value * 100 + next.value, end: next.end, ...(tail > 0 ? { tail } : {}) };
}

/** "sixty five | thirty six | forty four megs": three of two figures each are a row. */
function threeInRow(tokens: readonly Token[], head: Group, next: Group): boolean {
  if (head.kind === "teen" && next.kind === "teen") {
    const third = group(tokens, next.end);
    return third?.kind === "teen" && numberWord(tokens[third.end])?.kind !== "point";
  }
  if (Math.min(head.value, next.value) < 20) return false;
  const start = head.end - (head.kind === "both" ? 2 : 1);
  if (/^(?:ones|tens)$/.test(numberWord(tokens[start - 1])?.kind ?? "")) return true;
  const third = group(tokens, next.end);
  if (third === undefined || third.value < 20) return false;
  const after = numberWord(tokens[third.end])?.kind;
  return after !== "hundred" && after !== "thousand";
}

/** "fifty seven | nineteen degree split": nothing here has thousands of degrees, so the second counts alone. */
function countsDegrees(tokens: readonly Token[], end: number): boolean {
  const at = tokens[end]?.text === "of" ? end + 1 : end;
  const text = tokens[at]?.text ?? "";
  // "one minute ninety four | ten minutes one twenty one": nor so many minutes
  if (at === end && /^(?:minutes?|mins?|seconds?|secs?)$/.test(text)) return true;
  if (at === end && /^(?:degrees?|degs?|°)$/.test(text)) return true;
  if (/^(?:split|delta|superheat|subcool(?:ing)?)$/.test(text)) return true;
  return /^(?:super|supper|sub)$/.test(text) && /^(?:heat|cool)/.test(tokens[at + 1]?.text ?? "");
}

/** "four sixty | four seventy": the digit that this one began with begins the next as well. */
function endsInNext(tokens: readonly Token[], head: Group, next: Group): boolean {
  if (head.kind !== "ones" || next.kind !== "both" || next.value % 10 !== head.value) return false;
  const after = group(tokens, next.end);
  return after !== undefined && (after.kind === "tens" || after.kind === "both");
}

/** "one ninety | two oh five": no figure begins with its "oh". */
function ohBehind(tokens: readonly Token[], head: Group, next: Group): boolean {
  if (head.kind !== "ones" || next.kind !== "both") return false;
  const [oh, ones] = [group(tokens, next.end), group(tokens, next.end + 1)];
  return oh?.kind === "oh" && ones?.kind === "ones";
}

/** "twelve six | twelve eight", "nineteen oh | nineteen four": the next begins as this one does, so each has tenths. */
function tenths(tokens: readonly Token[], head: Group, next: Group): Whole | undefined {
  if (head.value < 10 || (next.kind !== "ones" && next.kind !== "oh")) return undefined;
  const again = group(tokens, tokens[next.end]?.text === "and" ? next.end + 1 : next.end);
  if (again === undefined || again.value < 10) return undefined;
  if (Math.abs(again.value - head.value) > Math.max(1, head.value * 0.12)) return undefined;
  const after = numberWord(tokens[again.end])?.kind;
  if (after === "hundred" || after === "thousand") return undefined;
  return { value: head.value + next.value / 10, end: next.end, loose: true };
}

function withOh(tokens: readonly Token[], head: Group, oh: Group): Whole | undefined {
  const ones = group(tokens, oh.end);
  if (ones?.kind === "ones" || ones?.kind === "oh" || ones?.kind === "zero")
    return { value: head.value * 100 + ones.value, end: ones.end };
  // "twenty two oh": tenths, since 220 is said "two twenty"
  if (head.kind === "both" && oh.kind === "oh")
    return { value: head.value, end: oh.end, loose: true };
  return undefined;
}

const amperes = /^(?:amps?|current|legs?|phases?|drawing|pulling|running|runs)$/;

/** "amps seven nine | seven eight and seven nine": nobody draws thousands, and each begins about as the first. */
function rowOfTenths(tokens: readonly Token[], i: number): boolean {
  let from = i;
  while (numberWord(tokens[from - 1])?.kind === "ones" || tokens[from - 1]?.text === "and") from--;
  const before = tokens.slice(Math.max(0, from - 3), from);
  let end = from;
  const heads: number[] = [];
  for (;;) {
    const [first, second] = [numberWord(tokens[end]), numberWord(tokens[end + 1])];
    if (first?.kind !== "ones" || second?.kind !== "ones") break;
    heads.push(first.value);
    end += 2;
    if (tokens[end]?.text === "and") end++;
  }
  const [lead = 0] = heads;
  const near = heads.length > 1 && heads.every((head) => Math.abs(head - lead) <= 1);
  const told = [...before, ...tokens.slice(end, end + 2)];
  return near && told.some(({ text }) => amperes.test(text));
}

/** "four eight zero" spelled, or a loose pair like "seven four" and "twenty two nine". */
function digitsOrLoose(tokens: readonly Token[], head: Group, next: Group): Whole | undefined {
  if (head.kind === "ones" && !rowOfTenths(tokens, head.end - 1)) {
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
  const after = numberWord(tokens[next.end])?.kind;
  // "after ten | five thirty": the second begins a number of its own
  if (after === "point" || (head.kind !== "ones" && /^(?:tens|teen|oh)$/.test(after ?? "")))
    return undefined;
  return { value: head.value + next.value / 10, end: next.end, loose: true };
}

export function whole(tokens: readonly Token[], i: number): Whole | undefined {
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
  if (rest === undefined || firstPace(tokens, rest, end)) return { value, end };
  return { value: value + rest.value, end: rest.end };
}
