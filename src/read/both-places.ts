import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "suction and head both one eighty five": one value that was read at two places. */
export function bothPlaces(drafts: Draft[], items: readonly Item[]): void {
  for (const draft of [...drafts]) {
    if (draft.gone || draft.count !== 2 || draft.points !== undefined || draft.same) continue;
    const named = draft.before.filter((index) => items[index]?.label?.place !== undefined);
    const [first, second, ...more] = named.slice(-2);
    if (first === undefined || second === undefined || more.length > 0) continue;
    const joint = items.slice(first + 1, second);
    if (joint.length !== 1 || !/^(?:and|&|n)$/.test(joint[0]?.text ?? "")) continue;
    const [one, other] = [items[first]?.label?.place, items[second]?.label?.place];
    if (one === undefined || other === undefined || one === other) continue;
    if (draft.place !== one && draft.place !== other) continue;
    draft.count = 1;
    draft.place = one;
    drafts.push({ ...draft, place: other, before: [...draft.before], behind: [...draft.behind] });
  }
}
