import type { Context } from "./context.ts";
import { type Item, itemKind } from "./item.ts";

const loop = /^(?:loop|loops|loop's)$/;
const small =
  /^(?:is|was|at|@|to|down|up|now|still|back|sits|sitting|holding|running|its|around|about|:)$/;
/** F, Cel of a loop of water. Common practice, no source. */
const warmth = { us: [30, 220], si: [2, 95] } as const;

/** "loops at 46", "loop is down to 46", "hot loop 180": how warm its water is; which of its ends nobody said. */
export function loopWarmth(items: readonly Item[], units: Context["units"]): void {
  const [least, most] = warmth[units];
  items.forEach((item, i) => {
    if (item.kind === itemKind.number || !loop.test(item.text) || item.label !== undefined) return;
    let at = i + 1;
    while (small.test(items[at]?.text ?? "")) at++;
    const value = items[at];
    if (value?.kind !== itemKind.number || at > i + 5) return;
    if (value.unit !== undefined && value.unit.dimension !== "temperature") return;
    if (value.colon || value.value < least || value.value > most) return;
    item.kind = itemKind.label;
    item.label = { hint: "temperature" };
  });
}
