import { isParted } from "./breaks.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { takeFor } from "./recast.ts";

const draws = /^(?:pulls|draws|pulling|drawing|pulled|drew|runs|running|ran)$/;
const also = /^(?:about|around|like|only|just|now|at)$/;

/** No unit, no plate and nothing beyond range: it may be amps. */
const isFree = ({ unit, over, rating }: Draft): boolean =>
  unit === undefined && !over && rating === undefined;

function isCapBefore(items: readonly Item[], at: number): boolean {
  return items.slice(0, Math.max(0, at)).some(({ label }) => label?.quantity === "capacitance");
}

function asAmps(draft: Draft): void {
  takeFor(draft, "current", "A");
  draft.place = undefined;
}

/** "put a new cap in, fan 3 pulls 2.4": what a motor draws with its capacitor are amps. */
export function drawsAmps(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (!isFree(draft) || items[draft.index]?.kind !== itemKind.number) continue;
    const at = also.test(items[draft.index - 1]?.text ?? "") ? draft.index - 2 : draft.index - 1;
    if (!draws.test(items[at]?.text ?? "")) continue;
    if (isCapBefore(items, at) && !isParted(items, at, draft.index)) asAmps(draft);
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
    if (!isFree(draft)) continue;
    const before = items[draft.index - 1];
    const motor =
      motors.test(before?.text ?? "") || /^(?:fan|motor|pump|comp)/.test(before?.subject ?? "");
    const off = Math.abs(draft.value / Number(size.figure.number) - 1);
    const far = off > offSize && off <= 20;
    if (motor && far && isCapBefore(items, draft.index)) asAmps(draft);
  }
}
