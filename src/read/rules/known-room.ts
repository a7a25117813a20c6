import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** No house has more floors than such a number tells; our choice, no source. */
const highest = 9999;
const verb = /^(?:is|reads|shows|measures|sits|has|gives)$/;
const says = /^(?:says|said|thinks|tells|swears)$/;
const joint = /^(?:,|\/|and|&)$/;

/** A whole number that stands alone, as a room's does. */
function isWhole(item: Item | undefined): boolean {
  return (
    freeNumber(item) &&
    item.unit === undefined &&
    Number.isInteger(item.value) &&
    Number.isNaN(item.high) &&
    item.value >= 1 &&
    item.value <= highest &&
    !item.text.includes(".")
  );
}

function isListed({ context, text }: Note, item: Item): boolean {
  return context.rooms?.has(text.slice(item.from, item.to)) === true;
}

const between = /^(?:all|both|are|is|now|still|back|each)$/;
const states =
  /^(?:blow|blows|blowing|cool|cools|cooling|cold|warm|hot|heat|heating|dead|out|down|running|calling|satisfied|fine|ok|okay|good|working)$/;

/** "203 204 207 all blowing cold": listed rooms at the head of a clause, and how they are. */
function aheadOfState(note: Note, from: number): number | undefined {
  const { items } = note;
  const before = items[from - 1];
  if (before !== undefined && !isStrongBreak(before) && !/^(?:,|and|now|rooms?)$/.test(before.text))
    return undefined;
  let end = from;
  for (let at = from; ; at++) {
    const item = items[at];
    if (item !== undefined && isWhole(item) && isListed(note, item)) end = at + 1;
    else if (!joint.test(textAt(items, at))) break;
  }
  if (end === from) return undefined;
  let at = end;
  while (between.test(textAt(items, at))) at++;
  return states.test(textAt(items, at)) ? end : undefined;
}

const reads =
  /^(?:blow|blows|blowing|puts|putting|out|reads|reading|shows|is|at|has|gets|getting|now|:|=)$/;
/** No room's air and nothing that blows into it is less; F and Cel alike. Our choice, no source. */
const leastWarmth = 10;

/** "21 blowing 96, 22 94": a listed room at the head of a clause, and behind it its value. */
function aheadOfValue(note: Note, i: number): boolean {
  const { items } = note;
  const [before, item] = [items[i - 1], items[i]];
  if (item === undefined || !isWhole(item) || !isListed(note, item)) return false;
  if (before !== undefined && !isStrongBreak(before) && !/^(?:,|and|rooms?)$/.test(before.text))
    return false;
  let at = i + 1;
  while (reads.test(textAt(items, at))) at++;
  const value = items[at];
  if (value?.kind !== itemKind.number || value.value < leastWarmth) return false;
  const end = items[at + 1];
  return end === undefined || isStrongBreak(end) || /^(?:,|and|f|c|deg\w*)$/.test(end.text);
}

/** The rooms that a message names so: two of them at least, and one with a verb between. */
function valuedRooms(note: Note): readonly number[] {
  const found = note.items.flatMap((_, i) => (aheadOfValue(note, i) ? [i] : []));
  const told = found.some((i) => reads.test(textAt(note.items, i + 1)));
  return found.length > 1 && told ? found : found.filter((i) => isWarm(note.items, i));
}

/** "32 has 18 degrees": one room alone, where a verb and degrees say that it is none of them. */
function isWarm(items: readonly Item[], i: number): boolean {
  const value = items.slice(i + 1, i + 4).find(({ kind }) => kind === itemKind.number);
  return reads.test(textAt(items, i + 1)) && value?.unit?.dimension === "temperature";
}

/** "in 14 is 58 F": the value comes behind the verb, so the number before it is none. */
function valueBehind(items: readonly Item[], i: number): boolean {
  // "lady in 310 says it's 78 in there"
  if (says.test(textAt(items, i + 1))) return (items[i]?.value ?? 0) >= 100;
  return verb.test(textAt(items, i + 1)) && items[i + 2]?.kind === itemKind.number;
}

/**
 * "Supply air in 14 is 58 F", "same sensor in 12 reads 10.6k": a room by its number alone. The
 * office's list tells it; where there is none, the verb and the value behind it do.
 */
export const knownRooms: Rule = {
  name: "in <room number>",
  heads:
    "in|blow|blows|blowing|cool|cools|cooling|cold|warm|hot|heat|heating|dead|out|down|running|calling|satisfied|fine|ok|okay|good|working|puts|putting|reads|shows|is|at|has|gets|getting",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    const rooms = valuedRooms(note);
    const blows = rooms.map((i) => items[i + 1]).find((item) => item?.label?.place !== undefined);
    for (const i of rooms) {
      state(note, knownRooms.name, [i, i + 1], { kind: "note", about: "place" });
      // "21 blowing 96, 22 94": the same of the next
      const room = items[i];
      if (room !== undefined && blows?.label !== undefined && items[i + 1]?.label === undefined) {
        room.kind = itemKind.label;
        room.label = blows.label;
      }
    }
    items.forEach((item, i) => {
      const list = isListed(note, item) ? aheadOfState(note, i) : undefined;
      if (list !== undefined) {
        state(note, knownRooms.name, [i, list], { kind: "note", about: "place" });
        return;
      }
      if (textAt(items, i - 1) !== "in" || !isWhole(item)) return;
      if (!isListed(note, item) && !valueBehind(items, i)) return;
      let end = i + 1;
      while (joint.test(textAt(items, end)) && isWhole(items[end + 1])) {
        const next = items[end + 1];
        if (next === undefined || !isListed(note, next)) break;
        end += 2;
      }
      state(note, knownRooms.name, [i, end], { kind: "note", about: "place" });
    });
  },
};
