import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const probe = /^(?:by|on|with|per) (?:my |the |a )?(?:probe|thermometer|thermocouple|thermistor)\b/;
/** F or C of what is measured by hand without a unit. Common practice, no source. */
const coldest = -40;
const warmest = 260;

function bare({ unit, named, points, over, rating, hint, value }: Draft): boolean {
  const said = unit ?? named ?? points ?? rating ?? hint;
  return said === undefined && !over && value >= coldest && value <= warmest;
}

/** "coil and air both 71 by my probe": what a probe shows is how warm it is. */
export function byProbe(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (!bare(draft)) continue;
    const behind = items.slice(draft.index + 1, draft.index + 4).map(({ text }) => text);
    if (!probe.test(behind.join(" "))) continue;
    draft.named = "temperature";
    draft.hint = "temperature";
  }
}
