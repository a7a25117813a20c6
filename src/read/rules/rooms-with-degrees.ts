import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { lived } from "../rooms-air.ts";
import { role } from "../word.ts";
import { freeNumber, textAt } from "./near.ts";

/** Rooms by floor and number. Common practice, no source. */
const rooms = { from: 100, to: 9999 };

const small = /^(?:fine|ok|okay|good|happy|'|s|:|=|-|at|is|are|was|reads|reading|around|about|,)$/;

/** "204", "room 204" */
function isRoom(item: Item | undefined): boolean {
  if (item?.kind === itemKind.subject)
    return item.owner === undefined && /^rooms?$/.test(item.text);
  if (!freeNumber(item) || item.unit !== undefined || !Number.isInteger(item.value)) return false;
  return item.value >= rooms.from && item.value <= rooms.to && Number.isNaN(item.high);
}

/** The number of a room straight before how warm it is: where the warmth stands; 0 for none. */
function degreesOf({ items, context }: Note, i: number): number {
  if (!isRoom(items[i])) return 0;
  let at = i + 1;
  while (at < i + 5 && (small.test(textAt(items, at)) || items[at]?.roles === role.is)) at++;
  const degrees = items[at];
  const [least, most] = lived[context.units];
  if (!freeNumber(degrees) || degrees.value < least || degrees.value > most) return 0;
  const unit = degrees.unit?.dimension;
  return unit === undefined || unit === "temperature" ? at : 0;
}

/** "rooms 308 and 319 cold, 308 is at 85": one of those that were listed. */
function isNamedTwice({ items, plain }: Note, i: number): boolean {
  const room = items[i];
  if (room?.kind !== itemKind.number || textAt(items, i + 1) === "") return false;
  return items.slice(0, i).some(({ kind, unit, value, from, to }) => {
    if (kind === itemKind.number) return unit === undefined && value === room.value;
    return kind === itemKind.subject && plain.slice(from, to).endsWith(` ${room.text}`);
  });
}

const joint = /^(?:,|;|and|&|n|then|but)$/;

/**
 * "rooms are 204 81, 206 83 and 210 84": each room by its number alone, with its warmth; at least
 * two such pairs in a row, where rooms are spoken of or were named before on the job.
 */
export const roomsWithDegrees: Rule = {
  name: "<room> <degrees>, <room> <degrees>",
  needs: "number",
  apply: (note) => {
    const { items, context } = note;
    const spoken = items.some(({ text }) =>
      /^(?:room|rooms|rm|rms|temps|suites|apts|apartments)$/.test(text),
    );
    if (!spoken && (context.rooms?.size ?? 0) === 0) return;
    for (let i = 0; i < items.length; i++) {
      const pairs: number[] = [];
      let at = i;
      for (let end = degreesOf(note, at); end > 0; end = degreesOf(note, at)) {
        pairs.push(at);
        at = end + 1;
        while (joint.test(textAt(items, at)) || items[at]?.kind === itemKind.line) at++;
      }
      if (pairs.length === 0 || (pairs.length === 1 && !isNamedTwice(note, i))) continue;
      for (const room of pairs)
        state(note, roomsWithDegrees.name, [room, room + 1], { kind: "note", about: "place" });
      i = at - 1;
    }
  },
};
