import type { Gap } from "./goes-left.ts";
import { itemKind } from "./item.ts";

/** "amps 31 32 44 rla 33.4": the last of bare legs side by side, none twice another; common practice, no source. */
export function endsLegs({ items, left }: Gap): boolean {
  const [first, second, own] = items.slice(Math.max(0, left.index - 2), left.index + 1);
  const legs = [first, second, own];
  if (!legs.every((one) => one?.kind === itemKind.number && one.unit === undefined)) return false;
  const values = legs.map((one) => one?.value ?? 0);
  return Math.max(...values) <= 2 * Math.min(...values);
}
