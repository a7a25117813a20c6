import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const machines = /^(?:system|unit|machine|circuit|charge|plate|nameplate|split|rack|chiller)$/;

/** "recovered 13 lb out of a 9 lb system", "third time this year, 30 lb charge": what the machine holds, not what was moved. */
export function systemHolds(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (draft.unit?.dimension !== "mass" || draft.rating !== undefined) continue;
    const [before, behind] = [
      items[draft.index - 1]?.text ?? "",
      items[draft.index + 1]?.text ?? "",
    ];
    if (!machines.test(behind) || !/^(?:an?|the|its|of|,|on|in|is)$/.test(before)) continue;
    const moved = list.some((one) => one !== draft && one.unit?.dimension === "mass");
    if (!moved && behind !== "charge") continue;
    if (behind === "charge" && before !== "," && !/^(?:an?|the|its|of)$/.test(before)) continue;
    draft.rating = "nameplate_charge";
    draft.action = undefined;
  }
}
