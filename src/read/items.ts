import type { UnitHabit } from "../model.ts";
import type { Place } from "../vocabulary.ts";
import { circuitMark } from "./circuit-mark.ts";
import { countedNoun } from "./counted-noun.ts";
import { digitPair } from "./digit-pairs.ts";
import { type Item, type ItemKind, itemKind, newItem } from "./item.ts";
import { fits, unitCalled } from "./kinds.ts";
import { pointsAt } from "./names.ts";
import { nextSubject } from "./next-subject.ts";
import { nthAgain } from "./nth-again.ts";
import { numberStep, oneAndPart } from "./number-items.ts";
import { type Phrase, phraseAt, signsAt } from "./phrase.ts";
import { acrossLegs, numberRow, ofOutputs } from "./point-row.ts";
import { isMetal, plusToGround } from "./point-words.ts";
import { namesRail, railAgain } from "./rail-again.ts";
import { rowHead } from "./row-head.ts";
import { numberedBox, ownTag } from "./spelled-tag.ts";
import { statPair } from "./stat-pair.ts";
import { countedAt, hashAt, nths, type SubjectSaid, subjectAt } from "./subject-name.ts";
import { atMainValve } from "./terminal-or-unit.ts";
import { testTold } from "./test-told.ts";
import { type Token, tokenKind } from "./token.ts";
import { isTool, isWith, rowOfOutputs } from "./unit-or-word.ts";
import { opens, role, type Word } from "./word.ts";

