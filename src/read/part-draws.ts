import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { between } from "./relate.ts";

/** "heaters 8.1 and 8.2 amps", "box -19, coil -27": a part's figure that is no resistance of it. */
export function partDraws(draft: Draft, right: Draft | undefined, items: readonly Item[]): void {
  if (!draft.component || draft.unit !== undefined) return;
  // no ohms are negative
  if (draft.value < 0) {
    draft.component = false;
    draft.hint = "temperature";
    return;
  }
  const row =
    right?.ownUnit === true &&
    right.unit?.dimension === "current" &&
    right.before.length === 0 &&
    between(items, draft, right).list;
  if (draft.hint !== "current" && !row) return;
  draft.component = false;
  draft.named = "current";
}
