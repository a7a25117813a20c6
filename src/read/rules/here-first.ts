import { isStrongBreak, isWeakBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";
import { carries, signIndex } from "../signs.ts";
import { isWhole } from "./whole-machine.ts";

const hereSign = signIndex("here");
const agoSign = signIndex("ago");

/** "Roof at 9:05", "on the roof 8:10": where one is and since when, said first. */
function roofAndTime(items: readonly Item[]): boolean {
  const at = items.findIndex((item) => item.text === "roof");
  if (at < 0 || at > 3) return false;
  if (!items.slice(0, at).every((item) => /^(?:im|up|on|the|now)$/.test(item.text))) return false;
  const next = items[at + 1];
  const time =
    next?.text === "at" || next?.text === "@" || next?.text === "since" ? items[at + 2] : next;
  return time?.kind === itemKind.number && time.colon;
}

/** "7:15 here", "8:05 here, …": the hour said first, and the word ends its clause. */
function hourThenHere(items: readonly Item[]): boolean {
  const [hour, here, next] = items;
  if (hour?.kind !== itemKind.number || !hour.colon || !carries(here, hereSign)) return false;
  return next === undefined || next.kind === itemKind.sign || next.kind === itemKind.line;
}

/** "here gull wharf": words that nothing here knows are a place's name. */
function isName(item: Item): boolean {
  const plain = item.kind === itemKind.word && item.roles === 0 && item.signs === undefined;
  return plain && item.text.length > 3 && !/^(?:goes|comes|hoping)$/.test(item.text);
}

/** "here with Osk", "here with the board": not "here with the numbers". */
function bringsOrMeets(items: readonly Item[]): boolean {
  const words = items.slice(2, 6).map(({ text }) => text);
  return (
    words.length > 0 &&
    items[2]?.kind !== itemKind.number &&
    !words.some((word) =>
      /^(?:numbers?|readings?|question|update|news|results?|problem|values?)$/.test(word),
    )
  );
}

/** "here 8:05", "here, parked by dock 3": said first, it is an arrival. */
export function hereFirst(note: Note): boolean {
  const { items } = note;
  if (note.holds.mark) return false;
  // "ok here hp 3 frosted"
  if (/^(?:ok|okay|alright|so|yep|well)$/.test(items[0]?.text ?? "") && carries(items[1], hereSign))
    return hereFirst({ ...note, items: items.slice(1) });
  if (roofAndTime(items) || hourThenHere(items) || hereAgo(items) >= 0) return true;
  if (!carries(items[0], hereSign)) return false;
  const next = items[1];
  return (
    next === undefined ||
    next.kind === itemKind.number ||
    next.kind === itemKind.sign ||
    next.kind === itemKind.line ||
    next.text === "at" ||
    next.text === "since" ||
    /^(?:now|just|too|also|as|again)$/.test(next.text) ||
    (/^(?:about|around|abt)$/.test(next.text) && items[2]?.unit?.dimension === "time") ||
    (next.text === "with" && bringsOrMeets(items)) ||
    (next.text === "to" &&
      /^(?:help|give|assist|lend|relieve|pitch|swap)$/.test(items[2]?.text ?? "")) ||
    isWhole(next) ||
    (items.length <= 3 && items.slice(1).every(isName)) ||
    // "here wren rtu 4"
    (items.length <= 4 &&
      items.length > 2 &&
      items.slice(1, -1).every(isName) &&
      isWhole(items.at(-1)))
  );
}

/** "sh 8, here 20 min ago": where the word stands that begins its clause; -1 for none. */
function hereAgo(items: readonly Item[]): number {
  return items.findIndex((item, i) => {
    const before = items[i - 1];
    const begins = before === undefined || isStrongBreak(before) || isWeakBreak(before);
    if (!carries(item, hereSign) || !begins) return false;
    const time = /^(?:about|around|abt)$/.test(items[i + 1]?.text ?? "") ? i + 2 : i + 1;
    return items[time]?.unit?.dimension === "time" && carries(items[time + 1], agoSign);
  });
}

/** Where the word of it stands: behind an hour or an assent, else it is the first. */
export function hereAt({ items }: Note): number {
  if (hereAgo(items) >= 0) return hereAgo(items);
  return Math.max(
    0,
    items.slice(0, 2).findIndex((item) => carries(item, hereSign)),
  );
}
