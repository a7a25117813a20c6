import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { mayBeOhms } from "./may-be-ohms.ts";

/** "all three to ground at 1000 volts 200 meg 190 and 205": as many figures as leads, each its own. */
export function figureEach(drafts: readonly Draft[], at: number, count: number): boolean {
  const row = drafts.slice(at + 1, at + 1 + count);
  return (
    count > 1 &&
    row.length === count &&
    row.every((one) => one.points === undefined && !one.gone && mayBeOhms(one))
  );
}

/** "output six 0.39 0.39 0.40 0.39 0.39 0.40": a spoken number that counts the bare figures behind it. */
export function countOfRow(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((draft, order) => {
    const item = items[draft.index];
    if (item?.spoken !== true || item.unit !== undefined || draft.value < 2) return;
    const row = drafts.slice(order + 1).filter((one, at) => one.index === draft.index + 1 + at);
    const [first] = row;
    const counted = row.filter((one) => one.unit === undefined && !Number.isInteger(one.value));
    if (first === undefined || row.length !== draft.value || counted.length !== row.length) return;
    draft.gone = true;
    item.owner = "<count> <values>";
    first.before = [draft.index, ...first.before];
  });
}
