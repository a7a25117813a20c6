import type { Draft } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";

const machines = /^(?:system|unit|machine|circuit|charge|plate|nameplate|split|rack|chiller)$/;

/** "total in the system with piping is 54 lb": what it holds in all. */
function inAll(draft: Draft, items: readonly Item[]): boolean {
  if (draft.action !== undefined) return false;
  const words = wordsFrom(items, draft.index - 8, draft.index);
  return /\btotal (?:in|of) (?:the |this |that )?(?:system|circuit|unit|machine|rack)\b[^.;,]*\b(?:is|:|at|comes to)$/.test(
    words,
  );
}

/** "recovered 13 lb out of a 9 lb system", "third time this year, 30 lb charge": what the machine holds, not what was moved. */
export function systemHolds(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (draft.unit?.dimension !== "mass" || draft.rating !== undefined) continue;
    if (inAll(draft, items)) {
      draft.rating = "nameplate_charge";
      continue;
    }
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
