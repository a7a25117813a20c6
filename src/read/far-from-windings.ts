import type { Draft } from "./draft.ts";
import type { Note } from "./note.ts";

/** Ohm, below which a pair of pins goes by the test in hand alone; more is as well amps. Our choice, no source. */
const surelyOhm = 5;
/** How far pairs of one machine may be from those read before; our choice, no source. */
const nearTimes = 3;

/**
 * "comp 1 13.2 13.4 13.1" behind windings of 0.8 or open ones: neither said nor like them, so that
 * amps fit as well. It is asked, not filed.
 */
export function farFromWindings(drafts: readonly Draft[], note: Note): void {
  const bare = drafts.filter(isBare);
  if (bare.length === 0) return;
  const told = note.items.some(
    ({ text, unit, label }) =>
      unit?.dimension === "resistance" ||
      label?.quantity === "winding_resistance" ||
      /^(?:ohms?|ohmed|windings?|pins|terminals)$/.test(text),
  );
  if (told || note.context.testing === "winding_resistance") return;
  const before = note.context.readings.flatMap(({ quantity, value }) =>
    quantity === "winding_resistance" && typeof value === "number" ? [value] : [],
  );
  for (const draft of bare) {
    const { value } = draft;
    const like = before.some((was) => value <= was * nearTimes && value * nearTimes >= was);
    if (!like) draft.question = "quantity";
  }
}

function isBare({ quantity, ownUnit, points, value, over, corrects, gone }: Draft): boolean {
  if (gone || over || corrects || ownUnit || quantity !== "winding_resistance") return false;
  return points === undefined && !(value < surelyOhm);
}
