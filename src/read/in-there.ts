import type { UnitHabit } from "../model.ts";
import type { Place } from "../vocabulary.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { role } from "./word.ts";

/** Air that people or goods are in, F and Cel; common practice, no source. */
const airs: Readonly<Record<UnitHabit, readonly [number, number]>> = { us: [35, 115], si: [5, 45] };

/** Straight behind a room's number: from the coldest in Cel to the warmest in F. Common practice, no source. */
const WARM_ROOM: readonly [number, number] = [15, 99];

const rooms =
  /^(?:here|there|store|shop|lobby|office|offices|kitchen|dining|bar|classroom|gym|hall|hallway|house|building|bldg|space|room|server|lab|church|warehouse|showroom|area|bedroom|suite|salon)$/;
const boxes = /^(?:box|cooler|freezer|walkin|case)$/;
const days =
  /^(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|mon|tues|wed|thurs|fri|sat|sun|yesterday)$/;

/** "in there", "in the lobby", "inside" right behind item `index`: whose air is told. */
function airBehind(items: readonly Item[], index: number): Place | undefined {
  const [first, second, third] = [1, 2, 3].map((far) => items[index + far]?.text ?? "");
  if (first === "inside" && !/^(?:the|it|of|panel)$/.test(second ?? "")) return "indoor_air";
  if (first !== "in" && first !== "up") return undefined;
  const name = /^(?:the|this|my|his|her|that)$/.test(second ?? "") ? third : second;
  if (boxes.test(name ?? "")) return "box";
  return rooms.test(name ?? "") ? "indoor_air" : undefined;
}

/** Is it the number of a room: "room 204"? */
export function isRoom(item: Item | undefined): boolean {
  return item?.kind === itemKind.subject && /^(?:room|rm)$/.test(item.text);
}

const airy = /^(?:rooms?|rms?|suite|ste|apt|apartment|zone|zn|floor|flr|fl)$/;

/** "suite 310", "zone 2", "floor 3": a numbered place where people are. */
function hasAir(item: Item | undefined): boolean {
  return item?.kind === itemKind.subject && !item.subject && airy.test(item.text);
}

/** Is it a number that a rule has taken for a room's? */
function isKnownRoom(item: Item | undefined): boolean {
  return item?.kind === itemKind.number && /\broom/.test(item.owner ?? "");
}

/** "room 204 89, room 206 87": nothing behind the figure says that it is of something else. */
function endsThere(items: readonly Item[], index: number): boolean {
  const [item, next] = [items[index], items[index + 1]];
  if (item === undefined || item.value < WARM_ROOM[0] || item.value > WARM_ROOM[1]) return false;
  if (next === undefined || next.kind === itemKind.line || hasAir(next)) return true;
  if (isKnownRoom(next)) return true;
  return /^[,.;]$/.test(next.text) || (next.roles & (role.conjunction | role.now)) !== 0;
}

/** "79 on room 206", "81 in room 210" */
function beforeRoom(items: readonly Item[], index: number): boolean {
  const [lead, room] = [items[index + 1], items[index + 2]];
  return /^(?:in|on|for|at)$/.test(lead?.text ?? "") && isRoom(room);
}

/** "room 310 is 78", "204's at 81": behind a room's number it is the room that is so warm. */
function behindRoom(items: readonly Item[], index: number): boolean {
  let at = index - 1;
  while (told.test(items[at]?.text ?? "") || ((items[at]?.roles ?? 0) & (role.is | role.all)) !== 0)
    at--;
  while (/^['s]$/.test(items[at]?.text ?? "") && items[at]?.owner !== undefined) at--;
  const room = items[at];
  const straight = at === index - 1 && room?.apostrophe !== true;
  if (hasAir(room)) return !straight || endsThere(items, index);
  return isKnownRoom(room) && (!straight || endsThere(items, index));
}

function isBare(draft: Draft, units: UnitHabit): boolean {
  const { unit, named, hint, place, points, rating, subject, thing } = draft;
  const free = [named, hint, place, points, rating, subject, thing].every(
    (one) => one === undefined,
  );
  const degrees = unit === undefined || unit.dimension === "temperature";
  const [low, high] = airs[units];
  return free && degrees && !draft.over && !draft.same && draft.value >= low && draft.value <= high;
}

const told =
  /^(?:fine|okay|ok|both|each|reads|reading|shows|got|it|its|it's|is|was|hit|said|says|like|about|only|got|to|up|still|at|@|been|down|came|went|dropped|pulled|pulling|sitting|sits|now|:|=|-|,)$/;

function warm(draft: Draft, place: Place, units: UnitHabit): void {
  draft.place = place;
  draft.hint = "temperature";
  draft.named = "temperature";
  if (draft.unit !== undefined) return;
  draft.unit = unitCalled(units === "us" ? "F" : "C");
  draft.assumedUnit = true;
}

/** "was 84 in there saturday, its 77 now": what people say of the air around them. */
export function inThere(
  drafts: readonly Draft[],
  items: readonly Item[],
  { units, readings }: Context,
): void {
  let last: Draft | undefined;
  // "now it's 39 in there" behind the box's warmth
  const lastAt = readings.findLast(({ quantity }) => quantity === "temperature")?.at;
  const there = lastAt === "box" ? lastAt : undefined;
  for (const draft of drafts) {
    if (draft.gone || !isBare(draft, units)) continue;
    if (items[draft.index]?.kind !== itemKind.number) continue;
    const room = behindRoom(items, draft.index) || beforeRoom(items, draft.index);
    const inRoom = room ? "indoor_air" : undefined;
    const here = items[draft.index + 2]?.text === "there" ? there : undefined;
    const behind = airBehind(items, draft.index);
    const place = inRoom ?? (behind === undefined ? undefined : (here ?? behind));
    const before = items[draft.index - 1];
    const led =
      room || before === undefined || told.test(before.text) || (before.roles & role.is) !== 0;
    if (place !== undefined && led) {
      warm(draft, place, units);
      const day = items.slice(draft.index + 1, draft.index + 6).some(({ text }) => days.test(text));
      if (day && items[draft.index - 1]?.text !== "its") draft.earlier = true;
      last = draft;
      continue;
    }
    // "its 77 now"
    const now = items[draft.index + 1]?.text === "now" || before?.text === "now";
    if (last?.place !== undefined && now && Math.abs(last.value - draft.value) < 40)
      warm(draft, last.place, units);
  }
}
