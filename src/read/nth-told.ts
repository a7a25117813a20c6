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
export function nthSaid({ plain }: Note, from: number, to: number): string | undefined {
  const before = plain.slice(0, from);
  const led = (nthTold.exec(before) ?? nthMade.exec(before))?.[1];
  if (led !== undefined || !meant.test(plain.slice(0, from))) return led;
  return nthBehind.exec(plain.slice(to))?.[1];
}

/** The row that was told last; "that last winding" behind a diode test is of the windings before it. */
export function rowTold({ readings, latest }: Context, windings: boolean): readonly Reading[] {
  if (!windings) return readings.slice(-latest);
  const isWinding = ({ quantity }: Reading): boolean => quantity === "winding_resistance";
  const end = readings.findLastIndex(isWinding) + 1;
  const from = readings.findLastIndex((one, at) => at < end && !isWinding(one)) + 1;
  return readings.slice(Math.max(from, end - 3), end);
}
