import { digitAt, numberWord } from "./number-parts.ts";
import { beginsFigure, numberAt } from "./numbers.ts";
import { type Token, tokenKind } from "./token.ts";

/** What is counted from one, by a word of its own. */
const things =
  /^(?:leads?|legs?|phases?|heaters?|elements?|fans?|cases?|stages?|zones?|comps?|compressors?|circuits?|sensors?|coils?|ports?|terminals?|motors?|banks?)$/;
/** What is measured of each; a figure of two words alone may be hundreds here. */
const measures = /^(?:amps|volts|megs?|megged|ohms?|ohmed|windings?)$/;
const between = /^(?:a|amps?|volts?|megs?|ohms?|and|,|is|at|k)$/;

/** How far the figures of a row of two, and of three, lie apart at most; our choice, no source. */
const apart = { two: 2, three: 12 } as const;

/** A figure and the tokens that say it. */
export interface Figure {
  readonly from: number;
  readonly end: number;
  readonly value: number;
}

interface Row {
  readonly names: readonly number[];
  readonly figures: readonly Figure[];
}

/** A figure that fills the words from `from` to `to`, past what may part it from the next name. */
function figureWithin(tokens: readonly Token[], from: number, to: number): Figure | undefined {
  const own = figureAt(tokens.slice(from, to), 0);
  if (own === undefined) return undefined;
  const figure = { from: own.from + from, end: own.end + from, value: own.value };
  const rest = tokens.slice(figure.end, to);
  return rest.length < 3 && rest.every(({ text }) => between.test(text)) ? figure : undefined;
}

const begins = (token: Token | undefined): boolean =>
  beginsFigure(token) || token?.kind === tokenKind.number || numberWord(token)?.kind === "zero";

/** The figure behind a name, past its verb. */
export function figureAt(tokens: readonly Token[], at: number): Figure | undefined {
  const from = /^(?:is|at)$/.test(tokens[at]?.text ?? "") ? at + 1 : at;
  const said = numberAt(tokens, from);
  // "megs one hundred ninety": no name before a hundred
  if (said === undefined || said.loose === true || !begins(tokens[from])) return undefined;
  return { from, end: said.end, value: said.value };
}

/** Words that a figure and its unit have at most. */
const longest = 9;

/** The longest row "one <figure> two <figure> …" that begins with the name at `at`. */
function rowFrom(tokens: readonly Token[], at: number, number: number): Row | undefined {
  for (let next = at + 2; next <= at + longest && next < tokens.length; next++) {
    if (digitAt(tokens, next) !== number + 1) continue;
    const figure = figureWithin(tokens, at + 1, next);
    const rest = figure === undefined ? undefined : rowFrom(tokens, next, number + 1);
    if (figure !== undefined && rest !== undefined)
      return { names: [at, ...rest.names], figures: [figure, ...rest.figures] };
  }
  const last = figureAt(tokens, at + 1);
  return last === undefined ? undefined : { names: [at], figures: [last] };
}

/** Do the figures of a row lie as near to each other as those of like things? */
function isRow({ names, figures }: Row): boolean {
  const values = figures.map(({ value }) => value);
  if (names.length < 2) return false;
  const [least, most] = [Math.min(...values), Math.max(...values)];
  if (least < 0) return false;
  const some = values.filter((value) => value > 0);
  const spread = most / Math.min(...some, most);
  return names.length === 2 ? least > 0 && spread <= apart.two : spread <= apart.three;
}

/** "amps one eighty two ninety": hundreds or the legs' numbers; with a point, or three figures behind the name, it is a name. */
function mayBeHundreds(tokens: readonly Token[], { figures }: Row): boolean {
  const whole = figures.filter(
    ({ value, from }) =>
      value < 100 && Number.isInteger(value) && numberWord(tokens[from])?.kind !== "point",
  );
  return whole.length > 1;
}

/**
 * "lead one five fifty two five sixty three five forty": where the names of a row counted from one stand, each
 * before a figure. So cut, nothing of it is left over.
 */
export function countedRows(tokens: readonly Token[]): readonly Row[] {
  return tokens.flatMap((token, i) => {
    if (token.kind !== tokenKind.word || digitAt(tokens, i) !== 1) return [];
    const head = tokens[i - 1]?.text === ":" ? tokens[i - 2] : tokens[i - 1];
    const thing = things.test(head?.text ?? "");
    if (head?.apostrophe === true || (!thing && !measures.test(head?.text ?? ""))) return [];
    const row = rowFrom(tokens, i, 1);
    if (row === undefined || !isRow(row)) return [];
    return !thing && mayBeHundreds(tokens, row) ? [] : [row];
  });
}

