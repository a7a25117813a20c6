import { lookUp } from "./dictionary.ts";
import { fresh, isGoods } from "./goods.ts";
import { named } from "./legs-by-number.ts";
import { group } from "./number-parts.ts";
import { numberAt } from "./numbers.ts";
import { isNumber, type Token, tokenKind } from "./token.ts";
import { wordAt } from "./unsaid-token.ts";

/** Cases of one line-up at most; common practice, no source. */
const CASES = 60;

const joint = /^(?:,|;|and|&|\.)$/;

function numberOf(token: Token | undefined): number {
  if (token?.kind === tokenKind.number && /^\d{1,2}$/.test(token.text)) return token.value;
  const said = token?.word?.number;
  return said?.kind === "ones" ? said.value : 0;
}

/** Where a figure ends: of "forty | six thirty seven" the six is the next case. */
function figureEnd(tokens: readonly Token[], from: number, next: number): number {
  const said = group(tokens, from);
  if (said?.kind !== "both") return said?.end ?? from + 1;
  const goesOn = said.value % 10 === next && isNumber(tokens[said.end]);
  return goesOn ? said.end - 1 : said.end;
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
    at = figureEnd(tokens, below, number + 1);
    if (tokens[at]?.word?.unit?.dimension === "temperature") at++;
    while (joint.test(tokens[at]?.text ?? "") || tokens[at]?.kind === tokenKind.line) at++;
  }
  return found;
}

/** How warm a figure behind a box's number is at least: it is no second degree. Our choice, no source. */
const boxes = { least: 20 } as const;

/** Where a box is told by a number that can be no second degree of it: one digit, and no unit behind it. */
function boxNumbers(tokens: readonly Token[]): readonly number[] {
  return tokens.flatMap(({ text }, i) => {
    const number = tokens[i + 1];
    if (text !== "box" || number?.kind !== tokenKind.number || !/^[1-9]$/.test(number.text))
      return [];
    const unit = tokens[i + 2]?.word?.unit?.dimension;
    return unit === "temperature" && !isNumber(tokens[i + 3]) ? [] : [i + 1];
  });
}

/**
 * "box 1 38 box 2 40", "box 1 at 38, box 2 at 36", "box 1 38 box 2 -5": the number of a box, and then how
 * warm it is. One alone is a number where the figure behind it can be no second degree.
 */
function boxesByNumber(tokens: readonly Token[]): readonly Token[] {
  const numbers = boxNumbers(tokens);
  if (numbers.length === 0) return tokens;
  const several = new Set(numbers.map((at) => tokens[at]?.value)).size > 1;
  const found = numbers.flatMap((at) => {
    const number = tokens[at];
    const from = /^(?:at|@)$/.test(tokens[at + 1]?.text ?? "") ? at + 2 : at + 1;
    const below = /^(?:-|minus)$/.test(tokens[from]?.text ?? "");
    const first = below ? from + 1 : from;
    const value = isNumber(tokens[first]) ? numberAt(tokens, first)?.value : undefined;
    if (number === undefined || value === undefined) return [];
    const fine = !Number.isInteger(value) || value >= boxes.least;
    const warm = !below && fine && tokens[first]?.glued !== true;
    return warm || several ? [{ at: from, number }] : [];
  });
  if (found.length === 0) return tokens;
  return tokens.flatMap((token, i) => {
    const box = found.find(({ at }) => at === i);
    if (box !== undefined) return [wordAt(box.number.to, "is"), token];
    return found.some(({ at }) => at === i + 1) && /^(?:at|@)$/.test(token.text) ? [] : [token];
  });
}

const howItIs = /^(?:is|at|was|down|up|reads|still|now|sits)$/;
/** Cases of one kind at most. Our choice, no source. */
const mostOfKind = 12;

const holdsWares = ({ text }: Token): boolean => isGoods(text);

/** What follows a case's number where degrees may be as low: what is read at it, no warmth and no set point. */
const ofCase =
  /^(?:sh|superheat|txv|tev|eev|exv|valve|defrost|coil|evap|evaporator|fan|fans|heater|heaters|suction|suct|drain|lights?|doors?|epr)$/;
