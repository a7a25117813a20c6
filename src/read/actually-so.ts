import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** "suction 230 actually 242 psi": straight between two figures the word takes the first one back. */
export function actuallySo(items: readonly Item[]): void {
  items.forEach((item, i) => {
    if (item.text !== "actually") return;
    const [left, right] = [items[i - 1], items[i + 1]];
    if (left?.kind !== itemKind.number || right?.kind !== itemKind.number) return;
    const other = left.unit !== undefined && left.unit.dimension !== right.unit?.dimension;
    if (!other) item.roles = role.correct;
  });
}