const turnsTo = /^(?:now|next|then|and)$/;

/** Do at least three figures with a point stand behind, each near the first? */
function alikeBehind(tokens: readonly Token[], from: number): boolean {
  const found: number[] = [];
  for (let at = from; found.length < 3; ) {
    const said = numberAt(tokens, /^(?:,|and|\/)$/.test(tokens[at]?.text ?? "") ? at + 1 : at);
    if (said === undefined) return false;
    found.push(said.value);
    at = said.end;
  }
  const [first = 0] = found;
  const near = found.every((value) => Math.abs(value - first) <= first * 0.2);
  return near && found.some((value) => !Number.isInteger(value));
}

/** "now three | fourteen point nine fourteen point eight fifteen": a number that its row cannot have. */
export function namesBeforeRow(tokens: readonly Token[]): readonly number[] {
  return tokens.flatMap((token, i) => {
    const digit = token.kind === tokenKind.word ? digitAt(tokens, i) : 0;
    if (digit === 0 || !turnsTo.test(tokens[i - 1]?.text ?? "")) return [];
    const own = numberAt(tokens, i + 1);
    const far = own !== undefined && (own.value > digit * 1.5 || own.value < digit / 1.5);
    return far && alikeBehind(tokens, i + 1) ? [i] : [];
  });
}

const states = /^(?:dead|open|ol|shorted|shorts?|off|out|good|fine|ok|grounded)$/;
const tells = /^(?:reads|is|at|was|shows|has)$/;

/** How far back the number before may stand. Our choice, no source. */
const reach = 14;

/** Was the number before this one told of as a thing: "two reads", "two at", "two open"? */
function toldBefore(tokens: readonly Token[], i: number, digit: number): boolean {
  const from = Math.max(0, i - reach);
  return tokens.slice(from, Math.max(from, i - 1)).some((token, step) => {
    const at = from + step;
    const value = token.kind === tokenKind.number ? token.value : digitAt(tokens, at);
    const next = tokens[at + 1]?.text ?? "";
    return value === digit - 1 && (tells.test(next) || states.test(next));
  });
}

/** "two reads twenty eight, three | twenty seven point five", "two at eleven point four | three dead": the next of what is counted. */
export function namesGoingOn(tokens: readonly Token[]): readonly number[] {
  return tokens.flatMap((_, i) => {
    const digit = digitAt(tokens, i);
    if (digit < 2 || !toldBefore(tokens, i, digit)) return [];
    if (states.test(tokens[i + 1]?.text ?? "")) return [i];
    // "one is dead two at two point one"
    const verb = tells.test(tokens[i + 1]?.text ?? "") && beginsFigure(tokens[i + 2]);
    const { number, noun, label } = tokens[i - 1]?.word ?? {};
    if (verb && (number ?? noun ?? label) === undefined) return [i];
    const [whole, own] = [numberAt(tokens, i), figureAt(tokens, i + 1)];
    if (own === undefined || numberWord(tokens[i - 1])?.kind === "point") return [];
    const glued = whole !== undefined && whole.value - digit * 100 === own.value;
    return glued && !Number.isInteger(own.value) ? [i] : [];
  });
}

const shared = /^(?:at|are|is|draw|drawing|pull|pulling|running|read|reading)$/;

/** A digit as it is spoken or typed, that no unit is glued to. */
function listedDigit(tokens: readonly Token[], i: number): number {
  const token = tokens[i];
  const typed = token?.kind === tokenKind.number && /^[1-9]$/.test(token.text);
  return typed && tokens[i + 1]?.glued !== true ? token.value : digitAt(tokens, i);
}

/** "two and three open", "2 and 3 at 14.2", "one two three all at 3.1": numbers of things, no figures. */
export function namesListed(tokens: readonly Token[]): readonly number[] {
  return tokens.flatMap((token, i) => {
    const digit = listedDigit(tokens, i);
    const before = tokens[i - 1];
    if (digit === 0 || token.glued || isFigure(before)) return [];
    const joint = /^(?:and|&|n)$/.test(tokens[i + 1]?.text ?? "");
    const behind = tokens[i + 3]?.text ?? "";
    const both = joint && listedDigit(tokens, i + 2) === digit + 1;
    if (both && (states.test(behind) || shared.test(behind))) return [i, i + 2];
    const three = [1, 2].every((step) => digitAt(tokens, i + step) === digit + step);
    return three && /^(?:all|each)$/.test(behind) ? [i, i + 1, i + 2] : [];
  });
}

/** A figure, or what parts the digits of one. */
function isFigure(token: Token | undefined): boolean {
  return token?.kind === tokenKind.number || numberWord(token) !== undefined || token?.text === "/";
}
