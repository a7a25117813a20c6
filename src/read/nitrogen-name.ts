import type { Item } from "./item.ts";

const names: ReadonlySet<string> = new Set(["nitrogen", "n2", "nitro"]);

/** "nitrogen", "n2": the gas of a pressure test, as it is named. */
export function isNitrogen(item: Item | undefined): boolean {
  return item !== undefined && names.has(item.text);
}
