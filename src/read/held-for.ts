import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const held = /^(?:watched|held|let|left|waited|sat|sit|hold|ran|run|valved|isolated)$/;

/** So many words stand between the verb and "for": "held 300 of nitrogen for ten". Our choice, no source. */
const FAR = 4;

/** "watched it for ten it went to 290", "held 300 nitrogen for ten": how long, in what nobody said; never a value of the row. */
export function heldFor(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (items[draft.index - 1]?.text !== "for" || draft.ownUnit || !(draft.value <= 90)) continue;
    const before = items.slice(Math.max(0, draft.index - 1 - FAR), draft.index - 1);
    const own = before.slice(
      before.findLastIndex(({ kind, text }) => kind === itemKind.line || /^[,.;]$/.test(text)) + 1,
    );
    if (own.some(({ text }) => held.test(text))) draft.gone = true;
  }
}
