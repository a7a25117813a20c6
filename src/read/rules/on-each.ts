import { type Item, itemKind } from "../item.ts";
import type { Label } from "../label.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber, isOrdinalUpTo, textAt } from "./near.ts";

/** No house has more floors than such a number tells; our choice, no source. */
const highest = 9999;
/** From here on a number is a room's by its floor; below it a machine's in a row. Our choice, no source. */
const firstFloor = 100;
const measured: ReadonlySet<string> = new Set([
  "superheat",
  "subcooling",
  "valve_steps",
  "valve_opening",
  "current",
  "temperature_difference",
]);

interface Told {
  /** where the name of the machine or room stands, and where its value does */
  readonly name: number;
  readonly value: number;
  /** the verb, the preposition or the apostrophe made it a name */
  readonly said: boolean;
}

function headOf(items: readonly Item[], i: number): Label | undefined {
  const item = items[i];
  if (item?.kind === itemKind.unit && item.unit?.dimension === "current")
    return { quantity: "current" };
  const { label } = item ?? {};
  return label?.quantity !== undefined && measured.has(label.quantity) ? label : undefined;
}

/** Where the value of the name at `i` stands, past "'s", "is", "at"; and whether one of those was said. */
function valueBehind({ items, plain }: Note, i: number): Told | undefined {
  const item = items[i];
  // "114s at 8": the apostrophe that a thumb leaves out
  const seconds = item?.unit?.figure === "s" && item.to === item.unitFrom + 1;
  const own = item !== undefined && /['’]s$/.test(plain.slice(item.from, item.to));
  let at = i + 1;
  if (textAt(items, at) === "'" && textAt(items, at + 1) === "s") at += 2;
  const typed = at > i + 1;
  while (((items[at]?.roles ?? 0) & role.is) !== 0 || /^(?:at|@|:|=)$/.test(textAt(items, at)))
    at++;
  const value = items[at];
  const verb = at > i + (typed ? 3 : 1);
  if (at > i + 5 || !freeNumber(value) || (seconds && !verb)) return undefined;
  return { name: i, value: at, said: own || typed || verb };
}

/** The bare whole number of a machine or a room; "114s" has no seconds where a verb follows. */
function isName(item: Item | undefined): item is Item {
  if (item?.unit?.figure !== "s" || item.to !== item.unitFrom + 1)
    return isOrdinalUpTo(item, highest) && Number.isNaN(item.high) && !item.text.includes(".");
  return freeNumber(item) && Number.isInteger(item.value) && item.value <= highest;
}

/** "on 3 is 2", "iu118 is 19", "114 is 210": the first that the head is told of. */
function firstOf(note: Note, i: number): Told | undefined {
  const { items, context } = note;
  const at = /^(?:on|in|for|of)$/.test(textAt(items, i)) ? i + 1 : i;
  const item = items[at];
  if (item?.kind === itemKind.subject) return valueBehind(note, at);
  if (!isName(item) || item.unit !== undefined) return undefined;
  const told = valueBehind(note, at);
  if (told === undefined || (at > i && !told.said)) return undefined;
  if (at > i || context.rooms?.has(textAt(items, at)) === true) return told;
  const verb = ((items[at + 1]?.roles ?? 0) & role.is) !== 0;
  return verb && item.value >= firstFloor ? told : undefined;
}

/** ", 4's at 9", "and on 4 9", "n 121 190": the next that has a value of the same. */
function nextOf(note: Note, from: number, first: Item | undefined): Told | undefined {
  const { items } = note;
  let at = from + 1;
  while (/^(?:,|and|n|&|;|but)$/.test(textAt(items, at))) at++;
  const on = /^(?:on|in|for)$/.test(textAt(items, at));
  if (on) at++;
  const item = items[at];
  if (!isName(item)) return undefined;
  const told = valueBehind(note, at);
  if (told === undefined) return undefined;
  const bothRooms = item.value >= firstFloor && (first?.value ?? 0) >= firstFloor;
  return told.said || on || (bothRooms && at > from + 1) ? told : undefined;
}

/** The number names the next one, and the head is said again with it. */
function rename(note: Note, { name }: Told, first: Item, label: Label, head: Item): void {
  const item = note.items[name];
  if (item === undefined) return;
  const family = /^(.*?)\d+$/.exec(
    first.kind === itemKind.subject ? (first.subject ?? "") : "",
  )?.[1];
  const number = String(item.value);
  item.unit = undefined;
  if (family !== undefined) {
    item.kind = itemKind.subject;
    item.subject = family + number;
    return;
  }
  state(note, onEach.name, [name, name + 1], { kind: "note", about: "place" });
  item.kind = head.kind;
  item.text = head.text;
  item.unit = head.unit;
  item.label = label;
}

/**
 * "sh on 3 is 2, 4's at 9", "eev on 114 is 210 n 121 190", "sh on iu118 is 19 114s at 8": one thing
 * measured on several machines or rooms that are told by their numbers, which are no values.
 */
export const onEach: Rule = {
  name: "<thing> on <number> is <value>, <number> is <value>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((head, i) => {
      const label = headOf(items, i);
      const told = label === undefined ? undefined : firstOf(note, i + 1);
      const first = told === undefined ? undefined : items[told.name];
      if (label === undefined || told === undefined || first === undefined) return;
      const rest: Told[] = [];
      for (
        let next = nextOf(note, told.value, first);
        next !== undefined;
        next = nextOf(note, next.value, first)
      )
        rest.push(next);
      if (rest.length === 0) return;
      if (first.kind !== itemKind.subject)
        state(note, onEach.name, [told.name, told.name + 1], { kind: "note", about: "place" });
      for (const one of rest) rename(note, one, first, label, head);
    });
  },
};
