import { isParted } from "./breaks.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { takeFor } from "./recast.ts";

const draws = /^(?:pulls|draws|pulling|drawing|pulled|drew)$/;
const also = /^(?:about|around|like|only|just|now|at)$/;

/** "put a new cap in, fan 3 pulls 2.4": what a motor draws with its capacitor are amps. */
export function drawsAmps(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (draft.unit !== undefined || draft.over || draft.rating !== undefined) continue;
    if (items[draft.index]?.kind !== itemKind.number) continue;
    const at = also.test(items[draft.index - 1]?.text ?? "") ? draft.index - 2 : draft.index - 1;
    if (!draws.test(items[at]?.text ?? "")) continue;
    const cap = items.findLastIndex(({ label }, i) => i < at && label?.quantity === "capacitance");
    if (cap < 0 || isParted(items, at, draft.index)) continue;
    takeFor(draft, "current", "A");
    draft.place = undefined;
  }
}

const motors = /^(?:fan|blower|motor|pump|comp|compressor)$/;
/** How far a new capacitor lies from its size at most; what is farther off is what its motor draws. Common practice, no source. */
const offSize = 0.2;

/** "new cap in, fan 1.4 now" behind one of 5 microfarads: no new one is so far off, so the fan draws it. */
export function farFromSize(
  list: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  const size = readings.findLast(
    ({ quantity, rating }) => quantity === "capacitance" && rating !== undefined,
  );
  if (size === undefined || !items.some(({ text }) => /^(?:new|replaced|swapped)$/.test(text)))
    return;
  for (const draft of list) {
    if (draft.unit !== undefined || draft.over || draft.rating !== undefined) continue;
    const before = items[draft.index - 1];
    const motor =
      motors.test(before?.text ?? "") || /^(?:fan|motor|pump|comp)/.test(before?.subject ?? "");
    const cap = items.some(({ label }, i) => i < draft.index && label?.quantity === "capacitance");
    const off = Math.abs(draft.value / Number(size.figure.number) - 1);
    if (!motor || !cap || off <= offSize || off > 20) continue;
    takeFor(draft, "current", "A");
    draft.place = undefined;
  }
}
