import type { Draft } from "./draft.ts";
import { nearSupply } from "./guard.ts";
import { coilVolts } from "./guard-coil.ts";
import type { Item } from "./item.ts";
import { takeFor } from "./recast.ts";

const coil = /\bcoil (?:has|had|gets|got|sees) (?:only |just |about )?$/;
const allLegs =
  /^ (?:leg to leg |phase to phase |line to line )?(?:on |across |at )?all (?:of them|(?:(?:three|3) )?(?:legs|pairs|phases|lines))\b|^ (?:leg to leg|phase to phase|line to line) all (?:three|3)\b/;

/** "contactor coil has only 19.5", "coil gets 24.8": what is across it. */
function coilHas({ index, value }: Draft, items: readonly Item[], plain: string): boolean {
  if (!coil.test(plain.slice(0, items[index]?.from))) return false;
  return coilVolts.some(([low, high]) => value >= low && value <= high);
}

/** "…, 208 on all three legs", "…, 480 on all pairs": a supply's figure that begins its own clause. */
function onAllLegs({ index, value }: Draft, items: readonly Item[], plain: string): boolean {
  if (!Number.isInteger(value) || !nearSupply(value)) return false;
  const before = items[index - 1];
  if (before !== undefined && before.text !== "," && before.text !== ".") return false;
  return allLegs.test(plain.slice(items[index]?.to));
}

/** Bare figures that are volts by the words of their own clause, whatever was measured before them. */
export function voltsOfClause(
  drafts: readonly Draft[],
  items: readonly Item[],
  plain: string,
): void {
  for (const draft of drafts) {
    const told = draft.unit ?? draft.quantity ?? draft.named ?? draft.points ?? draft.place;
    if (told !== undefined || draft.gone || draft.over) continue;
    const legs = onAllLegs(draft, items, plain);
    if (!legs && !coilHas(draft, items, plain)) continue;
    takeFor(draft, "voltage", "V");
    if (legs) draft.count = 3;
  }
}
