import { isGoods } from "./goods.ts";
import { type Token, tokenKind } from "./token.ts";

/**
 * "suction 1 18 head 3 85", "L1 L2 4 80": a phone that writes in digits what is said in pairs, and parts
 * the hundreds from the rest.
 */

const gauges = /^(?:suction|suct|discharge|liquid|low|high|side|pressure)$/;
const units = /^(?:psi|psig|bolts?|volts?|microns?|megs?|meg|megohms?)$/;
const leads = /^(?:at|is|was|about|around|hold|holding|held|to|now|its|thats|reads|reading)$/;
const joints = /^(?:and|or|to|thru|through|&|,|\/|-|\+|:|x|by|#|dash|times)$/;
const rails = /^(?:bus|dc|vac|vacuum|hz|microns?)$/;

function isDigit(token: Token | undefined): boolean {
  return token?.kind === tokenKind.number && /^[1-9]$/.test(token.text);
}

function isRest(token: Token | undefined): boolean {
  return token?.kind === tokenKind.number && /^\d\d$/.test(token.text) && !token.glued;
}

/** "lead 1", "circuit 2", "L 1": what a number is the name of. */
function names(tokens: readonly Token[], i: number): boolean {
  const token = tokens[i];
  // "U V 1 88", "liquid line 1 01"
  if (/^[uvwabc]$/.test(token?.text ?? "") && /^[uvwabc]$/.test(tokens[i - 1]?.text ?? ""))
    return false;
  if (token?.text === "line" && gauges.test(tokens[i - 1]?.text ?? "")) return false;
  if (token?.kind !== tokenKind.word || token.apostrophe) return false;
  if (gauges.test(token.text) || rails.test(token.text)) return false;
  const { text, word } = token;
  return word?.noun !== undefined || text.length === 1 || /^(?:gro?u?p|bank|section)$/.test(text);
}

const change = /^(?:rose|up|down|fell|dropped|went|came|climbed|rising|dropping|going)$/;

/** "rose to 4 20", "from 8 50 to 4 10": how far, no list of numbers. */
function changes(tokens: readonly Token[], i: number): boolean {
  return change.test(tokens[i - 2]?.text ?? "") || tokens[i - 4]?.text === "from";
}

/** A single figure and two more behind it that are nothing by themselves. */
function mayJoin(tokens: readonly Token[], i: number): boolean {
  if (!isDigit(tokens[i]) || !isRest(tokens[i + 1])) return false;
  const [before, behind] = [tokens[i - 1], tokens[i + 2]];
  // "6 50 at 1 15 and 3 90": but "comps 1 and 2 18" are numbered
  const rises =
    before?.text === "to" ? changes(tokens, i) : before?.text === "and" && isRest(tokens[i - 2]);
  if ((!rises && joints.test(before?.text ?? "")) || /^[/:x"']$/.test(behind?.text ?? ""))
    return false;
  if (behind?.kind === tokenKind.number && !(isDigit(behind) && isRest(tokens[i + 3])))
    return false;
  if (behind?.word?.unit?.dimension === "time" || behind?.word?.number !== undefined) return false;
  if (before?.kind === tokenKind.number) return isDigit(before) && names(tokens, i - 2);
  // "dairy 1 41 meat 1 34": the number of a case, and then how warm it is
  if (isGoods(before?.text ?? "")) return false;
  return !names(tokens, i - 1) || before?.text === "head";
}

/** "microns 1 200": a thousand and more. */
function hasThousands(tokens: readonly Token[], i: number): boolean {
  const rest = tokens[i + 1];
  if (!isDigit(tokens[i]) || !/^\d{3}$/.test(rest?.text ?? "") || rest?.glued === true)
    return false;
  return (
    /^(?:vac|vacuum|microns?)$/.test(toldOf(tokens, i)) ||
    /^microns?$/.test(tokens[i + 2]?.text ?? "")
  );
}

/** The word that a figure is told of, past a verb: "suction was at", "head's at". */
function toldOf(tokens: readonly Token[], i: number): string {
  let at = i - 1;
  while (at > i - 5 && (leads.test(tokens[at]?.text ?? "") || change.test(tokens[at]?.text ?? "")))
    at--;
  const { text = "", apostrophe = false } = tokens[at] ?? {};
  // "head 3 85": a head has a number of its own
  return text === "head" && at === i - 1 && !apostrophe ? "" : text;
}

function isGauge(text: string): boolean {
  return gauges.test(text) || rails.test(text) || text === "head";
}

/** What stands there has hundreds: a gauge, a pair of legs, volts, microns. */
function hasHundreds(tokens: readonly Token[], i: number): boolean {
  const before = tokens[i - 1]?.text ?? "";
  if (isGauge(toldOf(tokens, i))) return true;
  if (tokens[i + 1]?.text.startsWith("0") === true && before !== "at") return true;
  return leads.test(before) && units.test(tokens[i + 2]?.text ?? "");
}

/** "at 8 15", "by 3 30": a time, unless a unit follows. */
function isClock(tokens: readonly Token[], i: number): boolean {
  const before = tokens[i - 1]?.text ?? "";
  if (!/^(?:at|by|since|until|till|around|from|before|after)$/.test(before)) return false;
  if (before === "from" && change.test(tokens[i - 2]?.text ?? "")) return false;
  return !isGauge(toldOf(tokens, i)) && tokens[i + 2]?.word?.unit === undefined;
}

/** "case 1 36 case 2 38": the same word before another digit counts what it names. */
function counts(tokens: readonly Token[], i: number, other: number | undefined): boolean {
  if (other === undefined || tokens[i - 1]?.kind !== tokenKind.word) return false;
  const same = tokens[other - 1]?.text === tokens[i - 1]?.text;
  return same && tokens[other]?.value !== tokens[i]?.value;
}

/** "held at 8 15": hours and minutes with the colon that the phone left out. */
function timed(first: Token, rest: Token): Token[] {
  const { to } = first;
  const colon = { ...first, kind: tokenKind.sign, from: to, to, text: ":", glued: true };
  return [first, { ...colon, word: undefined, value: Number.NaN }, { ...rest, glued: true }];
}

function joined(first: Token, rest: Token): Token {
  const text = first.text + rest.text;
  return { ...first, to: rest.to, text, value: Number(text) };
}

/** "1 62 meg 2 71 meg 3 0.4": from one upwards, each before a figure with its unit, leads are counted. */
function countUp(tokens: readonly Token[], found: readonly number[]): boolean {
  return (
    found.length > 1 &&
    found.every((i, order) => {
      const ohms = tokens[i + 2]?.word?.unit?.dimension === "resistance";
      return tokens[i]?.value === order + 1 && (ohms || order > 0);
    })
  );
}

const meant = { hundreds: 1, maybe: 2, clock: 3 } as const;

/** "suction's at one eighteen head 3 42": beside the low side's gauge the one head is no indoor unit's number. */
function headOfGauges(tokens: readonly Token[], i: number): boolean {
  if (tokens[i - 1]?.text !== "head") return false;
  return (
    tokens.some(({ text }) => /^(?:suction|suct|low)$/.test(text)) &&
    tokens.filter(({ text }) => text === "head").length === 1
  );
}

/** What each pair of figures is, by where it stands; nothing for a message that has none for sure. */
function pairsOf(tokens: readonly Token[]): ReadonlyMap<number, number> {
  const found: number[] = [];
  for (let i = 0; i < tokens.length - 1; i++)
    if (mayJoin(tokens, i) || hasThousands(tokens, i)) found.push(i);
  const pairs = new Map<number, number>();
  let sure = 0;
  let perhaps = 0;
  found.forEach((i, order) => {
    if (isClock(tokens, i)) pairs.set(i, meant.clock);
    else if (hasHundreds(tokens, i) || hasThousands(tokens, i) || headOfGauges(tokens, i)) {
      pairs.set(i, meant.hundreds);
      sure++;
    } else if (!counts(tokens, i, found[order - 1]) && !counts(tokens, i, found[order + 1])) {
      pairs.set(i, meant.maybe);
      if (tokens[i - 1]?.text !== "head") perhaps++;
    }
  });
  return sure > 0 || (perhaps > 1 && !countUp(tokens, found)) ? pairs : new Map();
}

/** Joins what was parted: where hundreds are measured, and all of a message in which that is so, or two are. */
export function splitFigures(tokens: Token[]): void {
  const pairs = pairsOf(tokens);
  if (pairs.size === 0) return;
  const parted = tokens.splice(0);
  for (let i = 0; i < parted.length; i++) {
    const [first, rest] = [parted[i], parted[i + 1]];
    if (first === undefined) continue;
    const kind = rest === undefined ? undefined : pairs.get(i);
    if (kind === undefined || rest === undefined) tokens.push(first);
    else if (kind !== meant.clock) tokens.push(joined(first, rest));
    else if (rest.value > 59) tokens.push(first, rest);
    else tokens.push(...timed(first, rest));
    if (kind !== undefined) i++;
  }
}
