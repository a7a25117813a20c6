import { isSamePoint, slip } from "./correct-target.ts";
import type { Draft } from "./draft.ts";
import { itemKind } from "./item.ts";
import type { Note } from "./note.ts";
import { role } from "./word.ts";

/** Words at most: what is told of earlier days is longer. */
const mostItems = 6;

/**
 * "lead 2 was 91" behind "lead 2 9.1": told again so that a slip of the thumb makes the one of the other.
 * Without that it may be what it was before something was done.
 */
export function toldWas({ items, context }: Note, drafts: readonly Draft[]): boolean {
  const [only, ...others] = drafts.filter(({ gone }) => !gone);
  if (only === undefined || others.length > 0 || items.length > mostItems) return false;
  const [was, last] = [items[only.index - 1], items.at(-1)];
  if (was?.text !== "was" || only.index < items.length - 2) return false;
  if (last !== items[only.index] && last?.kind !== itemKind.sign) return false;
  if (items.some(({ roles }) => (roles & (role.plan | role.earlier)) !== 0 && roles !== was.roles))
    return false;
  const { points, place, subject } = only;
  if (points === undefined && place === undefined && subject === undefined) return false;
  return context.readings.slice(-Math.max(1, context.latest)).some((old) => {
    const same =
      points === undefined
        ? (place === undefined || old.at === place) &&
          (subject === undefined || old.subject === subject)
        : points[0]?.every((one) => old.points?.some((known) => isSamePoint(one, known))) === true;
    return same && old.rating === undefined && slip(only.value, Number(old.figure.number)) > 0;
  });
}
