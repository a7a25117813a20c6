import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber } from "./near.ts";

/** Machines of one kind on one unit; common practice, no source. */
const MACHINES = 16;

interface Named {
  readonly numbers: readonly number[];
  readonly end: number;
}

function ordinal(item: Item | undefined): item is Item {
  return (
    freeNumber(item) &&
    item.unit === undefined &&
    !item.fraction &&
    Number.isInteger(item.value) &&
    !item.text.includes(".") &&
    item.value >= 1 &&
    item.value <= MACHINES
  );
}

/** "one two and three": said without a comma, up to the "and". */
function bareList(items: readonly Item[], at: number): boolean {
  const [one, joint, last] = [items[at], items[at + 1], items[at + 2]];
  if (!ordinal(one) || joint?.text !== "and" || !ordinal(last)) return false;
  return last.value === one.value + 1;
}

/** "comps 1 2 4 pulling 31.2 30.8 32": numbers in any rising order, where as many values follow a word. */
function bareNumbers(items: readonly Item[], from: number, first: number): number[] {
  const numbers = [first];
  let at = from;
  for (let next = items[at]; ordinal(next) && next.text.length <= 2; next = items[at]) {
    if (next.value <= (numbers.at(-1) ?? 0)) return [];
    numbers.push(next.value);
    at++;
  }
  const row = rowBehind(items, at);
  const apart = row[0] !== undefined && row[0] > at;
  return apart && numbers.length > 2 && row.length === numbers.length ? numbers : [];
}

/** "comps 1-4", "fans one, two and three", "comps 1 2 3": the numbers behind the first. */
function numbersBehind(items: readonly Item[], i: number, first: number, plural: boolean): Named {
  const numbers = [first];
  let end = i + 1;
  const bareRow = plural ? bareNumbers(items, end, first) : [];
  if (bareRow.length > 0) return { numbers: bareRow, end: i + bareRow.length };
  for (;;) {
    let at = end;
    while (/^(?:,|and|&|\/)$/.test(items[at]?.text ?? "") && at < end + 2) at++;
    const through = /^(?:-|to|thru|through)$/.test(items[at]?.text ?? "");
    const next = items[through ? at + 1 : at];
    const last = numbers[numbers.length - 1] ?? first;
    const bare = plural && ordinal(next) && next.value === last + 1 && next.text.length <= 2;
    const listed = at > end || through || bare || (numbers.length + 1 < 4 && bareList(items, at));
    if (!listed || !ordinal(next) || next.value <= last) break;
    if (through) for (let one = last + 1; one < next.value; one++) numbers.push(one);
    numbers.push(next.value);
    end = (through ? at + 1 : at) + 1;
  }
  return { numbers, end };
}

/** The values of the first row behind: numbers with nothing but strokes, commas and "and" between. */
function rowBehind(items: readonly Item[], from: number): number[] {
  const row: number[] = [];
  for (let i = from; i < items.length && i < from + 24; i++) {
    const item = items[i];
    if (item === undefined || isStrongBreak(item)) break;
    if (item.kind === itemKind.number && item.owner === undefined) {
      // "at 500: 620 and 48": what they were tested with
      const tested = /^(?:at|@)$/.test(items[i - 1]?.text ?? "") && items[i + 1]?.text === ":";
      if (row.length === 0 && tested) continue;
      row.push(i);
      continue;
    }
    const joint = /^(?:,|\/|and|&)$/.test(item.text);
    if (row.length > 0 && item.kind !== itemKind.unit && !joint) break;
    if (row.length === 0 && item.text === ",") break;
    if (item.kind === itemKind.subject || item.kind === itemKind.points) break;
  }
  return row;
}

/** "sh 4 6 4 5 ckts 1-4": the values that stand right before the names. */
function rowAhead(items: readonly Item[], last: number): number[] {
  const row: number[] = [];
  for (let i = last; i >= 0; i--) {
    const item = items[i];
    if (item?.kind !== itemKind.number || item.owner !== undefined) break;
    row.unshift(i);
  }
  return row;
}

function isPlural(note: Note, item: Item): boolean {
  return /s\s*#?\s*\w+$/.test(note.plain.slice(item.from, item.to));
}

/** "comps 1-4", "compressors one and two": several by their noun; one more is next to the first. */
function several(note: Note, item: Item, { numbers, end }: Named): boolean {
  if (isPlural(note, item)) return true;
  if (numbers.length === 2 && numbers[1] === (numbers[0] ?? 0) + 1) return true;
  // "fan 1 and 3 1.6a"
  const value = note.items[end];
  return numbers.length === 2 && value?.kind === itemKind.number && value.unit !== undefined;
}

/** The legs of a motor lie near each other; our choice, no source. */
const mostApart = 1.3;

/** How many values each of so many machines has: one, or its three legs, near each other; 0 where they don't go up. */
function ofEach(items: readonly Item[], row: readonly number[], machines: number): number {
  if (row.length === machines) return 1;
  if (machines < 2 || row.length !== machines * 3) return 0;
  const values = row.map((at) => items[at]?.value ?? Number.NaN);
  const legs = Array.from({ length: machines }, (_, i) => values.slice(i * 3, i * 3 + 3));
  const even = legs.every((three) => Math.max(...three) <= Math.min(...three) * mostApart);
  return even ? 3 : 0;
}

