import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** Does a second figure without words of its own stand behind a stroke, and no third? */
function pairBehind(items: readonly Item[], left: Draft, right: Draft, third?: Draft): boolean {
  if (items[left.index + 1]?.text !== "/" || right.index !== left.index + 2) return false;
  if (right.before.length > 0 || right.behind.length > 0) return false;
  return third === undefined || items[right.index + 1]?.text !== "/";
}

function isAir(draft: Draft): boolean {
  return (
    draft.place?.endsWith("_air") === true &&
    draft.hint === "temperature" &&
    draft.named === undefined &&
    draft.unit === undefined &&
    draft.before.length > 0
  );
}

/**
 * "return 78/67 supply 58/56": behind the dry bulb of an air its wet bulb. One such pair alone may as
 * well be the two sides of a coil, so its second figure is asked.
 */
export function airPairs(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  const seconds = list.flatMap((right, order) => {
    const left = list[order - 1];
    if (left === undefined || !isAir(left) || right.unit !== undefined) return [];
    if (right.place !== undefined || right.named !== undefined) return [];
    const below = right.value < left.value && right.value > 0;
    return below && pairBehind(items, left, right, list[order + 1]) ? [right] : [];
  });
  const [only, ...others] = seconds;
  if (only === undefined || items[only.index]?.kind !== itemKind.number) return;
  const airs = new Set(list.filter(isAir).map(({ place }) => place));
  for (const second of seconds) {
    if (others.length > 0 || airs.size > 1) second.named = "wet_bulb_temperature";
    else second.question = "quantity";
  }
}
