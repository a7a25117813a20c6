import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { takeFor } from "./recast.ts";

/** Inches of water at most that an inducer pulls; common practice, no source. */
const most = 5;

/** "pressure switch open, .38 at the port, rated .62": inches of water, whatever was read before. */
export function draftPort(drafts: readonly Draft[], items: readonly Item[], plain: string): void {
  if (!/\b(?:at|on|off) (?:the )?(?:[a-z]+ )?port\b/.test(plain)) return;
  for (const draft of drafts) {
    const told = draft.unit ?? draft.quantity ?? draft.points ?? draft.place;
    if (told !== undefined || draft.gone || draft.over || draft.value >= most) continue;
    if (Number.isInteger(draft.value)) continue;
    takeFor(draft, "static_pressure", "in wc");
    // "switch is rated .62": set so by its maker
    if (items[draft.index - 1]?.text === "rated") draft.rating = "nominal";
  }
}
