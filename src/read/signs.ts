import type { Item } from "./item.ts";
import { signWords } from "./words/signs.ts";

const indexes = new Map<string, number>();
signWords.forEach(([, sign], index) => {
  indexes.set(sign, index);
});
const names = signWords.map(([, sign]) => sign);

export function signIndex(sign: string): number {
  return indexes.get(sign) ?? -1;
}

/** Does the item carry the sign? */
export function carries(item: Item | undefined, index: number): boolean {
  return item?.signs?.includes(index) === true;
}

export function signName(index: number): string {
  return names[index] ?? "";
}
