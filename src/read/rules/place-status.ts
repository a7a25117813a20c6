import { isStrongBreak, isWeakBreak } from "../breaks.ts";
import { type Item, isOneWord, itemKind } from "../item.ts";
import type { Note } from "../note.ts";
import { clockAt } from "../times.ts";
import { role } from "../word.ts";
import { isWhole } from "./whole-machine.ts";

const building =
  /^(?:gate|gates|door|doors|building|site|store|shop|place|museum|school|church|hatch|office|penthouse|room|lobby|everything|fence|yard|dock|front|entrance|roof|ladder|mall|library|clinic|bakery)$/;

/** A word that nothing here knows: perhaps the name of a place. */
function unknown(item: Item | undefined): boolean {
  return (
    item !== undefined &&
    item.kind === itemKind.word &&
    item.roles === 0 &&
    item.label === undefined &&
    item.signs === undefined
  );
}

/** Where people work, as they call it; no part of a machine is called so. */
const workplace =
  /^(?:dental|dentist|dentist's|daycare|hotel|bank|chapel|dairy|market|hospital|restaurant|diner|gym|warehouse|plant|theater|theatre|hall|pub|bar|motel|inn|house|cafe|kitchen|lab|brewery|garage|station|arena|rink|pool|court|courthouse|lanes)$/;

const ends = (item: Item | undefined): boolean => item?.kind !== itemKind.word;

/** Words that say that he goes. */
const goes = /^(?:leaving|heading|headed|rolling|gone|off|packing|left)$/;

/** "done, leaving", "done heading out": and nothing that is left behind. */
function goesNow(items: readonly Item[], i: number): boolean {
  const at = items[i + 1]?.kind === itemKind.word ? i + 1 : i + 2;
  const next = items[at + 1];
  return (
    goes.test(items[at]?.text ?? "") &&
    (next?.kind !== itemKind.word || /^(?:now|out|here|site|home|for)$/.test(next.text))
  );
}

/** What is worked at, and no place: "recovery's done, leaving". */
const work =
  /ing$|^(?:recovery|vac|vacuum|evac|pump|test|defrost|hold|leak|pressure|charge|job|filters?|belts?|coils?|meg|everything)$/;

/** "library's done, leaving", "rtu-2's finished": the place or the machine, not a part of the work. */
export function placeDone(items: readonly Item[], i: number): boolean {
  if (!/^(?:done|finished|complete)$/.test(items[i]?.text ?? "")) return false;
  const [is, before, machine] = [items[i - 1], items[i - 2], items[i - 3]];
  const next = goesNow(items, i);
  if (!ends(items[i + 1]) && !next) return false;
  if (is?.text === "s" && before?.text === "'") return isWhole(machine);
  const short = is?.apostrophe === true || is?.text.endsWith("'s") === true;
  const place = is?.text === "is" ? before : short ? is : undefined;
  if (place === undefined) return false;
  const name = place.text.replace(/'?s$/, "");
  // "otterby's done, leaving": who goes tells of the place, whatever it is called
  if (
    next &&
    (/^(?:one|unit|job|call)$/.test(name) || (is === place && unknown(place) && !work.test(name)))
  )
    return true;
  if (/^(?:gates?|doors?|hatch|fence|ladder|front|entrance|roof|everything|dock|yard)$/.test(name))
    return false;
  return building.test(name) || building.test(place.text) || workplace.test(name);
}

/** "recovery's done", "done pumping": the work is, the job is not. */
export function workDone(items: readonly Item[], i: number): boolean {
  if (items[i]?.text !== "done" && items[i]?.text !== "finished") return false;
  const [before, next] = [items[i - 1], items[i + 1]?.text ?? ""];
  if (/..ing$/.test(next) && !/^(?:leav|head|roll|pack|go|com|pull|clean)/.test(next)) return true;
  const name = before?.text.replace(/'?s$/, "") ?? "";
  return before?.apostrophe === true && work.test(name) && !/^(?:job|everything)$/.test(name);
}

/** "museum is locked": a place, not the disconnect; index of the word, or -1. */
export function lockedPlace(note: Note): number {
  const { items } = note;
  if (note.holds.mark) return -1;
  return items.findIndex((item, i) => {
    if (!/^(?:locked|closed|shut|chained)$/.test(item.text) || item.kind === itemKind.number)
      return false;
    let at = i - 1;
    while (
      at > 0 &&
      /^(?:is|was|are|were|its|all|still|up|already|now)$/.test(items[at]?.text ?? "")
    )
      at--;
    if (at === i - 1) return false;
    // "i think its locked": no place was named
    if (items.slice(at + 1, i).some(({ text }) => /^it'?s$/.test(text))) return false;
    const place = items[at];
    if (place !== undefined && building.test(place.text)) return true;
    return item.text === "locked" && unknown(place) && at <= 2;
  });
}

/** "buttoned up n left 4:15pm", "fixed it, left at 3:25": behind what was done the hour he left; or -1. */
export function leftBehind({ items, holds }: Note): number {
  if (holds.mark) return -1;
  return items.findIndex((item, i) => {
    if (!/^(?:left|gone)$/.test(item.text) || item.owner !== undefined) return false;
    const before = items[i - 1];
    const joined = /^(?:,|n|and|&|then)$/.test(before?.text ?? "");
    if (before !== undefined && !joined && before.colon !== true && before.signs === undefined)
      return false;
    const next = /^(?:at|@|around|about)$/.test(items[i + 1]?.text ?? "") ? i + 2 : i + 1;
    return items[next]?.colon === true && clockAt(items, next, true) !== undefined;
  });
}

/** "out 1510", "out at 15:10": said first, with an hour that no air is as warm as. */
function outAt(items: readonly Item[]): boolean {
  const [out, next] = items;
  if (out?.text !== "out" || !isOneWord(out)) return false;
  const number = items[next?.text === "at" ? 2 : 1];
  const hour = number?.colon === true || (number?.value ?? 0) >= 600;
  if (number?.kind !== itemKind.number || number.unit !== undefined || !hour) return false;
  return clockAt(items, items.indexOf(number), true) !== undefined;
}

/** "10:45 left, amps 13", "half past five left": the time before the word, and nothing behind it that was left. */
function leftThen(items: readonly Item[], i: number): boolean {
  if (items[i]?.text !== "left" || items[i]?.owner !== undefined) return false;
  const next = items[i + 1];
  const ends =
    next === undefined || isStrongBreak(next) || isWeakBreak(next) || /^[-–]$/.test(next.text);
  return ends && [i - 4, i - 3, i - 2, i - 1].some((at) => clockBefore(items, at, i));
}

/** A clock's time that begins its clause and ends where the word stands. */
function clockBefore(items: readonly Item[], at: number, end: number): boolean {
  const before = items[at - 1];
  if (at < 0 || (before !== undefined && !isStrongBreak(before) && !isWeakBreak(before)))
    return false;
  // "two thirty left, two ten right" are volts
  const told = items[at]?.colon === true || end > at + 1;
  return told && clockAt(items, at, items[at]?.spoken === true)?.end === end;
}

/** "left", "left, 2 hrs": the word alone, or with the hours of the visit; no side of anything. */
function leftFirst({ items, context, holds }: Note): boolean {
  const [left, mark, hours, next] = items;
  if (left?.text !== "left" || !isOneWord(left) || holds.mark || context.open !== undefined)
    return false;
  if (mark === undefined) return true;
  const parted = isWeakBreak(mark) || isStrongBreak(mark) || mark.text === ",";
  const ends = next === undefined || isStrongBreak(next) || next.text === "total";
  return parted && (hours === undefined || (hours.unit?.figure === "h" && ends));
}

/** "left the bakery at 10:15": a name and a clock time behind "left"; index of the word, or -1. */
export function leftPlace(note: Note): number {
  const { items } = note;
  if (outAt(items) || leftFirst(note)) return 0;
  const told = items.findIndex((_, i) => leftThen(items, i));
  if (told >= 0 && !note.holds.mark) return told;
  const at = items.findIndex((item) => item.text === "left" && item.owner === undefined);
  // "left side 118"
  if (/^(?:side|hand|leg|coil|fan|bank)$/.test(items[at + 1]?.text ?? "")) return -1;
  if (leftBehind(note) >= 0) return leftBehind(note);
  const before = items[at - 1];
  const starts = before !== undefined && isStrongBreak(before);
  if (at < 0 || (at > 2 && !starts) || note.holds.mark) return -1;
  if (
    before !== undefined &&
    !starts &&
    !/^(?:i|just|we|ive|finally|,|ok|okay|and)$/.test(before.text)
  )
    return -1;
  // "left a note", "left my bag"
  if (/^(?:a|an|my|some|it|them|his|her)$/.test(items[at + 1]?.text ?? "")) return -1;
  let end = at + 1;
  let named = false;
  while (end < items.length && end < at + 6) {
    const item = items[end];
    if (item === undefined || item.kind === itemKind.number || item.text === "at") break;
    if (unknown(item) || building.test(item.text)) named = true;
    else if ((item.roles & (role.article | role.only)) === 0) return -1;
    end++;
  }
  // "left at eight twenty locked the gate"
  const hour = end === at + 1 && items[end]?.text === "at" ? items[end + 1] : undefined;
  if (hour?.spoken === true && hour.value >= 100 && items[end + 2]?.kind === itemKind.word)
    return clockAt(items, end + 1, true) === undefined ? -1 : at;
  if (!named && end === at + 1 && (at <= 1 || starts) && items[end]?.colon === true) return at;
  if (!named) return -1;
  const clock = items.findIndex((_, i) => i >= end && clockAt(items, i, true) !== undefined);
  if (clock >= 0 && clock <= end + 2) return at;
  return end >= items.length && items.length <= 5 ? at : -1;
}

/** "… at hazel with Pia": a name that nothing here knows, or no more at all. */
function isAtSite(rest: readonly Item[]): boolean {
  const end = rest.findIndex(({ text }) => /^(?:with|w|now|[.,])$/.test(text));
  const [at, ...name] = end < 0 ? rest : rest.slice(0, end);
  if (at === undefined) return rest.length === 0;
  const plain = name.every(
    ({ kind, label, signs }) =>
      kind === itemKind.word && label === undefined && signs === undefined,
  );
  return at.text === "at" && name.length > 0 && name.length < 4 && plain;
}

/** "on roof 2:40", "on the roof, 9:15": where he is since when, and no more. */
export function onRoof({ items, holds }: Note): boolean {
  if (!/^(?:on|up)$/.test(items[0]?.text ?? "") || holds.mark) return false;
  const roof = items.findIndex(({ text }) => /^(?:roof|rooftop)$/.test(text));
  if (roof < 1 || roof > 3) return false;
  const small = items.slice(1, roof).every(({ text }) => /^(?:the|on|my)$/.test(text));
  if (small && isAtSite(items.slice(roof + 1))) return true;
  const rest = items.slice(roof + 1).filter(({ text }) => !/^(?:,|at|since|now|@)$/.test(text));
  return small && rest.length === 1 && clockAt(items, items.length - 1, true) !== undefined;
}
