import type { Context } from "../context.ts";
import { type Item, itemKind } from "../item.ts";

/** A text as 32 bits (FNV-1a), so that a trait is a number and reading builds no strings. */
export function bits(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash;
}

function mixed(sort: number, a: number, b = 0): number {
  let hash = Math.imul(sort + 0x9e3779b9, 0x85ebca6b) ^ a;
  hash = Math.imul(hash ^ (hash >>> 15), 0xc2b2ae35) ^ b;
  hash = Math.imul(hash ^ (hash >>> 13), 0x27d4eb2f);
  return (hash ^ (hash >>> 16)) | 0;
}

/** One item as its neighbours see it. */
interface Seen {
  readonly word: number;
  readonly start: number;
  readonly label: number;
  readonly number: boolean;
  /** it names a quantity, a place or a thing */
  readonly named: boolean;
}

const NUMBER = bits("#");
const EDGE: Seen = { word: bits("^"), start: 1, label: 0, number: false, named: false };

function seenOf(item: Item): Seen {
  const number = item.kind === itemKind.number;
  const { label, unit } = item;
  // "suction" and "suction line" are one place, and mostly another quantity
  const hint = label?.hint ?? "";
  const place = label?.place === undefined ? undefined : `${hint}@${label.place}`;
  const named = label?.quantity ?? place ?? label?.thing;
  return {
    word: number ? NUMBER ^ bits(unit?.figure ?? "") : bits(item.text),
    start: number ? NUMBER : bits(item.text.slice(0, 2)),
    label:
      named !== undefined ? bits(named) : unit === undefined ? item.kind : bits(unit.dimension),
    number,
    named: named !== undefined,
  };
}

/** A note's items, looked at once for all its numbers. */
export interface Looked {
  readonly items: readonly Item[];
  readonly seen: readonly Seen[];
  /** bits of the quantity that was read last on this job; 0 where none was */
  readonly last: number;
  readonly units: number;
  readonly numbers: number;
  readonly names: ReadonlySet<number>;
  /** bits of what the last few readings of this job were, with their places */
  readonly recent: readonly number[];
}

/** How many readings back what was read still says what the next number is. */
const RECENT = 6;

function recentOf({ readings }: Context): readonly number[] {
  const kinds = readings
    .slice(-RECENT)
    .map(({ quantity, at }) => (at === undefined ? quantity : `${quantity}@${at}`));
  return [...new Set(kinds)].map(bits);
}

export function look(items: readonly Item[], context: Context): Looked {
  const last = context.readings[context.readings.length - 1];
  const seen = items.map(seenOf);
  const names = new Set<number>();
  for (const one of seen) if (one.named) names.add(one.label);
  return {
    items,
    seen,
    last: last === undefined ? 0 : bits(last.quantity),
    units: context.units === "us" ? 1 : 2,
    numbers: Math.min(4, items.filter(({ kind }) => kind === itemKind.number).length),
    names,
    recent: recentOf(context),
  };
}

/** The size of a figure in half decades; signs apart. */
function sizeOf(value: number): number {
  if (Number.isNaN(value)) return 99;
  if (value === 0) return 98;
  return Math.round(2 * Math.log10(Math.abs(value))) + (value < 0 ? 60 : 0);
}

/** How it is written: in words, as a fraction, with how many digits before or behind the point. */
function formOf(item: Item): number {
  if (item.spoken) return 7;
  if (item.fraction) return 8;
  const text = String(item.value);
  const point = text.indexOf(".");
  return point < 0 ? 10 + text.length : 20 + text.length - point;
}

/** The traits of one number while they are put together. */
interface Gathering {
  readonly looked: Looked;
  readonly at: number;
  readonly item: Item;
  readonly unit: number;
  readonly size: number;
  /** bits of what the number before it is */
  readonly before: number;
  readonly out: number[];
}

function add({ out }: Gathering, sort: number, a: number, b = 0): void {
  out.push(mixed(sort, a, b));
}

function ownTraits(gathering: Gathering): void {
  const { unit, size, item, before, looked } = gathering;
  add(gathering, 1, 0);
  add(gathering, 2, unit);
  add(gathering, 3, size);
  add(gathering, 4, unit, size);
  add(gathering, 5, formOf(item));
  add(gathering, 60, before);
  add(gathering, 61, before, size);
  add(gathering, 62, before, unit);
  add(gathering, 70, looked.last);
  add(gathering, 71, looked.last, size);
  add(gathering, 72, looked.last, looked.numbers);
  add(gathering, 73, looked.units * 1000 + size, unit);
  for (const kind of looked.recent) {
    add(gathering, 80, kind);
    add(gathering, 81, kind, size);
  }
}

