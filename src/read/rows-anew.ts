import { classOf } from "./carrier.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** A lead, a leg or a pair of its own. */
const pointed = (draft: Draft): boolean =>
  draft.points?.length === 1 && draft.count === 1 && !draft.gone;

/** Nothing said of it but when. */
function timedOnly(draft: Draft, items: readonly Item[]): boolean {
  const told = [...draft.before, ...draft.behind];
  return (
    draft.points === undefined && told.every((index) => "TE".includes(classOf(items[index]) || "T"))
  );
}

/**
 * "T1 88M T2 91M T3 86M at 1 min, 10 min 240 250 238": as many values behind a row of points as it
 * has, all at one other time, are the same points again in their order.
 */
export function rowsAnew(list: readonly Draft[], items: readonly Item[]): void {
  const end = list.findIndex((draft) => !pointed(draft));
  const size = end < 0 ? list.length : end;
  const rest = list.slice(size);
  if (size < 2 || rest.length !== size) return;
  if (!rest.every((draft) => timedOnly(draft, items) && !draft.gone)) return;
  const times = rest.flatMap(({ after }) => (after === undefined ? [] : [after]));
  const [time] = times;
  if (times.length !== 1 || time === undefined) return;
  const dimension = list[0]?.unit?.dimension;
  if (rest.some(({ unit }) => unit !== undefined && unit.dimension !== dimension)) return;
  rest.forEach((draft, order) => {
    const like = list[order];
    if (like?.points === undefined) return;
    draft.points = like.points;
    draft.grounded = like.grounded;
    draft.after = time;
  });
}
