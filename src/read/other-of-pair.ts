import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const heat = /^temp(?:erature)?$/;
const force = /^press(?:ure)?$/;
const sides: ReadonlySet<string> = new Set(["suction", "discharge", "liquid"]);

/** "liq temp 88, press 212": behind one of a line's two gauges the other, which goes without its name. */
export function otherOfPair(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || right.place !== undefined || left.sentence !== right.sentence) return;
    if (!sides.has(left.place ?? "") || right.subject !== undefined) return;
    const own = items[right.index - 1]?.text ?? "";
    const other = left.unit?.dimension ?? items[left.index - 1]?.label?.hint;
    // "48F @ 119 psi": a line's warmth at its pressure
    const at = /^(?:@|at)$/.test(own) && right.index === left.index + 2;
    const both =
      (other === "temperature" && right.unit?.dimension === "pressure") ||
      (other === "pressure" && right.unit?.dimension === "temperature");
    if (at && both) {
      right.place = left.place;
      return;
    }
    const pair =
      (other === "temperature" && force.test(own)) || (other === "pressure" && heat.test(own));
    if (!pair || right.index - left.index > 3) return;
    right.place = left.place;
  });
}
