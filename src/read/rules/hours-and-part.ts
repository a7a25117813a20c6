import type { Item } from "../item.ts";
import { partWords } from "../words/parts.ts";
import { things } from "./counted-things.ts";
import { isOrdinalUpTo } from "./near.ts";

const partNames: ReadonlySet<string> = new Set(partWords.flatMap(([words]) => words.split("|")));

/** "3.25 hrs n 1 drier", "2 hrs + 2 filters": hours of work, and then what it took; where its count stands, or 0. */
export function partBehindHours(items: readonly Item[], i: number, elsewhere: RegExp): number {
  const [joint, count, part] = items.slice(i + 1, i + 4);
  if (!/^(?:,|and|n|&|\+|plus)$/.test(joint?.text ?? "")) return 0;
  if (!isOrdinalUpTo(count, 24) || elsewhere.test(items[i - 1]?.text ?? "")) return 0;
  return things.has(part?.text ?? "") || partNames.has(part?.text ?? "") ? i + 2 : 0;
}