/** State of putting one text together. */
export interface Building {
  readonly tokens: readonly Token[];
  /** the text as typed: capitals tell L from l, M from m */
  readonly typed: string;
  readonly items: Item[];
  /** family of the last electrical point: "L", "T", "uvw", "abc", "csr" */
  family: string;
  /** the company's scale, for what no thing is as cold as */
  readonly units: UnitHabit;
  /** a high side's pressure was read on the job */
  readonly gauged?: boolean;
  /** pairs of numbers may be points: "one to three" */
  readonly pairs: boolean;
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

/**
 * Gives the item the signs of all its words, and of the phrase of signs that begins with it. The tail of a
 * quantity's name or a correction tells nothing: "sub cool" is no cool shell, "had it backwards" no motor.
 */
function addSigns(build: Building, item: Item, i: number, end: number): void {
  const bare = item.label?.quantity !== undefined || (item.roles & role.correct) !== 0;
  for (let at = i; at < (bare ? i + 1 : end); at++) {
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

/** As typed: a word one slip from the dictionary's may have lost its "s" there. */
function isPlural(build: Building, token: Token | undefined): boolean {
  if (token === undefined || token.kind !== tokenKind.word || token.apostrophe) return false;
  const last = build.typed.charCodeAt(token.to - 1);
  return last === 115 || last === 83;
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
  item.plural = isPlural(build, build.tokens[found.end - 1]);
  item.label = setsOne(build, found, word) ? undefined : word.label;
  if (kind === itemKind.unit) item.unit = atMainValve(build, i) ? unitCalled("V") : word.unit;
  addSigns(build, item, i, found.end);
  build.items.push(item);
}

/** "meg to gnd ok": one word with the signs of all its words. */
function toldItem(build: Building, i: number, end: number): number {
  const first = build.tokens[i];
  if (first === undefined) return i + 1;
  const item = newItem(itemKind.word, first.from, toOf(build, end), first.text);
  addSigns(build, item, i, end);
  build.items.push(item);
  return end;
}

/** "set the txv a quarter turn in": what somebody did. */
function setsOne(build: Building, found: Phrase, word: Word): boolean {
  if (word.label?.rating !== "setpoint" || build.tokens[found.end - 1]?.text !== "set")
    return false;
  const next = build.tokens[found.end];
  if (isTool(build.tokens[found.end - 2])) return true;
  // "set the static to one inch"
  const to = build.tokens[found.end + 2];
  if (to?.text === "to" && build.tokens[found.end + 3]?.word?.number !== undefined) return false;
  return ((next?.word?.roles ?? 0) & role.article) !== 0 && next?.text !== "a";
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
  item.plural = isPlural(build, token);
  addSigns(build, item, i, i + 1);
  build.items.push(item);
}

function pointsItem(build: Building, i: number, token: Token): number {
  const points = railAgain(build, i) ?? pointsAt(build, i);
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
  const subject =
    circuitMark(build, i) ??
    countedAt(build, i) ??
    nthAgain(build, i) ??
    hashAt(build, i) ??
    numberedBox(build, i) ??
    subjectAt(build, i);
  return subject === undefined ? 0 : putSubject(build, i, token, subject);
}

function putSubject(build: Building, i: number, token: Token, subject: SubjectSaid): number {
  const item = newItem(itemKind.subject, token.from, toOf(build, subject.end), token.text);
  item.subject = subject.name;
  item.label = subject.label;
  item.apostrophe = build.tokens[subject.end - 1]?.apostrophe ?? false;
  if (subject.aside) item.roles = role.clock;
  addSigns(build, item, i, subject.end);
  build.items.push(item);
  return subject.end;
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
      namesRail(next.text) ||
      (next.word !== undefined && ((next.word.roles & role.ground) !== 0 || isMetal(next.text)))
    );
  }
  if (/^(?:you|yew|see|sea|are|our|ess|vee|be|bee)$/.test(text)) return next?.text === "to";
  if (text === "plus" && build.items[build.items.length - 1]?.kind === itemKind.number)
    return next?.kind === tokenKind.word && next.text === "to" && !plusToGround(build, i);
  if (text === "double") return next?.text === "you" || next?.text === "u";
  if (text.length > 1 || token.kind !== tokenKind.word) return true;
  if (statPair(build, i) !== undefined) return true;
  if (text === "w" && isWith(build, i)) return false;
  if ((text === "r" || text === "c") && next?.text === "and") return true;
  if (text === "l" || text === "t" || next?.text === "phase") return true;
  if (build.family !== "" || build.typed.charAt(token.from) !== text) return true;
  if (next === undefined) return false;
  if (ofOutputs(build, i)) return true;
  if (next.kind === tokenKind.number) return numberRow(build, i);
  if (rowOfOutputs(build, i)) return true;
  return (
    next.kind === tokenKind.sign ||
    (/^[uvw]$/.test(text) && /^(?:is|reads|shows|was|same)$/.test(next.text)) ||
    next.text === "to" ||
    next.text === "g" ||
    next.text === "against" ||
    next.text === "vs" ||
    (next.word !== undefined && (next.word.roles & role.ground) !== 0)
  );
}

/** "cond in 85 out 94", "evap in 54 out 45": the way out of what the way in was said of. */
function outOfIt(build: Building, i: number): number {
  const way = build.tokens[i]?.text ?? "";
  if (
    !/^(?:out(?:let)?|off|lvg|leaving)$/.test(way) ||
    build.tokens[i + 1]?.kind !== tokenKind.number
  )
    return 0;
  const [number, label] = [
    build.items[build.items.length - 1],
    build.items[build.items.length - 2],
  ];
  const place = label?.label?.place;
  if (number?.kind !== itemKind.number || place === undefined) return 0;
  // "air on 24.5 off 13"
  const air = label?.text === "air" && place === "return_air";
  if ((way === "off") !== air) return 0;
  const out = waysOut[place];
  const token = build.tokens[i];
  if (out === undefined || token === undefined) return 0;
  const item = newItem(itemKind.label, token.from, token.to, token.text);
  item.label = { place: out, hint: "temperature" };
  build.items.push(item);
  return i + 1;
}

const waysOut: Readonly<Partial<Record<Place, Place>>> = {
  water_in: "water_out",
  condenser_in: "condenser_out",
  evaporator_in: "evaporator_out",
  return_air: "supply_air",
};

function step(build: Building, i: number): number {
  const token = build.tokens[i];
  if (token === undefined) return i + 1;
  const { word } = token;
  const out =
    outOfIt(build, i) || rowHead(build, i) || countedNoun(build, i) || oneAndPart(build, i);
  if (out > 0) return out;
  const joined = nextSubject(build, i);
  if (joined > 0) return joined;
  const tag = ownTag(build, i);
  if (tag !== undefined) return putSubject(build, i, token, tag);
  const typed = token.kind === tokenKind.number;
  const open = word === undefined ? 0 : word.opens;
  const legs =
    build.family === "L" || build.family === "T" || /^(?:lead|phase)$/.test(build.family);
  if (
    ((open & opens.points) !== 0 && mayPoint(build, i, token)) ||
    (token.kind === tokenKind.code && (token.text.length === 4 || /^l[1-3]n$/.test(token.text))) ||
    /^[rygw]c$/.test(token.text) ||
    (legs && (typed || (open & opens.number) !== 0)) ||
    digitPair(build.tokens, i) ||
    (typed && token.value <= 3 && (build.tokens[i + 1]?.text === "-" || acrossLegs(build, i)))
  ) {
    const end = pointsItem(build, i, token);
    if (end > 0) return end;
  }
  const marked = token.kind === tokenKind.code || nths.has(token.text);
  if ((open & opens.noun) !== 0 || token.text === "#" || marked) {
    const end = subjectItem(build, i, token);
    if (end > 0) return end;
  }
  const phrase = word === undefined ? undefined : phraseAt(build.tokens, i);
  const numeric = typed || token.kind === tokenKind.sign || (open & opens.number) !== 0;
  if (numeric && (phrase === undefined || phrase.end === i + 1)) {
    const end = numberStep(build, i);
    if (end > 0) return end;
  }
  // a meter is a word of the dictionary
  const told = phrase === undefined ? 0 : testTold(build, i);
  if (told > 0) return toldItem(build, i, told);
  if (phrase !== undefined) {
    wordItem(build, i, phrase);
    return phrase.end;
  }
  plainItem(build, token, i);
  return i + 1;
}

/** Tokens put together into items, left to right. */
export function itemsOf(build: Building): Item[] {
  for (let i = 0; i < build.tokens.length; ) i = Math.max(i + 1, step(build, i));
  return build.items;
}
