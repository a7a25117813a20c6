import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { isSameUnit, unitCalled } from "./kinds.ts";
import { ratio } from "./near-value.ts";

/** How far one winding's insulation lies from another's at most, to go without its unit. Our choice, no source. */
const apart = 20;

/** The timed values of the point that was tested last, in their order; none where they tell a time twice. */
function timedBefore({ readings }: Context): readonly Reading[] {
  const last = readings.at(-1);
  if (last?.quantity !== "insulation_resistance" || last.after_s === undefined) return [];
  const from = readings.findLastIndex(
    (one) =>
      one.quantity !== last.quantity ||
      one.after_s === undefined ||
      one.subject !== last.subject ||
      one.points?.join() !== last.points?.join(),
  );
  const run = readings.slice(from + 1);
  const times = new Set(run.map(({ after_s }) => after_s));
  const unit = last.figure.unit;
  const even = run.every(({ figure }) => isSameUnit(figure.unit, unit));
  return even && times.size === run.length ? run : [];
}

function isNext(draft: Draft, like: Reading | undefined, order: number): boolean {
  if (like === undefined || draft.after !== undefined || draft.place !== undefined) return false;
  if (draft.rating !== undefined || draft.earlier || draft.over || draft.same) return false;
  if (order > 0 && draft.points !== undefined) return false;
  if (draft.unit !== undefined && draft.unit.dimension !== "resistance") return false;
  const far = ratio(draft.value, like);
  return draft.unit !== undefined || (far > 1 / apart && far < apart);
}

/** "lead 2 205 and 401" behind lead 1's one and ten minutes: the same times of the next. */
export function timedAgain(list: readonly Draft[], context: Context): void {
  const run = timedBefore(context);
  const [first] = list;
  if (run.length < 2 || run.length !== list.length || first === undefined) return;
  const named = first.points?.length === 1 || first.subject !== undefined;
  if (!named || !list.every((draft, order) => isNext(draft, run[order], order))) return;
  list.forEach((draft, order) => {
    const like = run[order];
    if (like === undefined) return;
    draft.quantity = "insulation_resistance";
    draft.named = draft.quantity;
    draft.after = like.after_s;
    draft.points ??= first.points;
    if (draft.unit !== undefined) return;
    draft.unit = unitCalled(like.figure.unit);
    draft.assumedUnit = true;
  });
}
