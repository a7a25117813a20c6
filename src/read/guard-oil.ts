import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { notMeasured } from "./not-measured.ts";

/** "added 8 oz oil": no refrigerant; its number stays as written. */
export function oilWeighed(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "mass") return;
  const near = [-2, -1, 1, 2].some((step) => items[draft.index + step]?.text === "oil");
  // "12 lb of dry ice": what keeps goods cold, no refrigerant
  const [of, dry, ice] = items.slice(draft.index + 1, draft.index + 4).map(({ text }) => text);
  const cools =
    (of === "of" && (dry === "ice" || ice === "ice")) || (of === "dry" && dry === "ice");
  if (!near && !cools) return;
  notMeasured(draft);
  draft.action = undefined;
}

/** "oil 3/4 up glass": how high it stands, no pressure. */
export function oilLevel(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "pressure" || !draft.assumedUnit) return;
  // "oil level is low a quarter glass": the level is low, no side of the circuit
  if (draft.place !== "oil" && !items.some(({ text }) => text === "oil")) return;
  const glass = items.some((item) => /^(?:glass|level|sightglass|full)$/.test(item.text));
  if (items[draft.index]?.fraction !== true && !(glass && draft.value <= 1)) return;
  notMeasured(draft);
}
