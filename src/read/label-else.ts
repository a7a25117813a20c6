import { type Item, itemKind } from "./item.ts";

/** "coil in, port 2 pipe 41": a coil that was put in, and then something else. */
export function isCoilIn(items: readonly Item[], at: number, plain: string): boolean {
  const item = items[at];
  if (item === undefined || plain.slice(item.from, item.to) !== "coil in") return false;
  const behind = items[at + 2];
  return items[at + 1]?.text === "," && behind !== undefined && behind.kind !== itemKind.number;
}

/** "bus pass is 38 a month": what people ride in. */
export function isRide(items: readonly Item[], at: number): boolean {
  const next = items[at + 1]?.text ?? "";
  return items[at]?.text === "bus" && /^(?:pass|ticket|tickets|stop|ride|fare|driver)$/.test(next);
}
