import type { UnitHabit } from "../model.ts";
import { endsClause } from "./breaks.ts";
import type { Context } from "./context.ts";
import { type Draft, isUntold } from "./draft.ts";
import { highSide, leastRatio, lowSide } from "./gauge-pair.ts";
import { type Item, itemKind } from "./item.ts";

/** How far a gauge moves between two looks at most, as a factor. Common practice, no source. */
const moved = 2.5;
const plant = /^(?:circuit|system|rtu|ou|odu|cu|unit|rack|ac|hp)\b/i;
const leads =
  /^(?:reset|washed|cleaned|rinsed|restarted|cleared|it|now|running|runs|at|is|are|back|pressures?|gauges?|on|:|=)$/;

/** What both gauges of the job showed last. */
function gaugesOf({ readings }: Context): readonly [number, number] | undefined {
  const last = (place: string): number =>
    Number(
      readings.findLast(
        ({ quantity, at, rating }) =>
          quantity === "pressure" && at === place && rating === undefined,
      )?.figure.number,
    );
  const [low, high] = [last("suction"), last("discharge")];
  return low > 0 && high > 0 ? [low, high] : undefined;
}

function begins(items: readonly Item[], i: number): boolean {
  let at = i - 1;
  while (leads.test(items[at]?.text ?? "")) at--;
  const before = items[at];
  if (before === undefined || endsClause(before)) return true;
  return plant.test(before.subject ?? "") || before.owner === "<what was done>";
}

function ends(items: readonly Item[], i: number): boolean {
  const next = items[i + 1];
  return (
    next === undefined ||
    endsClause(next) ||
    next.kind === itemKind.label ||
    next.kind === itemKind.subject ||
    /^(?:now|and|n|after|with|w|again)$/.test(next.text)
  );
}

/** "ckt1 now 118 328 sl 52 ll 96": behind the machine, and the warmth of both its lines with it. */
function withLines(items: readonly Item[], left: Draft): boolean {
  const lines = items.filter(
    ({ label }, at) =>
      at > left.index &&
      /^(?:suction|liquid)$/.test(label?.place ?? "") &&
      label?.hint !== "pressure" &&
      items[at + 1]?.kind === itemKind.number,
  );
  return lines.length > 1 && plant.test(left.subject ?? "");
}

/** Suction and head by their size, right behind one another and with nothing else said of them. */
function isPair(
  left: Draft,
  right: Draft | undefined,
  items: readonly Item[],
  units: UnitHabit,
): right is Draft {
  if (right === undefined || right.index !== left.index + 1 || left.gone || right.gone)
    return false;
  if (!isUntold(left) || !isUntold(right)) return false;
  if (!begins(items, left.index) || !ends(items, right.index)) return false;
  const [low, high] = [lowSide[units], highSide[units]];
  return (
    left.value >= low[0] &&
    left.value <= low[1] &&
    right.value >= high[0] &&
    right.value <= high[1] &&
    right.value >= left.value * leastRatio
  );
}

const near = (value: number, was: number): boolean => value / was < moved && was / value < moved;

/**
 * "reset, 118 332", "ckt1 now 118 328 sl 52", "ckt 1 118 340 ckt 2 121 338": both gauges again or of each
 * circuit, without a stroke between and without their names.
 */
export function pairInHand(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const told = gaugesOf(context);
  const pairs = drafts.flatMap((left, order) => {
    const right = drafts[order + 1];
    return isPair(left, right, items, context.units) ? [[left, right] as const] : [];
  });
  const plants = pairs.flatMap(([{ subject }]) => (plant.test(subject ?? "") ? [subject] : []));
  for (const [left, right] of pairs) {
    const again = told !== undefined && near(left.value, told[0]) && near(right.value, told[1]);
    const each = new Set(plants).size > 1 && plants.length === pairs.length;
    if (!again && !each && !withLines(items, left)) continue;
    for (const draft of [left, right]) {
      draft.named = "pressure";
      draft.component = false;
    }
    left.place = "suction";
    right.place = "discharge";
    right.subject ??= left.subject;
  }
}
