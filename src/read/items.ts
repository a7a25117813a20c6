import type { Unit } from "../quantities/quantity.ts";
import { type Item, type ItemKind, itemKind, newItem } from "./item.ts";
import { fits } from "./kinds.ts";
import { pointsAt } from "./names.ts";
import type { NumberSaid } from "./number-parts.ts";
import { numberAt } from "./numbers.ts";
import { type Phrase, phraseAt, signsAt } from "./phrase.ts";
import { isMetal } from "./point-words.ts";
import { subjectAt } from "./subject-name.ts";
import { type Token, tokenKind } from "./token.ts";
import { type UnitSaid, unitAt } from "./units.ts";
import { opens, role, type Word } from "./word.ts";

/** State of putting one text together. */
export interface Building {
  readonly tokens: readonly Token[];
  /** the text as typed: capitals tell L from l, M from m */
  readonly typed: string;
  readonly items: Item[];
  /** family of the last electrical point: "L", "T", "uvw", "abc", "csr" */
  family: string;
  /** pairs of numbers may be points: "one to three" */
  readonly pairs: boolean;
}

function fromOf(build: Building, i: number): number {
  return build.tokens[i]?.from ?? 0;
}

function toOf(build: Building, end: number): number {
  return build.tokens[end - 1]?.to ?? 0;
}

/** "pf", "vac", "min" away from a number name a quantity or a condition, not their unit. */
function unitAlone(word: Word): boolean {
  const { label, unit } = word;
  if (label === undefined || unit === undefined) return true;
  if (label.quantity !== undefined) return fits(label.quantity, unit.dimension);
  return label.stat === undefined && label.place === undefined;
}

/** Gives the item the signs of all its words, and of the phrase of signs that begins with it. */
function addSigns(build: Building, item: Item, i: number, end: number): void {
  for (let at = i; at < end; at++) {
    const word = build.tokens[at]?.word;
    if (word === undefined || !word.signed) continue;
    const found = signsAt(build.tokens, at);
    if (found === undefined) continue;
    item.signs = item.signs === undefined ? found.signs : [...item.signs, ...found.signs];
    item.signsTo = Math.max(item.signsTo, toOf(build, found.end), toOf(build, end));
  }
}

function wordKind(word: Word, end: number, token: Token): ItemKind {
  if ((word.roles & role.over) !== 0) return itemKind.over;
  if (word.unit !== undefined && (!word.beside || end > 1) && unitAlone(word)) return itemKind.unit;
  if (word.label !== undefined) return itemKind.label;
  if ((word.roles & role.same) !== 0) return itemKind.same;
  return token.kind === tokenKind.sign ? itemKind.sign : itemKind.word;
}

function wordItem(build: Building, i: number, found: Phrase): void {
  const first = build.tokens[i];
  if (first === undefined) return;
  const { word } = found;
  const kind = wordKind(word, found.end - i, first);
  const item = newItem(kind, first.from, toOf(build, found.end), first.text);
  item.roles = word.roles;
  item.glued = first.glued;
  item.apostrophe = build.tokens[found.end - 1]?.apostrophe ?? false;
  item.label = word.label;
  if (kind === itemKind.unit) item.unit = word.unit;
  addSigns(build, item, i, found.end);
  build.items.push(item);
}

function plainKind(token: Token): ItemKind {
  if (token.kind === tokenKind.line) return itemKind.line;
  if (token.kind === tokenKind.code) return itemKind.code;
  return token.kind === tokenKind.sign ? itemKind.sign : itemKind.word;
}

function plainItem(build: Building, token: Token, i: number): void {
  const item = newItem(plainKind(token), token.from, token.to, token.text);
  item.glued = token.glued;
  item.apostrophe = token.apostrophe;
  addSigns(build, item, i, i + 1);
  build.items.push(item);
}