/** Names the values one each; where there are others the numbers are names alone. */
function assign(note: Note, noun: string, named: Named, from: number): void {
  const behind = rowBehind(note.items, named.end);
  const row = behind.length > 0 ? behind : rowAhead(note.items, from - 2);
  const [only] = row;
  const last = note.items[named.end - 1];
  if (row.length === 1 && only === named.end && named.numbers.length === 2 && last !== undefined) {
    // "fans 1 and 3 1.6 amps": one value for both
    last.kind = itemKind.subject;
    last.subject = `${noun}${named.numbers[1]}`;
    return;
  }
  const each = ofEach(note.items, row, named.numbers.length);
  if (each > 0)
    row.forEach((at, order) => {
      const value = note.items[at];
      const number = named.numbers[Math.floor(order / each)];
      if (value !== undefined) value.subject = `${noun}${number}`;
    });
  state(note, subjectRows.name, [from, named.end], { kind: "note", about: "place" });
}

/** "comp A and comp B 14 and 15": names with nothing but a joint between, up to the last of them. */
function namesFrom(items: readonly Item[], i: number): readonly number[] {
  const names = [i];
  for (let at = i + 1; at < items.length; at++) {
    const item = items[at];
    if (item?.kind === itemKind.subject && item.subject !== "" && item.owner === undefined)
      names.push(at);
    else if (item === undefined || !/^(?:,|and|&|\/|n)$/.test(item.text)) break;
  }
  return names;
}

/** Values of one kind: no amps beside volts. */
function alike(items: readonly Item[], row: readonly number[]): boolean {
  const units = row.map((at) => items[at]?.unit?.dimension).filter((unit) => unit !== undefined);
  return new Set(units).size < 2;
}

/** "both at 22 A, 3 is off": one value for all of them, or a number that begins a clause of its own. */
function ofAll(items: readonly Item[], last: number, row: readonly number[]): boolean {
  const [first] = row;
  const end = row[row.length - 1];
  if (first === undefined || end === undefined) return true;
  const between = items.slice(last + 1, first);
  if (between.some((item) => (item.roles & (role.all | role.each | role.same)) !== 0)) return true;
  return ((items[end + 1]?.roles ?? 0) & role.is) !== 0;
}

/** "RTU 4, ckt 1 104/416": a unit and then its own circuit, no two machines. */
function partOfFirst(items: readonly Item[], names: readonly number[]): boolean {
  const parts = names.map((at) =>
    /^(?:compressor|circuit|system|stage) /.test(items[at]?.subject ?? ""),
  );
  return parts[0] === false && parts[1] === true;
}

/** Each of the machines named in a row has its own of as many values; the later names say no more. */
function eachItsOwn(note: Note, i: number): void {
  const { items } = note;
  const names = namesFrom(items, i);
  const last = names[names.length - 1] ?? i;
  if (names.length < 2 || partOfFirst(items, names)) return;
  const row = rowBehind(items, last + 1);
  const each = ofEach(items, row, names.length);
  if (each === 0 || !alike(items, row) || ofAll(items, last, row)) return;
  row.forEach((at, order) => {
    const value = items[at];
    const name = items[names[Math.floor(order / each)] ?? i]?.subject;
    if (value !== undefined && name !== undefined) value.subject = name;
  });
  state(note, subjectRows.name, [i + 1, last + 1], { kind: "note", about: "place" });
}

const stands =
  /^(?:dead|off|out|down|stopped|seized|running|good|fine|ok|bad|noisy|loud|not|isnt|wont|doesnt)$/;

/** "fans one and two running three dead": the next of them by its number, and how it is. */
function nextStands({ items }: Note, noun: string, named: Named): void {
  const last = named.numbers.at(-1) ?? 0;
  for (let i = named.end; i < Math.min(items.length, named.end + 6); i++) {
    const [before, item, how] = [items[i - 1], items[i], items[i + 1]];
    if (item === undefined || isStrongBreak(item)) return;
    if (!ordinal(item) || !stands.test(how?.text ?? "")) continue;
    const value = (before?.roles ?? 0) & (role.is | role.preposition);
    if (i === named.end || value !== 0 || before?.label?.hint !== undefined) continue;
    if (before?.label?.quantity !== undefined || item.value <= last || item.value > last + 2)
      continue;
    item.kind = itemKind.subject;
    item.subject = `${noun}${item.value}`;
  }
}

/** "…, 1 and 4 drawing 27.5 and 27.9": the same noun goes on behind a comma. */
function goesOn(note: Note, noun: string, i: number): void {
  const { items } = note;
  const item = items[i];
  if (!ordinal(item) || items[i - 1]?.text !== ",") return;
  const named = numbersBehind(items, i, item.value, false);
  const verb = items[named.end];
  if (named.numbers.length < 2 || verb === undefined) return;
  if (verb.kind !== itemKind.label && verb.kind !== itemKind.word) return;
  if (rowBehind(items, named.end).length !== named.numbers.length) return;
  assign(note, noun, named, i);
}

/** "comps 1-4 pulling 14.8 15.1 14.6 and 0": as many values as machines were numbered, one each. */
export const subjectRows: Rule = {
  name: "<machines> <numbers> <values>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    let noun = "";
    items.forEach((item, i) => {
      if (noun !== "") goesOn(note, noun, i);
      if (item.kind === itemKind.subject && item.subject !== "" && item.owner === undefined)
        eachItsOwn(note, i);
      const found = /^(\D+ )(\d{1,2})$/.exec(item.subject ?? "");
      if (item.kind !== itemKind.subject || found === null) return;
      const named = numbersBehind(items, i, Number(found[2]), isPlural(note, item));
      if (named.numbers.length < 2 || !several(note, item, named)) return;
      noun = found[1] ?? "";
      assign(note, noun, named, i + 1);
      nextStands(note, noun, named);
    });
  },
};
