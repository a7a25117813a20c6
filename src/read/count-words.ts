import { isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

export const counts: Readonly<Record<string, number>> = {
  both: 2,
  two: 2,
  "2": 2,
  three: 3,
  "3": 3,
  four: 4,
  "4": 4,
  six: 6,
  "6": 6,
  five: 5,
  "5": 5,
};

function countWord(items: readonly Item[], i: number, plain: string): number {
  const item = items[i];
  if (item?.text === "x3" || item?.text === "x2") return item.text === "x3" ? 3 : 2;
  if (item === undefined || (item.roles & role.all) === 0) return 0;
  if (/^(?:sides|ways|gauges|directions|times)$/.test(items[i + 1]?.text ?? "")) return 0;
  for (const word of plain.slice(item.from, item.to).split(" ")) {
    const count = counts[word];
    if (count !== undefined) return count;
  }
  const next = items[i + 1]?.text ?? "";

  return /^(?:legs|phases|leads|pairs|lines)$/.test(next) || item.text === "across" ? 3 : 0;
}

/** Does the clause end here for "all three"? */
function stops(item: Item): boolean {
  return isStrongBreak(item) || (item.kind === itemKind.sign && item.text === ",");
}

/** "84 meg, all three": behind a comma the count must end the clause. */
function countEnds(items: readonly Item[], i: number): boolean {
  let at = i;
  if (items[at]?.text === "same" || items[at]?.text === "on") at++;
  if (((items[at]?.roles ?? 0) & role.all) === 0) return false;
  const next = items[at + 1];
  return next === undefined || stops(next) || /^(?:leads|legs|phases|pairs)$/.test(next.text);
}

/** "all three", "both of them" in the value's own clause: how many readings it stands for. */
export function countOf(
  items: readonly Item[],
  draft: Draft,
  bounds: readonly [number, number],
  plain: string,
): number {
  for (let i = draft.index - 1; i >= bounds[0]; i--) {
    const item = items[i];
    if (item === undefined || stops(item)) break;
    const count = countWord(items, i, plain);
    if (count > 0) return count;
  }
  for (let i = draft.index + 1; i < bounds[1]; i++) {
    const item = items[i];
    if (item === undefined || isStrongBreak(item)) break;
    if (item.text === "," && item.kind === itemKind.sign && !countEnds(items, i + 1)) break;
    const count = countWord(items, i, plain);
    if (count > 0) return count;
    if (item.kind === itemKind.word && item.roles === 0) break;
  }
  return 1;
}