/** "plus or minus five", "± 5 %": said with the number, no number of its own. */
function toleranceEnd(build: Building, i: number, bare: boolean): number {
  const { tokens } = build;
  let at = i;
  if (tokens[at]?.text === "±") at++;
  else if (
    tokens[at]?.text === "plus" &&
    tokens[at + 1]?.text === "or" &&
    tokens[at + 2]?.text === "minus"
  )
    at += 3;
  else if (tokens[at]?.text === "plus" && tokens[at + 1]?.text === "minus") at += 2;
  else if (tokens[at]?.text === "+" && tokens[at + 1]?.text === "/" && tokens[at + 2]?.text === "-")
    at += 3;
  else return i;
  const said = numberAt(tokens, at);
  if (said === undefined) return i;
  return bare ? said.end : (unitAt(build, said.end)?.end ?? said.end);
}

/** "delta t 19 amps 16.2": the unit's word names the next value where this one is of another kind. */
function namesNext(build: Building, i: number, found: UnitSaid): boolean {
  const label = build.items[build.items.length - 1]?.label;
  const quantity = label?.quantity ?? label?.hint;
  if (quantity === undefined || build.tokens[i]?.glued === true || label?.rating !== undefined)
    return false;
  if (fits(quantity, found.unit.dimension)) return false;
  return numberAt(build.tokens, found.end) !== undefined;
}

/** Puts a number and its unit into one item; returns the token behind them. */
function numberItem(build: Building, i: number, said: NumberSaid): number {
  const first = build.tokens[i];
  if (first === undefined) return i + 1;
  const spread = toleranceEnd(build, said.end, true);
  const unit = unitAt(build, spread);
  const found = unit !== undefined && namesNext(build, spread, unit) ? undefined : unit;
  const end = toleranceEnd(build, found?.end ?? spread, false);
  const item = newItem(itemKind.number, first.from, toOf(build, end), first.text);
  item.glued = first.glued;
  item.value = said.value + (found?.add ?? 0);
  item.unit = found?.unit;
  item.heard = found?.heard ?? false;
  item.unitFrom = found === undefined ? -1 : fromOf(build, spread);
  item.numberTo = toOf(build, said.end);
  item.spoken = said.spoken;
  item.loose = said.loose ?? false;
  item.colon = said.colon ?? false;
  item.fraction = said.fraction ?? false;
  item.tail = said.tail ?? 0;
  build.items.push(item);
  return end;
}

/** "a pound", "an hour": one of a unit. */
function oneOf(build: Building, i: number): number | undefined {
  const text = build.tokens[i]?.text;
  if (text !== "a" && text !== "an" && text !== "per") return undefined;
  const found = unitAt(build, i + 1);
  if (found === undefined || found.beside || text === "per") return undefined;
  if (!countable(found.unit)) return undefined;
  return numberItem(build, i, { value: 1, end: i + 1, spoken: true });
}

function countable(unit: Unit): boolean {
  return unit.dimension === "mass" || unit.dimension === "time" || unit.factor === 1e9;
}

/** "sight glass half full": half of nothing counted. */
function halfWord(build: Building, i: number, said: NumberSaid): boolean {
  return build.tokens[i]?.word?.number?.kind === "half" && unitAt(build, said.end) === undefined;
}

/** "the bad one", "liq one 9.7k", "the third one": no number unless a label or a verb stands before it. */
function pronoun(build: Building, i: number): boolean {
  const token = build.tokens[i];
  if (token?.text !== "one" || token.kind !== tokenKind.word) return false;
  if (unitAt(build, i + 1) !== undefined || numberAt(build.tokens, i)?.end !== i + 1) return false;
  const before = build.tokens[i - 1];
  if (before === undefined) return false;
  if (before.kind !== tokenKind.word) return false;
  const last = build.items[build.items.length - 1];
  if (before.apostrophe || last?.label?.quantity !== undefined || last?.label?.action !== undefined)
    return false;
  return (
    ((before.word?.roles ?? 0) & (role.is | role.about | role.greater | role.less)) === 0 ||
    last?.label?.place !== undefined
  );
}

