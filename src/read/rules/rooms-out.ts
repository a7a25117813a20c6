import { endsClause } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Fewer numbers in a row than this are no list of rooms. */
const fewest = 2;
/** Rooms by floor and number. */
const room = { from: 100, to: 9999 } as const;
const out = /^(?:warm|hot|cold|freezing|stuffy|out|down|dead)$/;
const fine = /^(?:fine|ok|okay|good)$/;
const joint = /^(?:,|\/|and|&|n)$/;
const linking = /^(?:is|are|all|still|were|stay|both)$/;

/** A whole number of a room's size. */
function isRoom(item: Item | undefined): boolean {
  return (
    item !== undefined &&
    freeNumber(item) &&
    item.unit === undefined &&
    Number.isInteger(item.value) &&
    item.value >= room.from &&
    item.value <= room.to
  );
}

interface Rooms {
  readonly indices: readonly number[];
  readonly names: readonly string[];
  readonly end: number;
}

/** The rooms from an item on: "201 202 203", "204 to 209". */
function roomsFrom(note: Note, from: number): Rooms {
  const { items } = note;
  const indices: number[] = [];
  const names: string[] = [];
  let at = from;
  for (; at < items.length; at++) {
    const item = items[at];
    if (item !== undefined && isRoom(item)) {
      const first = items[indices[indices.length - 1] ?? -1];
      const through = /^(?:to|thru|through|-)$/.test(textAt(items, at - 1)) ? first : undefined;
      if (through?.kind === itemKind.number)
        for (let each = through.value + 1; each < item.value; each++) names.push(String(each));
      names.push(item.spoken ? String(item.value) : note.text.slice(item.from, item.to));
      indices.push(at);
      continue;
    }
    const goesOn = joint.test(item?.text ?? "") || /^(?:to|thru|through|-)$/.test(item?.text ?? "");
    if (!goesOn || !isRoom(items[at + 1])) break;
  }
  return { indices, names, end: at };
}

/** What is said of the rooms behind them. */
function saidOf(items: readonly Item[], end: number): string {
  const at = linking.test(textAt(items, end)) ? end + 1 : end;
  return textAt(items, at);
}

/** "code E4 on 204 206 208": what their units show. */
function codeBefore({ items, readings }: Note, start: number): string | undefined {
  if (start < 2 || !/^(?:on|in|at)$/.test(textAt(items, start - 1))) return undefined;
  const code = readings.find(({ quantity }) => quantity === "fault_code")?.value;
  return typeof code === "string" ? code : undefined;
}

/** "code E4 on 204 206 208, 210 fine": behind the last comma those that are well. */
function shown(note: Note, { ill, code }: { readonly ill: Rooms; readonly code: string }): void {
  const { items } = note;
  const comma = items.findLastIndex(({ text }, i) => i < ill.end && text === ",");
  const well = fine.test(saidOf(items, ill.end)) && comma > (ill.indices[0] ?? 0);
  const names = ill.indices.map((index) => ({ index, name: items[index]?.text ?? "" }));
  const places = names.filter(({ index }) => !well || index < comma).map(({ name }) => name);
  const [first, last] = [items[ill.indices[0] ?? 0], items[ill.indices.at(-1) ?? 0]];
  if (first === undefined || last === undefined || places.length === 0) return;
  for (const { index } of names) {
    const item = items[index];
    if (item !== undefined) item.owner = roomsOut.name;
  }
  note.statements.push({
    kind: "complaint",
    places,
    symptom: code,
    fine: well ? names.filter(({ index }) => index > comma).map(({ name }) => name) : [],
    said: note.text.slice(first.from, last.to),
    spans: [[first.from, last.to]],
    rule: roomsOut.name,
  });
}

const namedToo =
  /^,? ?and (?:the )?([a-z]+(?: [a-z]+)?) (?:are|r) (?:all |both |still )?(?:fine|ok|okay|good)\b/;

const led =
  /^(?:(?:so|ok|okay|now|and) )*(?:the )?(?:(?:rooms?|zones?|suites?)(?: (?:that|which))?(?: (?:are|is))?(?: still)? (warm|hot|cold|freezing|stuffy|out|down|complaining)|(warm|hot|cold|stuffy) (?:rooms?|zones?|suites?|ones))(?: (?:are|is)|:) $/;

