import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "winding's open common to start and common to run's 2.6": the first of the pairs is the one that is open. */
export function openThenPair(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((left, order) => {
    const right = drafts[order + 1];
    if (!left.over || left.points !== undefined || right === undefined || right.over) return;
    const [first, second, ...more] = right.points ?? [];
    if (first === undefined || second === undefined || more.length > 0) return;
    const pair = items[left.index + 1];
    if (first.length !== 2 || pair?.points?.[0] !== first) return;
    left.points = [first];
    right.points = [second];
    left.behind.push(left.index + 1);
  });
}
