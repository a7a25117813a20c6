import type { Context } from "./context.ts";
import { type Draft, isUntold } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** Shares of its size that a capacitor still has, weak or fresh. Our choice, no source. */
const share = { from: 0.3, to: 1.15 } as const;

const joint = /^(?:and|&|n|\/|,|over)$/;

/** The two sizes in microfarads that the last message told: by its note, or as its only readings. */
function sizesOf({ readings, latest, twin }: Context): readonly number[] | undefined {
  if (twin !== undefined) return twin;
  const last = readings.slice(-latest);
  const sizes = last.flatMap(({ quantity, rating, value }) =>
    quantity === "capacitance" && rating === "nominal" && typeof value === "number"
      ? [value * 1e6]
      : [],
  );
  return sizes.length === 2 && last.length === 2 ? sizes : undefined;
}

/** "getting 41.2 and 3.1" behind "dual cap 45/5": what each of its two sides has. */
export function sidesOfCap(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const sizes = sizesOf(context);
  const [left, right, ...more] = drafts.filter((draft) => !draft.gone);
  if (sizes === undefined || left === undefined || right === undefined || more.length > 0) return;
  if (right.index !== left.index + 2 || !joint.test(items[left.index + 1]?.text ?? "")) return;
  const bare = [left, right].every(
    (one) =>
      isUntold(one) && one.subject === undefined && items[one.index]?.kind === itemKind.number,
  );
  const near = [left, right].every((one, at) => {
    const part = one.value / (sizes[at] ?? Number.NaN);
    return part >= share.from && part <= share.to;
  });
  if (!bare || !near) return;
  for (const draft of [left, right]) {
    draft.quantity = "capacitance";
    draft.named = "capacitance";
    draft.unit = unitCalled("microfarad");
    draft.assumedUnit = true;
  }
}