function pointsItem(build: Building, i: number, token: Token): number {
  const points = pointsAt(build, i);
  if (points === undefined) return 0;
  const kind = points.list.length === 0 ? itemKind.ground : itemKind.points;
  const item = newItem(kind, token.from, toOf(build, points.end), token.text);
  item.glued = token.glued;
  item.points = points.list;
  item.apostrophe = build.tokens[points.end - 1]?.apostrophe ?? false;
  build.items.push(item);
  return points.end;
}

function subjectItem(build: Building, i: number, token: Token): number {
  const subject = subjectAt(build, i);
  if (subject === undefined) return 0;
  const item = newItem(itemKind.subject, token.from, toOf(build, subject.end), token.text);
  item.subject = subject.name;
  item.label = subject.label;
  item.apostrophe = build.tokens[subject.end - 1]?.apostrophe ?? false;
  if (subject.aside) item.roles = role.clock;
  addSigns(build, item, i, subject.end);
  build.items.push(item);
  return subject.end;
}

/** The number at token `i` as an item, where it is no pronoun and no part of a longer phrase. */
function numberStep(build: Building, i: number): number {
  const said = pronoun(build, i) ? undefined : numberAt(build.tokens, i);
  if (said !== undefined && !halfWord(build, i, said)) return numberItem(build, i, said);
  return oneOf(build, i) ?? 0;
}

/** A letter or a small word begins points only beside a connector, a number or in capitals. */
function mayPoint(build: Building, i: number, token: Token): boolean {
  const { text } = token;
  const next = build.tokens[i + 1];
  if (text === "to" || text === "the" || text === "from" || text === "against" || text === "2") {
    if (next === undefined) return false;
    return (
      next.text === "the" ||
      next.text === "g" ||
      (next.word !== undefined && ((next.word.roles & role.ground) !== 0 || isMetal(next.text)))
    );
  }
  if (/^(?:you|yew|see|sea|are|our|ess|vee|be|bee)$/.test(text)) return next?.text === "to";
  if (text === "double") return next?.text === "you" || next?.text === "u";
  if (text.length > 1 || token.kind !== tokenKind.word) return true;
  if ((text === "r" || text === "c") && next?.text === "and") return true;
  if (text === "l" || text === "t" || next?.text === "phase") return true;
  if (build.family !== "" || build.typed.charAt(token.from) !== text) return true;
  if (next === undefined) return false;
  return (
    next.kind === tokenKind.sign ||
    next.text === "to" ||
    next.text === "g" ||
    next.text === "against" ||
    next.text === "vs" ||
    (next.word !== undefined && (next.word.roles & role.ground) !== 0)
  );
}

function step(build: Building, i: number): number {
  const token = build.tokens[i];
  if (token === undefined) return i + 1;
  const { word } = token;
  const typed = token.kind === tokenKind.number;
  const open = word === undefined ? 0 : word.opens;
  const legs = build.family === "L" || build.family === "T" || build.family === "lead";
  if (
    ((open & opens.points) !== 0 && mayPoint(build, i, token)) ||
    (legs && (typed || (open & opens.number) !== 0))
  ) {
    const end = pointsItem(build, i, token);
    if (end > 0) return end;
  }
  if ((open & opens.noun) !== 0) {
    const end = subjectItem(build, i, token);
    if (end > 0) return end;
  }
  const phrase = word === undefined ? undefined : phraseAt(build.tokens, i);
  const numeric = typed || token.kind === tokenKind.sign || (open & opens.number) !== 0;
  if (numeric && (phrase === undefined || phrase.end === i + 1)) {
    const end = numberStep(build, i);
    if (end > 0) return end;
  }
  if (phrase !== undefined) {
    wordItem(build, i, phrase);
    return phrase.end;
  }
  plainItem(build, token, i);
  return i + 1;
}

/** Tokens put together into items, left to right. */
export function itemsOf(build: Building): Item[] {
  for (let i = 0; i < build.tokens.length; ) i = step(build, i);
  return build.items;
}
