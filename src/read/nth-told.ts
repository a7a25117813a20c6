import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Note } from "./note.ts";

const nthTold =
  /^(?:(?:no|sorry|oops|actually|and|wait|oh)[, ]+)*(?:the |that )?(first|second|third|middle|last|1st|2nd|3rd)(?: (?:one|value|figure|number|reading|winding|pair|leg))? (?:was|is|were|should be|should have been) (?:actually |really |also )?$/;
const nthBehind =
  /^ (?:on|for|in|at) the (first|second|third|middle|last|1st|2nd|3rd)(?: (?:one|value|figure|number|reading|winding|pair|leg))?\b/;
const meant =
  /^(?:(?:no|sorry|oops|actually|wait|oh|ok|uh|um|i)[, ]+)*(?:no|sorry|oops|actually|meant|ment|make (?:it|that)|should (?:be|have been|say))[, ]+(?:it'?s |that'?s |its )?$/;

const nthMade =
  /^(?:make|change) (?:the )?(first|second|third|middle|last|1st|2nd|3rd)(?: (?:one|value|figure|number|reading|winding|pair|leg))? (?:to )?$/;

/** Which of the row is spoken of: "the second one was …", "meant … on the last one"; undefined where none is. */
function nthSaid({ plain }: Note, from: number, to: number): string | undefined {
  const before = plain.slice(0, from);
  const led = (nthTold.exec(before) ?? nthMade.exec(before))?.[1];
  if (led !== undefined || !meant.test(plain.slice(0, from))) return led;
  return nthBehind.exec(plain.slice(to))?.[1];
}

/** A word of `nthSaid` as a number, in a row of so many. */
function nthOf(said: string | undefined, many: number): number {
  if (said === "last") return many;
  return /^f|^1/.test(said ?? "") ? 1 : /^t|^3/.test(said ?? "") ? 3 : 2;
}

const meansLeg =
  /^(?:(?:no|sorry|oops|actually|wait|oh|ok|uh|um)[, ]+)*(?:i (?:mean|meant)|meant|make (?:it|that)|that'?s|it'?s)?[, ]*$/;

/** "I mean 44 on L2" behind "41 amps on all three legs": its place in a row that named no legs. */
function legOfRow(
  { plain }: Note,
  row: readonly Reading[],
  leg: { readonly points: readonly string[] | undefined; readonly from: number },
): number | undefined {
  const [point, ...others] = leg.points ?? [];
  if (point === undefined || others.length > 0 || row.length !== 3) return undefined;
  if (row.some(({ points, quantity }) => points !== undefined || quantity !== "current"))
    return undefined;
  if (!meansLeg.test(plain.slice(0, leg.from)) || !/\bmeant?\b|\bmake\b|\bno\b/.test(plain))
    return undefined;
  const nth = ["L1", "L2", "L3"].indexOf(point) + 1;
  return nth > 0 ? nth : undefined;
}

/** The row that was told last; "that last winding" behind a diode test is of the windings before it. */
export function rowTold({ readings, latest }: Context, windings: boolean): readonly Reading[] {
  if (!windings) return readings.slice(-latest);
  const isWinding = ({ quantity }: Reading): boolean => quantity === "winding_resistance";
  const end = readings.findLastIndex(isWinding) + 1;
  const from = readings.findLastIndex((one, at) => at < end && !isWinding(one)) + 1;
  return readings.slice(Math.max(from, end - 3), end);
}

/** Which of the row that was told last a figure replaces: by its number there, or by its leg. */
export function placeInRow(
  note: Note,
  row: readonly Reading[],
  only: {
    readonly points: readonly string[] | undefined;
    readonly span: readonly [number, number];
  },
): number | undefined {
  const [from, to] = only.span;
  const alike = row.length > 1 && row.every(({ quantity }) => quantity === row[0]?.quantity);
  if (!alike) return undefined;
  if (only.points !== undefined) return legOfRow(note, row, { points: only.points, from });
  const said = nthSaid(note, from, to);
  return said === undefined ? undefined : nthOf(said, row.length);
}

/** "sorry 15 is open too": which one it is, no figure. */
export function namesThing({ items, plain }: Note, index: number): boolean {
  return /^ is (?:open|dead|shorted|out|bad|cold|warm|fine)\b/.test(plain.slice(items[index]?.to));
}
