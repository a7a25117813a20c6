import type { Reading } from "../../model.ts";
import { endsClause, isStrongBreak, isWeakBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { unitCalled } from "../kinds.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber } from "./near.ts";

/** What is being measured one after the other: leads to ground, legs, fans. */
interface Row {
  readonly upTo: number;
  readonly name: (number: number) => {
    readonly points?: readonly string[];
    readonly subject?: string;
  };
  readonly isLast: (number: number) => boolean;
}

/** Machines of one kind on one unit; common practice, no source. */
const MACHINES = 12;

function rowOf(last: Reading | undefined): Row | undefined {
  if (last === undefined || last.rating !== undefined) return undefined;
  const [first, second] = last.points ?? [];
  const point = /^(lead |L|T)([1-3])$/.exec(first ?? "");
  if (point !== null && (second === undefined || second === "ground"))
    return {
      upTo: 3,
      name: (number) => ({
        points: second === undefined ? [`${point[1]}${number}`] : [`${point[1]}${number}`, second],
      }),
      isLast: (number) => Number(point[2]) === number,
    };
  const machine = /^(\D+ )(\d{1,2})$/.exec(last.subject ?? "");
  if (machine === null || last.points !== undefined) return undefined;
  return {
    upTo: MACHINES,
    name: (number) => ({ subject: `${machine[1]}${number}` }),
    isLast: (number) => Number(machine[2]) === number,
  };
}

function begins(items: readonly Item[], i: number): boolean {
  const before = items[i - 1];
  if (before === undefined || isStrongBreak(before) || isWeakBreak(before)) return true;
  return before.text === "so" || before.text === "now";
}

const joins =
  /^(?:both|all|came|come|comes|out|at|down|up|to|about|around|only|still|now|just|the|in|call|say|it|uh|um|like)$/;

/** Where the value stands that a verb gives to the number at `i`; -1 where none does. */
function valueAt({ items, plain }: Note, i: number): number {
  const verb = items[i + 1];
  const own = items[i];
  const said = own !== undefined && /['’]s$/.test(plain.slice(own.from, own.to));
  if (verb?.kind === itemKind.number && said) return verb.owner === undefined ? i + 1 : -1;
  if (verb === undefined || verb.kind === itemKind.number) return -1;
  // "2 and 3 same" behind fan 1
  if ((verb.roles & role.same) !== 0) return i + 1;
  const is = (verb.roles & role.is) !== 0 || /^(?:at|came|comes|both)$/.test(verb.text) || said;
  if (!is) return -1;
  for (let at = i + 1; at < items.length && at <= i + 5; at++) {
    const item = items[at];
    if (item === undefined || endsClause(item)) return -1;
    if (item.kind === itemKind.over) return at;
    if (item.kind === itemKind.number) return item.owner === undefined ? at : -1;
    if ((item.roles & role.same) !== 0) return at;
    const small = role.is | role.about | role.only | role.greater | role.less;
    if (at > i + 1 && (item.roles & small) === 0 && !joins.test(item.text)) return -1;
  }
  return -1;
}

/** A number that names the next of the row, the value that it has, and the name that it stands behind. */
interface Named {
  readonly item: Item;
  readonly number: number;
  readonly value: number;
  readonly behind?: Item;
}

/** "two and three are both 300": is the number at `i` followed by the next of the row? */
function besideIt({ items }: Note, i: number, row: Row): boolean {
  const [first, joint, other] = items.slice(i, i + 3);
  if (first === undefined || !/^(?:and|&|n|,)$/.test(joint?.text ?? "")) return false;
  if (!freeNumber(other) || other.unit !== undefined || row.isLast(other.value)) return false;
  const near = row.upTo === 3 ? other.value > first.value : other.value === first.value + 1;
  return near && other.value <= row.upTo;
}

const electric: ReadonlySet<string> = new Set(["resistance", "current", "voltage"]);

function nameIt(item: Item, named: ReturnType<Row["name"]>): void {
  if (named.points !== undefined) {
    item.kind = itemKind.points;
    item.points = [named.points];
  } else if (named.subject !== undefined) {
    item.kind = itemKind.subject;
    item.subject = named.subject;
  }
}

/** "3 reads the same as 1": the value that was read there, whatever was said since. */
function sameAs(note: Note, value: number, row: Row): void {
  const same = note.items[value];
  const digit = note.items[value + 1];
  if (same === undefined || (same.roles & role.same) === 0 || digit === undefined) return;
  const one = digit.kind === itemKind.word && digit.text === "one";
  if (!one && (!freeNumber(digit) || digit.unit !== undefined)) return;
  const number = one ? 1 : digit.value;
  if (!Number.isInteger(number) || number > row.upTo) return;
  const { points, subject } = row.name(number);
  const like = note.context.readings.findLast(
    (one) =>
      one.points?.join() === points?.join() && (subject === undefined || one.subject === subject),
  );
  if (like === undefined || typeof like.value !== "number") return;
  same.kind = itemKind.number;
  same.roles = 0;
  same.value = Number(like.figure.number);
  same.unit = unitCalled(like.figure.unit);
  same.numberTo = same.to;
  state(note, rowGoesOn.name, [value + 1, value + 2], { kind: "note", about: "place" });
}

/** "B's at 20.1" behind compressor A: the letter names the next machine, where a verb gives it a value. */
function letterGoesOn(note: Note): void {
  const { items, context } = note;
  const last = context.readings[context.readings.length - 1];
  const machine = /^(\D+ )([A-H])$/.exec(last?.points === undefined ? (last?.subject ?? "") : "");
  if (machine === null || items.some(({ kind }) => kind === itemKind.subject)) return;
  items.forEach((item, i) => {
    const letter = note.text.charAt(item.from);
    if (item.kind !== itemKind.word || !/^[b-h](?:'s)?$/.test(item.text)) return;
    if (!/^[B-H]$/.test(letter) || letter === machine[2] || !begins(items, i)) return;
    const behind = items.slice(i + 1);
    const bare =
      behind.some(({ kind }) => kind === itemKind.number) &&
      behind.every(
        ({ kind, text }) => kind === itemKind.number || /^(?:[,/&]|and|n)$/.test(text),
      ) &&
      i === 0;
    if (bare || valueAt(note, i) >= 0) nameIt(item, { subject: `${machine[1]}${letter}` });
  });
}

/** "… and three won't turn", "three's dead": how the next of the row stands, no value of it. */
function saysHow({ items, plain }: Note, i: number): boolean {
  const [item, verb, next] = items.slice(i, i + 3);
  if (verb === undefined || verb.kind === itemKind.number || next?.kind === itemKind.number)
    return false;
  const said = item !== undefined && /['’]s$/.test(plain.slice(item.from, item.to));
  const how = (verb.roles & (role.is | role.not | role.zero)) !== 0 || verb.signs !== undefined;
  return said || how;
}

const nths: ReadonlyMap<string, number> = new Map([
  ["second", 2],
  ["third", 3],
  ["fourth", 4],
]);

/** "the second one is eleven and the third one's fourteen" behind compressor 1: the next of its kind. */
function nthGoesOn(note: Note): void {
  const { items, context } = note;
  const last = context.readings[context.readings.length - 1];
  const machine = /^(\D+ )(\d)$/.exec(last?.points === undefined ? (last?.subject ?? "") : "");
  if (machine === null || items.some(({ kind }) => kind === itemKind.subject)) return;
  items.forEach((item, i) => {
    const nth = nths.get(item.text) ?? 0;
    if (nth <= Number(machine[2]) || item.owner !== undefined) return;
    const first = items[i - 1]?.text === "the" ? i - 1 : i;
    const end = items[i + 1]?.text === "one" ? i + 1 : i;
    if (begins(items, first) && valueAt(note, end) >= 0)
      nameIt(item, { subject: `${machine[1]}${nth}` });
  });
}

/**
 * "2 is 410 and 3 came in at 405" behind lead 1, "2 at 7.7, 3 at 7.6" behind fan 1: the number before
 * the verb names the next of the row that is being measured.
 */
export const rowGoesOn: Rule = {
  name: "<row> <number> is <value>",
  needs: "context",
  apply: (note) => {
    const { items, context } = note;
    letterGoesOn(note);
    nthGoesOn(note);
    const row = rowOf(context.readings[context.readings.length - 1]);
    if (row === undefined || items.some((item) => item.kind === itemKind.points)) return;
    const found: Named[] = [];
    const idle: Named[] = [];
    const named = new Set<number>();
    items.forEach((item, i) => {
      if (named.has(i) || !freeNumber(item) || item.unit !== undefined || item.fraction) return;
      if (!Number.isInteger(item.value) || item.value < 1 || item.value > row.upTo) return;
      if (item.text.includes(".") || row.isLast(item.value)) return;
      // "2 same 3 2.4"
      const nextOne = item.value === (found[found.length - 1]?.number ?? 0) + 1;
      const same = ((items[i - 1]?.roles ?? 0) & role.same) !== 0;
      if (same && nextOne && freeNumber(items[i + 1])) {
        found.push({ item, number: item.value, value: i + 1 });
        return;
      }
      if (found.some((one) => one.value === i)) return;
      // "two is 12.1 three is 12.3"
      const behind = items[i - 1]?.kind === itemKind.number;
      const next = behind && nextOne;
      if (!begins(items, i) && !(next && valueAt(note, i) >= 0)) {
        if (behind && saysHow(note, i)) idle.push({ item, number: item.value, value: -1 });
        return;
      }
      const pair = besideIt(note, i, row);
      const value = valueAt(note, pair ? i + 2 : i);
      const unit = items[value]?.unit?.dimension;
      if (value < 0 && saysHow(note, i)) idle.push({ item, number: item.value, value });
      if (value < 0 || (unit !== undefined && !electric.has(unit) && row.upTo === 3)) return;
      found.push({ item, number: item.value, value });
      const other = items[i + 2];
      if (!pair || other === undefined) return;
      named.add(i + 2);
      found.push({ item: other, number: other.value, value, behind: item });
    });
    if (new Set(found.map((one) => one.number)).size < found.length) return;
    if (found.length > 0) for (const one of idle) nameIt(one.item, row.name(one.number));
    for (const one of found) {
      const name = row.name(one.number);
      if (one.behind?.points !== undefined && name.points !== undefined) {
        // "two and three are 300": one item for both points
        one.behind.points = [...one.behind.points, name.points];
        const at = items.indexOf(one.item);
        state(note, rowGoesOn.name, [at, at + 1], { kind: "note", about: "place" });
        continue;
      }
      nameIt(one.item, name);
      sameAs(note, one.value, row);
    }
  },
};
