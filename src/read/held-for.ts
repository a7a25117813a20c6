import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "watched it for ten it went to 290": how long, in what nobody said; never a value of the row. */
export function heldFor(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    const [verb, it, joint] = items.slice(Math.max(0, draft.index - 3), draft.index);
    if (joint?.text !== "for" || draft.ownUnit || !(draft.value <= 90)) continue;
    const held = /^(?:watched|held|let|left|waited|sat|sit|held|hold|ran|run|valved|isolated)$/;
    const before = it?.text ?? "";
    if (held.test(before) || (before === "it" && held.test(verb?.text ?? ""))) draft.gone = true;
  }
}