/** Words and labels right beside it, by their place. */
function besideTraits(gathering: Gathering): void {
  const { unit, size, before, looked, at } = gathering;
  const near = (step: number): Seen => looked.seen[at + step] ?? EDGE;
  for (const step of [-3, -2, -1, 1, 2, 3]) {
    add(gathering, 10 + step, near(step).word);
    add(gathering, 20 + step, near(step).label);
  }
  const [left, right] = [near(-1), near(1)];
  add(gathering, 30, near(-2).word, left.word);
  add(gathering, 31, left.word, right.word);
  add(gathering, 32, right.word, near(2).word);
  add(gathering, 33, left.word, size);
  add(gathering, 34, right.word, size);
  add(gathering, 35, left.word, before);
  add(gathering, 36, left.word, unit);
  add(gathering, 37, left.start);
  add(gathering, 38, right.start);
  add(gathering, 63, before, right.word);
}

/** Words within eight items on either side, whatever their place. */
function aroundTraits(gathering: Gathering): void {
  const { seen, names } = gathering.looked;
  for (let step = 1; step <= 8; step++) {
    const left = seen[gathering.at - step];
    if (left !== undefined && !left.number) {
      add(gathering, 40, left.word);
      if (step <= 4) add(gathering, 41, left.word);
      if (left.named) add(gathering, 42, left.label);
    }
    const right = seen[gathering.at + step];
    if (right !== undefined && !right.number) {
      add(gathering, 43, right.word);
      if (step <= 3) add(gathering, 44, right.word);
      if (right.named) add(gathering, 45, right.label);
    }
  }
  for (const name of names) add(gathering, 69, name);
}

/** The nearest names before and behind it. */
function nameTraits(gathering: Gathering): void {
  const { at, size, unit, looked } = gathering;
  const { seen } = looked;
  let left = at - 1;
  while (left >= 0 && seen[left]?.named !== true) left--;
  const name = seen[left]?.label ?? 0;
  add(gathering, 50, name);
  add(gathering, 51, name, left < 0 ? 0 : Math.min(4, at - left));
  add(gathering, 52, name, size);
  add(gathering, 53, name, unit);
  let right = at + 1;
  while (right < at + 5 && seen[right]?.named !== true) right++;
  add(gathering, 54, right < at + 5 ? (seen[right]?.label ?? 0) : 0);
}

/** The numbers before and behind it: how far, how much larger, what stands between. */
function numberTraits(gathering: Gathering): void {
  const { at, item, size, before, looked } = gathering;
  const { seen, items } = looked;
  let left = at - 1;
  while (left >= 0 && seen[left]?.number !== true) left--;
  const other = items[left];
  if (other !== undefined) {
    add(gathering, 64, Math.min(5, at - left), before);
    add(gathering, 65, before, Math.round(Math.log2(Math.abs(item.value / other.value))) | 0);
    let between = 0;
    for (let i = left + 1; i < Math.min(at, left + 4); i++)
      between = mixed(66, between, seen[i]?.word ?? 0);
    add(gathering, 66, between, before);
  }
  const right = items.find((one, i) => i > at && one.kind === itemKind.number);
  if (right === undefined) return;
  add(gathering, 67, bits(right.unit?.figure ?? ""));
  add(gathering, 68, sizeOf(right.value), size);
}

/**
 * What stands round the number at `at`, as 32-bit traits: its unit, size and form, the words beside
 * and around it, the names near it, the numbers near it, what the message before was about. `before`
 * is what the number before it is ("^" for the first).
 */
export function traits(looked: Looked, at: number, before: string): readonly number[] {
  const item = looked.items[at];
  if (item === undefined) return [];
  const gathering: Gathering = {
    looked,
    at,
    item,
    unit: bits(item.unit?.figure ?? ""),
    size: sizeOf(item.value),
    before: bits(before),
    out: [],
  };
  ownTraits(gathering);
  besideTraits(gathering);
  aroundTraits(gathering);
  nameTraits(gathering);
  numberTraits(gathering);
  return gathering.out;
}
