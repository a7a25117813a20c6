import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** "148 psi on ckt 2 was 150": the machine is of the figure before it, and what it was is told behind. */
export function onItWas(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || left.subject !== undefined || left.gone) return;
    const [on, machine, was, value] = items.slice(left.index + 1, left.index + 5);
    if (!/^(?:on|in|for)$/.test(on?.text ?? "") || machine?.kind !== itemKind.subject) return;
    if (was?.text !== "was" || value !== items[right.index]) return;
    const told = left.unit ?? left.named ?? left.hint ?? left.place;
    if (told === undefined || machine.subject === undefined) return;
    if (right.unit !== undefined && right.unit.dimension !== left.unit?.dimension) return;
    const at = left.index + 2;
    left.subject = machine.subject;
    left.behind = [...left.behind, at];
    right.subject = undefined;
    right.thing = undefined;
    right.component = false;
    right.before = right.before.filter((index) => index !== at);
  });
}
