import { copyDraft, copyReading } from "./copy-value.ts";
import type { Draft } from "./draft.ts";
import { isRoom } from "./in-there.ts";
import { type Item, itemKind } from "./item.ts";
import type { Note } from "./note.ts";
import { apart } from "./subjects-together.ts";
import { role } from "./word.ts";

/** A name that a value can be of, told apart by its sort: machines, places, rooms. */
function sortOf(item: Item | undefined): "machine" | "place" | "room" | undefined {
  if (item === undefined) return undefined;
  if (item.kind === itemKind.subject) {
    if (item.owner === undefined) return item.subject === undefined ? undefined : "machine";
    return isRoom(item) ? "room" : undefined;
  }
  const placed = item.kind === itemKind.label && item.label?.place !== undefined;
  return placed && item.owner === undefined ? "place" : undefined;
}

const joint = /^(?:,|and|&|n|\+)$/;

/** The names that stand in a row with the one at `at`, to its left (-1) or right (1), nearest first. */
function rowFrom(items: readonly Item[], at: number, step: 1 | -1): readonly number[] {
  const sort = sortOf(items[at]);
  const found = [at];
  if (sort === undefined) return [];
  let next = at;
  let joined = false;
  for (;;) {
    let to = next + step;
    while (joint.test(items[to]?.text ?? "")) {
      joined ||= items[to]?.text !== ",";
      to += step;
    }
    // "at the coil, suction 62": two clauses, unless "and" joins them
    if (Math.abs(to - next) === 1 || sortOf(items[to]) !== sort) return joined ? found : [];
    found.push(to);
    next = to;
  }
}

/** Gives the value to what stands at `at`. */
function named(draft: Draft, items: readonly Item[], row: readonly number[], at: number): Draft {
  const item = items[at];
  const mine = (index: number): boolean => index === at || !row.includes(index);
  const own = sortOf(item) === "room" ? [] : [at];
  const [before, behind] = at < draft.index ? [own, []] : [[], own];
  return {
    ...draft,
    before: [...new Set([...draft.before.filter(mine), ...before])],
    behind: [...new Set([...draft.behind.filter(mine), ...behind])],
    subject: item?.owner === undefined ? (item?.subject ?? draft.subject) : draft.subject,
    place: item?.label?.place ?? draft.place,
  };
}

/** "compressor 1 30 amps compressor 2 and compressor 3 29": a name of the row is no name of the value before it. */
function giveBack(drafts: readonly Draft[], items: readonly Item[], row: readonly number[]): void {
  for (const draft of drafts) {
    const taken = draft.behind.filter((index) => row.includes(index));
    if (taken.length === 0) continue;
    draft.behind = draft.behind.filter((index) => !row.includes(index));
    const own = draft.before.findLast((index) => sortOf(items[index]) === "machine");
    if (own !== undefined) draft.subject = items[own]?.subject;
  }
}

/** "230 volts at the disconnect and suction 118", "a 60 amp disconnect and suction 118": it goes with the figure before it. */
function closesValue(items: readonly Item[], first: number): boolean {
  const before = items[first - 1];
  if (before?.kind !== itemKind.number) return false;
  return before.owner !== undefined || /^(?:at|on)$/.test(items[first]?.text ?? "");
}

const verbs = /^(?:both|all|each|is|are|was|were|at|read|reads|reading|got|show|shows|'?re|:|=)$/;

/** "comp 2 and comp 3 are 10.4", "supply and outdoor both 43": one value, read at each that is named before it. */
export function nameRow(drafts: Draft[], items: readonly Item[]): void {
  for (const draft of [...drafts]) {
    if (draft.gone || draft.same || draft.points !== undefined || draft.count > 2) continue;
    if (draft.rating !== undefined || draft.series !== undefined) continue;
    let last = draft.index - 1;
    while (verbs.test(items[last]?.text ?? "")) last--;
    const row = rowFrom(items, last, -1);
    if (row.length < 2 || closesValue(items, row[row.length - 1] ?? -1)) continue;
    const subjects = row.flatMap((at) => items[at]?.subject ?? []);
    if (sortOf(items[last]) === "machine" && apart(items, subjects, draft.index)) continue;
    // "supply and return 55 and 75": a value for each
    const next = items[draft.index + (joint.test(items[draft.index + 1]?.text ?? "") ? 2 : 1)];
    if (next?.kind === itemKind.number || items[draft.index + 1]?.text === "/") continue;
    giveBack(
      drafts.filter((one) => one !== draft),
      items,
      row,
    );
    draft.count = 1;
    const copies = [...row].reverse().map((at) => named(draft, items, row, at));
    Object.assign(draft, copies[0]);
    drafts.push(...copies.slice(1));
  }
}

/** "room 206 is the same", "same for room 206", "room 204 75F": does a room's number stand beside it? */
export function roomBeside(items: readonly Item[], at: number): boolean {
  let before = at - 1;
  while (verbs.test(items[before]?.text ?? "") || items[before]?.roles === role.article) before--;
  const behind = items[at + 2];
  return sortOf(items[before]) === "room" || sortOf(behind) === "room";
}

/** "same for comp 2 and comp 3", "same on supply and outdoor": the value at each that is named behind the word. */
export function sameRow(
  note: Note,
  draft: Draft,
  left: Draft | undefined,
  drafts: Draft[],
): boolean {
  const { items, context } = note;
  let first = draft.index + 1;
  while (
    ((items[first]?.roles ?? 0) & (role.preposition | role.article)) !== 0 ||
    items[first]?.text === "with"
  )
    first++;
  if (first === draft.index + 1 || draft.points !== undefined) return false;
  const row = rowFrom(items, first, 1);
  const last = context.readings[context.readings.length - 1];
  if (row.length < 2 || (left ?? last) === undefined) return false;
  giveBack(
    drafts.filter((one) => one !== draft),
    items,
    row,
  );
  const copies = row.map((at, order) => {
    const one = order === 0 ? draft : { ...draft };
    Object.assign(one, named(one, items, row, at));
    if (left !== undefined) copyDraft(note, one, left);
    else if (last !== undefined) copyReading(note, one, last);
    return one;
  });
  drafts.push(...copies.slice(1));
  return true;
}
