import { isStrongBreak, isWeakBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Shorter numbers are as often readings; our choice, no source. */
const SHORTEST = 100;
/** Letters of a message; what is longer is no line about rooms, and each number would look through all of it. */
const LONGEST = 600;
const leads = /^(?:in|on|at|for|of|to|room|rm)$/;
const goesOn =
  /^(?:is|are|was|were|has|had|blowing|blows|reads|reading|shows|gets|getting|got|still|now|supply|return|sup|ret|rtn|disch|dis|discharge|leaving|eev|exv|coil|fine|ok|okay|good|warm|hot|cold|cool|cooling|out|dead)$/;

/** "room 310 is 78, 312 is 71": a room of as many digits was named in this message. */
function namedBeside({ plain }: Note, item: Item): boolean {
  if (plain.length > LONGEST) return false;
  const room = /\b(?:room|rm) (\d{3,4})\b/.exec(plain);
  return (
    room?.[1] !== undefined && room.index < item.from && room[1].length === item.to - item.from
  );
}

/** A number that a message before has called a room's. */
function isRoom(note: Note, item: Item | undefined): boolean {
  return (
    freeNumber(item) &&
    item.unit === undefined &&
    Number.isNaN(item.high) &&
    (item.value >= SHORTEST || opensClause(note, item)) &&
    (note.context.rooms?.has(String(item.value)) === true || namedBeside(note, item))
  );
}

const tellsOf =
  /^ (?:is|blowing|blows|reads|reading|shows) (?:still |now |at )?(?:\d|open\b|ol\b|dead\b|shorted\b|cold\b|warm\b|hot\b)/;

/** "14 is 101 now", "sorry 15 is open too": a room of two digits that the office lists, first in its clause. */
function opensClause({ items, plain }: Note, item: Item): boolean {
  const before = items[items.indexOf(item) - 1];
  const first =
    before === undefined ||
    isStrongBreak(before) ||
    isWeakBreak(before) ||
    /^(?:,|sorry|and|no|now|oops|wait|actually)$/.test(before.text);
  return first && tellsOf.test(plain.slice(item.to, item.to + 40));
}

/** Does what stands behind it speak of a room: a verb, an air's place, a figure unlike it? */
function speaksOn(note: Note, i: number): boolean {
  const { items } = note;
  const [item, next] = [items[i], items[i + 1]];
  if (item === undefined) return false;
  if (item.apostrophe || /^'s\b/.test(note.plain.slice(item.to, item.to + 3))) return true;
  if (goesOn.test(textAt(items, i + 1))) return true;
  const figure = freeNumber(next) && !isRoom(note, next) && next.value < item.value / 2;
  return figure && (next.unit === undefined || next.unit.dimension === "temperature");
}

const joint = /^(?:and|&|,|plus)$/;
const ofSeveral = /^(?:same|share|shares|both|all|on|feed|fed|hang|hangs)$/;

/** "206 and 208 same box", "204, 206 both warm": known rooms in a row, and what they have in common. */
function severalEnd(note: Note, i: number): number {
  const { items } = note;
  let end = i + 1;
  while (joint.test(textAt(items, end)) && isRoom(note, items[end + 1])) end += 2;
  const said = textAt(items, end);
  return end > i + 1 && (ofSeveral.test(said) || goesOn.test(said)) ? end : i;
}

/** "206 and 208 same box, 210 on box 1": one more of the floor, beside rooms that are known. */
function besideKnown(note: Note, i: number): boolean {
  const { items } = note;
  const item = items[i];
  if (!freeNumber(item) || item.unit !== undefined || !/^[1-9]\d{2,3}$/.test(item.text))
    return false;
  if (textAt(items, i + 1) !== "on" || !/^(?:box|bb)\b/.test(textAt(items, i + 2))) return false;
  return [...(note.context.rooms ?? [])].some((room) => room.length === item.text.length);
}

/** "204's blowing 54", "206 supply 55 return 76", "EEV on 204 stuck": a room that was named before. */
export const roomFirst: Rule = {
  name: "<room named before>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (item.kind !== itemKind.number) return;
      if (besideKnown(note, i)) {
        state(note, roomFirst.name, [i, i + 1], { kind: "note", about: "place" });
        return;
      }
      if (!isRoom(note, item)) return;
      const end = severalEnd(note, i);
      for (let at = i; at < end; at++)
        if (items[at]?.kind === itemKind.number)
          state(note, roomFirst.name, [at, at + 1], { kind: "note", about: "place" });
      if (end > i) return;
      const before = items[i - 1];
      const first = before === undefined || isStrongBreak(before) || isWeakBreak(before);
      if (!leads.test(textAt(items, i - 1)) && !(first && speaksOn(note, i))) return;
      state(note, roomFirst.name, [i, i + 1], { kind: "note", about: "place" });
    });
  },
};