/** "the rooms that are warm are 211 213 and 215": what ails them is said first. */
function ledBy(note: Note, start: number): boolean {
  const { items, statements } = note;
  const match = led.exec(note.plain.slice(0, items[start]?.from ?? 0));
  if (match === null) return false;
  const ill = roomsFrom(note, start);
  const [first, last] = [items[start], items[ill.indices.at(-1) ?? start]];
  if (first === undefined || last === undefined) return false;
  for (const item of items.slice(0, ill.end)) item.owner ??= roomsOut.name;
  statements.push({
    kind: "complaint",
    places: [...ill.names],
    symptom: match[1] ?? match[2] ?? "",
    fine: [],
    said: note.text.slice(0, last.to),
    spans: [[0, last.to]],
    rule: roomsOut.name,
  });
  return true;
}

/** "201 thru 204 are fine, 207 too": rooms that are well and nothing said of others. */
function wellOnly(note: Note, start: number): boolean {
  const { items } = note;
  const rooms = roomsFrom(note, start);
  const [first] = rooms.indices;
  const before = items[start - 1];
  const begins = before === undefined || endsClause(before);
  if (first === undefined || rooms.names.length < fewest || !begins) return false;
  if (!fine.test(saidOf(items, rooms.end))) return false;
  const more = items.flatMap((item, i) =>
    i > rooms.end &&
    isRoom(item) &&
    /^(?:too|also|as|fine|ok|okay|good)$/.test(textAt(items, i + 1))
      ? [i]
      : [],
  );
  const used = [...rooms.indices, ...more];
  const last = items[more.length > 0 ? (used.at(-1) ?? first) : rooms.end];
  const head = items[first];
  if (head === undefined || last === undefined) return false;
  for (const index of used) {
    const item = items[index];
    if (item !== undefined) item.owner = roomsOut.name;
  }
  const others = more.map((index) => items[index]?.text ?? "");
  note.statements.push({
    kind: "complaint",
    places: [],
    symptom: "fine",
    fine: [...rooms.names, ...others],
    said: note.text.slice(head.from, last.to),
    spans: [[head.from, last.to]],
    rule: roomsOut.name,
  });
  return true;
}

/** Does a row begin here: the message, a clause of it ("here. 301 303 warm"), or behind its storey? */
function opensRow(items: readonly Item[], start: number): boolean {
  const before = items[start - 1];
  if (before === undefined) return start === 0;
  return endsClause(before) || /^(?:floor|flr|storey|level|wing)$/.test(before.text);
}

/** "201 202 203 warm since the weekend, 204 to 209 are fine": rooms by their numbers, before what ails them. */
export const roomsOut: Rule = {
  name: "<numbers> <symptom>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    if (items.some((item) => item.kind === itemKind.number && item.unit !== undefined)) return;
    const start = items.findIndex((item) => isRoom(item));
    if (start > 0 && ledBy(note, start)) return;
    if (start >= 0 && wellOnly(note, start)) return;
    const code = codeBefore(note, start);
    if (!opensRow(items, start) && code === undefined) return;
    const ill = roomsFrom(note, start);
    if (ill.indices.length < fewest) return;
    if (code !== undefined) return shown(note, { ill, code });
    const symptom = saidOf(items, ill.end);
    if (!out.test(symptom)) return;
    // "leads off, 481 480 479 down": volts, as likely as rooms
    if (start > 0 && code === undefined && /^(?:out|down|dead)$/.test(symptom)) return;
    const next = items.findIndex((item, i) => i > ill.end && isRoom(item));
    const rest = next < 0 ? undefined : roomsFrom(note, next);
    // "207 and the reading room are fine"
    const behind = items[rest?.indices.at(-1) ?? -1]?.to;
    const named = behind === undefined ? undefined : namedToo.exec(note.plain.slice(behind))?.[1];
    const isFine = rest !== undefined && fine.test(saidOf(items, rest.end));
    const well = isFine || named !== undefined ? rest : undefined;
    const used = [...ill.indices, ...(well?.indices ?? [])];
    const [first, last] = [items[start], items[(well ?? ill).end] ?? items[used.at(-1) ?? start]];
    if (first === undefined || last === undefined) return;
    for (const index of used) {
      const item = items[index];
      if (item !== undefined) item.owner = roomsOut.name;
    }
    note.statements.push({
      kind: "complaint",
      places: [...ill.names],
      symptom,
      fine: [...(well?.names ?? []), ...(named === undefined ? [] : [named])],
      said: note.text.slice(first.from, last.to),
      spans: [[first.from, last.to]],
      rule: roomsOut.name,
    });
  },
};