/** Behind a figure: how long, how cold, or when. */
const ofFigure =
  /^(?:deg|degs|degree|degrees|f|c|k|celsius|fahrenheit|below|minus|above|now|today|again|still|and|n|but|when|this|since|by|before|after|until|then|so|to|or|over|under|out|doors?|percent|set|setpoint|sp)$/;

/** "dairy 1 txv superheat was 19", "product 38 in dairy one": no fresh goods lie at so few F, and at so few C a word says so. */
function isCaseNumber(next: Token | undefined, units: "us" | "si"): boolean {
  if (units === "si") return ofCase.test(next?.text ?? "");
  if (next === undefined || next.kind === tokenKind.line) return true;
  if (next.kind === tokenKind.sign) return /^[,.;]$/.test(next.text);
  return next.kind === tokenKind.word && next.word?.unit === undefined && !ofFigure.test(next.text);
}

/** "dairy 4 38 5 39": behind a case and its figure the next ones, by their numbers alone. */
function fellowsOf(tokens: readonly Token[]): readonly number[] {
  return tokens.flatMap((token, i) =>
    holdsWares(token) ? numbersFrom(tokens, i + 1).slice(1) : [],
  );
}

/** "dairy 1 41 dairy 2 44", "sh on dairy 2 is 26": a case by what lies in it and its number, and then its value. */
function waresByNumber(all: readonly Token[], units: "us" | "si"): readonly Token[] {
  if (!all.some(holdsWares)) return all;
  const tokens = named(all, fellowsOf(all), "case");
  // "ice cream 2 minus two", "frozen 3 -6"
  const below = (i: number): boolean =>
    /^(?:-|minus)$/.test(tokens[i]?.text ?? "") && isNumber(tokens[i + 1]);
  const figures = tokens.filter(isNumber).length;
  const kinds = new Set(tokens.filter(holdsWares).map(({ text }) => text));
  return tokens.flatMap((token, i) => {
    const value = numberOf(tokens[i + 1]);
    const next = tokens[i + 2];
    const isCase = holdsWares(token) && value >= 1 && value <= mostOfKind;
    // "dairy 3 now" is how warm it is
    const said = howItIs.test(next?.text ?? "") && tokens.slice(i + 3, i + 5).some(isNumber);
    const named = figures > 1 && fresh.test(token.text) && isCaseNumber(next, units);
    const told = isNumber(next) || said || named || below(i + 2);
    if (isCase && told) return [{ ...token, text: "case", word: lookUp("case") }];
    // "dairy 1 41 meat 1 34": of cases of several kinds each has its figure right behind its number
    const last = tokens[i - 1];
    const own = last !== undefined && holdsWares(last) && kinds.size > 1 && isNumber(tokens[i + 1]);
    const isName = own && numberOf(token) >= 1 && numberOf(token) <= mostOfKind;
    return isName ? [token, wordAt(token.to, "is")] : [token];
  });
}

const numbered = /^(?:case|cooler|freezer|box|room|coldroom)$/;

/** "case 13 plus 11": behind the number of a case stands how warm it is. */
function isAboveZero(tokens: readonly Token[], i: number): boolean {
  const [name, number, plus, next] = [tokens[i - 2], tokens[i - 1], tokens[i], tokens[i + 1]];
  const isNamed = numbered.test(name?.text ?? "") && isNumber(number);
  return plus?.text === "plus" && isNamed && isNumber(next);
}

function withoutPlus(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(({ text }) => text === "plus")) return tokens;
  return tokens.filter((_, i) => !isAboveZero(tokens, i));
}

/** "ice cream 2 -9": what lies in it goes by two words. */
function iceCream(tokens: readonly Token[]): readonly Token[] {
  const isIce = (i: number): boolean =>
    tokens[i]?.text === "ice" && tokens[i + 1]?.text === "cream" && isNumber(tokens[i + 2]);
  if (!tokens.some((_, i) => isIce(i))) return tokens;
  return tokens.flatMap((token, i) => {
    if (isIce(i - 1)) return [];
    return isIce(i) ? [{ ...token, text: "icecream", word: lookUp("freezer") }] : [token];
  });
}

/** "cases 4 38 5 40 6 37": each case's number and how cold it is; the word is said once for all of them. */
export function casesByNumber(all: readonly Token[], units: "us" | "si"): readonly Token[] {
  const tokens = waresByNumber(iceCream(withoutPlus(boxesByNumber(all))), units);
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
