import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { onlyAlive } from "./inherit.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const vessels = /^(?:tank|cylinder|cyl|bottle|btl|jug|drum|can)$/;

function isBare(draft: Draft): boolean {
  const { unit, named, hint, place, points, rating, subject } = draft;
  return [unit, named, hint, place, points, rating, subject].every((one) => one === undefined);
}

/** What it is, in what unit; where it was read only if it is read there again. */
function take(draft: Draft, like: Reading, there: boolean): void {
  draft.quantity = like.quantity;
  draft.named = like.quantity;
  draft.unit = unitCalled(like.figure.unit);
  draft.assumedUnit = draft.unit !== undefined;
  draft.kind = like.kind;
  if (!there) return;
  draft.action = like.action;
  draft.place = like.at;
  draft.subject = like.subject;
}

/** "4th tank 22.5" behind "charged 25 lb from tank 3": the next vessel, weighed like the last. */
function nextVessel(draft: Draft, items: readonly Item[], last: Reading): boolean {
  if (last.quantity !== "mass" || last.action === undefined) return false;
  const led = items.slice(Math.max(0, draft.index - 2), draft.index);
  return led.some(({ text }) => vessels.test(text)) && draft.value < Number(last.figure.number) * 4;
}

/** "2nd reading 720" behind "650 microns" */
function nextReading(draft: Draft, items: readonly Item[], last: Reading): boolean {
  const [which, reading] = items.slice(Math.max(0, draft.index - 2), draft.index);
  if (!/^(?:reading|reads|look|check)$/.test(reading?.text ?? "")) return false;
  if (!/^(?:next|second|third|2nd|3rd|last|new|another)$/.test(which?.text ?? "")) return false;
  const ratio = draft.value / Number(last.figure.number);
  return ratio > 0.3 && ratio < 3;
}

/** "next one is 4.2", "second one's 81": the next of what was read last. */
function nextOne(draft: Draft, items: readonly Item[], last: Reading): boolean {
  let at = draft.index - 1;
  while (/^(?:'|s|is|at|reads|was|comes|in|got)$/.test(items[at]?.text ?? "")) at--;
  const [which, one] = [items[at - 1], items[at]];
  if (
    one?.text !== "one" ||
    !/^(?:next|second|third|fourth|other|2nd|3rd|4th)$/.test(which?.text ?? "")
  )
    return false;
  const ratio = draft.value / Number(last.figure.number);
  return ratio > 1 / 3 && ratio < 3;
}

/** "84 -> 79" behind "space temp 84": what it was is the last reading's own figure. */
function fromIt(draft: Draft, last: Reading): boolean {
  const [first] = draft.series ?? [];
  return first !== undefined && draft.series?.length === 2 && first === Number(last.figure.number);
}

/** One bare value that says by its words that it is of what was read last. */
export function sameAgain(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const draft = onlyAlive(drafts);
  const last = context.readings[context.readings.length - 1];
  if (draft === undefined || last === undefined || !isBare(draft)) return;
  if (draft.over || draft.same || items[draft.index]?.kind !== itemKind.number) return;
  if (last.rating !== undefined || Number.isNaN(Number(last.figure.number))) return;
  const next = nextOne(draft, items, last);
  if (last.points !== undefined && (!next || last.points[1] === "ground")) return;
  const goesOn =
    nextVessel(draft, items, last) || nextReading(draft, items, last) || fromIt(draft, last);
  if (next || goesOn) take(draft, last, !next);
}
