import type { Unit } from "../quantities/quantity.ts";
import { type Item, type ItemKind, itemKind } from "./item.ts";
import { fits } from "./kinds.ts";
import { pointsAt, subjectAt } from "./names.ts";
import { type NumberSaid, numberAt } from "./numbers.ts";
import { type Phrase, phraseAt, signsAt } from "./phrase.ts";
import { type Token, tokenKind } from "./token.ts";
import { unitAt } from "./units.ts";
import { role, type Word } from "./word.ts";

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

const blank = {
  text: "",
  roles: 0,
  glued: false,
  apostrophe: false,
  label: undefined,
  signs: undefined,
  signsTo: -1,
  subject: undefined,
  points: undefined,
  value: Number.NaN,
  high: Number.NaN,
  relation: "=",
  series: undefined,
  unit: undefined,
  heard: false,
  unitFrom: -1,
  numberTo: -1,
  spoken: false,
  loose: false,
  colon: false,
  fraction: false,
  tail: 0,
  owner: undefined,
} as const;

function span(build: Building, from: number, end: number): { from: number; to: number } {
  return { from: build.tokens[from]?.from ?? 0, to: build.tokens[end - 1]?.to ?? 0 };
}

/** "pf", "vac", "min" away from a number name a quantity or a condition, not their unit. */
function unitAlone(word: Word): boolean {
  const { label, unit } = word;
  if (label === undefined || unit === undefined) return true;
  if (label.quantity !== undefined) return fits(label.quantity, unit.dimension);
  return label.stat === undefined;
}

/** Signs of all words of an item, and of the phrase of signs that begins with it. */
function signsOf(
  build: Building,
  i: number,
  end: number,
): { signs?: readonly number[]; signsTo?: number } {
  let signs: readonly number[] | undefined;
  let to = end;
  for (let at = i; at < end; at++) {
    const found = signsAt(build.tokens, at);
    if (found === undefined) continue;
    signs = signs === undefined ? found.signs : [...signs, ...found.signs];
    if (found.end > to) to = found.end;
  }
  return signs === undefined ? {} : { signs, signsTo: build.tokens[to - 1]?.to ?? -1 };
}

function wordItem(build: Building, i: number, found: Phrase): void {
  const first = build.tokens[i];
  if (first === undefined) return;
  const { word } = found;
  let kind: ItemKind = itemKind.word;
  if ((word.roles & role.over) !== 0) kind = itemKind.over;
  else if (word.unit !== undefined && (!word.beside || found.end > i + 1) && unitAlone(word))
    kind = itemKind.unit;
  else if (word.label !== undefined) kind = itemKind.label;
  else if ((word.roles & role.same) !== 0) kind = itemKind.same;
  else if (first.kind === tokenKind.sign) kind = itemKind.sign;
  const { from, to } = span(build, i, found.end);
  build.items.push({
    ...blank,
    kind,
    from,
    to,
    text: first.text,
    roles: word.roles,
    glued: first.glued,
    apostrophe: build.tokens[found.end - 1]?.apostrophe ?? false,
    label: word.label,
    ...signsOf(build, i, found.end),
    unit: kind === itemKind.unit ? word.unit : undefined,
  });
}

function plainItem(build: Building, token: Token, i: number): void {
  const kind =
    token.kind === tokenKind.line
      ? itemKind.line
      : token.kind === tokenKind.code
        ? itemKind.code
        : token.kind === tokenKind.sign
          ? itemKind.sign
          : itemKind.word;
  build.items.push({
    ...blank,
    kind,
    from: token.from,
    to: token.to,
    text: token.text,
    glued: token.glued,
    apostrophe: token.apostrophe,
    ...signsOf(build, i, i + 1),
  });
}

/** "plus or minus five", "± 5 %": said with the number, no number of its own. */
function toleranceEnd(build: Building, i: number): number {
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
  return unitAt(build, said.end)?.end ?? said.end;
}

/** Puts a number and its unit into one item; returns the token behind them. */
function numberItem(build: Building, i: number, said: NumberSaid): number {
  const first = build.tokens[i];
  if (first === undefined) return i + 1;
  const found = unitAt(build, said.end);
  const end = toleranceEnd(build, found?.end ?? said.end);
  const { from, to } = span(build, i, end);
  build.items.push({
    ...blank,
    kind: itemKind.number,
    from,
    to,
    text: first.text,
    glued: first.glued,
    value: said.value + (found?.add ?? 0),
    unit: found?.unit,
    heard: found?.heard ?? false,
    unitFrom: found === undefined ? -1 : (build.tokens[said.end]?.from ?? -1),
    numberTo: build.tokens[said.end - 1]?.to ?? to,
    spoken: said.spoken,
    loose: said.loose ?? false,
    colon: said.colon ?? false,
    fraction: said.fraction ?? false,
    tail: said.tail ?? 0,
  });
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
  return unit.dimension === "mass" || unit.dimension === "time";
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

function step(build: Building, i: number): number {
  const token = build.tokens[i];
  if (token === undefined) return i + 1;
  const points = pointsAt(build, i);
  if (points !== undefined) {
    const { from, to } = span(build, i, points.end);
    build.items.push({
      ...blank,
      kind: points.list.length === 0 ? itemKind.ground : itemKind.points,
      from,
      to,
      text: token.text,
      glued: token.glued,
      points: points.list,
      apostrophe: build.tokens[points.end - 1]?.apostrophe ?? false,
    });
    return points.end;
  }
  const subject = subjectAt(build, i);
  if (subject !== undefined) {
    const { from, to } = span(build, i, subject.end);
    build.items.push({
      ...blank,
      kind: itemKind.subject,
      from,
      to,
      ...signsOf(build, i, subject.end),
      text: token.text,
      subject: subject.name,
      apostrophe: build.tokens[subject.end - 1]?.apostrophe ?? false,
      label: subject.label,
      roles: subject.aside ? role.clock : 0,
    });
    return subject.end;
  }
  const phrase = phraseAt(build.tokens, i);
  if (phrase === undefined || phrase.end === i + 1) {
    const said = pronoun(build, i) ? undefined : numberAt(build.tokens, i);
    if (said !== undefined && !halfWord(build, i, said)) return numberItem(build, i, said);
    const one = oneOf(build, i);
    if (one !== undefined) return one;
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
