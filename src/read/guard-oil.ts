import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { notMeasured } from "./not-measured.ts";

/** "added 8 oz oil": no refrigerant; its number stays as written. */
export function oilWeighed(draft: Draft, items: readonly Item[]): void {
  if (draft.quantity !== "mass") return;
  const near = [-2, -1, 1, 2].some((step) => items[draft.index + step]?.text === "oil");
  // "12 lb of dry ice": what keeps goods cold, no refrigerant
  const [of, dry, ice] = items.slice(draft.index + 1, draft.index + 4).map(({ text }) => text);
  const other =
    of === "of" && /^(?:cleaner|descaler|soap|bleach|glycol|salt|flux|dye|water)$/.test(dry ?? "");
  const made = (of === "per" && dry === "batch") || items[draft.index - 1]?.text === "ice";
  if (other || made) {
    notMeasured(draft);
    draft.action = undefined;
    return;
  }
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

/** "htr 14.2 on a 14.1 b" behind a superheat: what heats has none, nor have its other legs. */
export function heaterCold(draft: Draft, drafts: readonly Draft[], items: readonly Item[]): void {
  const heats = draft.before.some((at) =>
    /^(?:heaters?|htrs?|elements?)$/.test(items[at]?.text ?? ""),
  );
  if (!heats || !isFilledCold(draft)) return;
  const row = drafts.filter(
    (one) => one.index >= draft.index && one.sentence === draft.sentence && isFilledCold(one),
  );
  for (const one of row) {
    one.quantity = undefined;
    one.unit = undefined;
    one.question = "quantity";
  }
}

/** A superheat that neither a word nor a unit says. */
function isFilledCold({ quantity, named, ownUnit }: Draft): boolean {
  const cold = /^(?:superheat|subcooling)$/;
  return cold.test(quantity ?? "") && !cold.test(named ?? "") && !ownUnit;
}
