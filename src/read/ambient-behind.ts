import { endsClause } from "./breaks.ts";
import type { Item } from "./item.ts";

/** "80 ambient, liquid 402": the word belongs to the figure before it where its clause ends. */
export function ambientBehind(items: readonly Item[], at: number): boolean {
  const [next, after] = [items[at + 1], items[at + 2]];
  if (next?.text !== "ambient" || next.label?.place !== "outdoor_air") return false;
  return after === undefined || endsClause(after);
}
