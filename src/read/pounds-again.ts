import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** What goes in is of the size of what came out or stands on the plate; common practice, no source. */
const apart = 3;

/** Where a bottle is spoken of a figure may be its own weight. */
const bottle = /^(?:bottle|cylinder|cyl|tank|drum|jug|can)s?$/;

/** "eleven eight", "six ten" behind pounds and ounces: the second word counts ounces. */
function ouncesOf(item: Item, value: number): number {
  if (!item.loose && value < 100) return value;
  const hundreds = item.loose ? value * 10 : value;
  const base = item.loose ? 10 : 100;
  const ounces = Math.round(hundreds % base);
  return ounces < 16 ? Math.floor(Math.round(hundreds) / base) + ounces / 16 : Number.NaN;
}

/** "plate 6lb 13oz weighed in 6 13": beside pounds and ounces a pair of bare figures is both again. */
function typedPair(items: readonly Item[], draft: Draft, next: Draft | undefined): boolean {
  const [item, second] = [items[draft.index], items[draft.index + 1]];
  if (next?.index !== draft.index + 1 || next.ownUnit || item?.spoken !== false) return false;
  const whole = (value: number): boolean => Number.isInteger(value) && value >= 0;
  return whole(draft.value) && whole(next.value) && next.value < 16 && second?.glued === false;
}

/**
 * "pulled out 8.3 pounds put in 9.1", "recovered nine pounds four ounces the tag says eleven eight": beside
 * pounds of its size a figure said alike is pounds too, where nobody would count ounces so.
 */
export function poundsAgain(drafts: readonly Draft[], items: readonly Item[], plain: string): void {
  drafts.forEach((draft, order) => {
    const item = items[draft.index];
    if (draft.gone || draft.ownUnit || item === undefined || draft.named !== undefined) return;
    if (draft.unit !== undefined && !/^(?:lb|kg)$/.test(draft.unit.figure)) return;
    const weighed = draft.action !== undefined || draft.rating === "nameplate_charge";
    if (!(draft.quantity === undefined ? weighed : draft.quantity === "mass") || !weighed) return;
    const left = drafts
      .slice(0, order)
      .findLast((one) => !one.gone && one.quantity === "mass" && one.ownUnit);
    // "took out 2.6 kilos put back 3.1": nobody would say grams of that size so
    if (left?.unit?.figure === "kg" && draft.unit === undefined) {
      if (items.some(({ text }) => bottle.test(text))) return;
      const lead = items[draft.index - 1];
      if (lead?.label === undefined && !/^(?:in|back|out|up|says|is)$/.test(lead?.text ?? ""))
        return;
      if (draft.value <= left.value * apart && left.value <= draft.value * apart)
        asWeight(draft, "kg");
      return;
    }
    if (left?.unit?.figure !== "lb" || draft.unit?.figure === "kg") return;
    const said = plain.slice(items[left.index]?.from ?? 0, items[left.index]?.to ?? 0);
    const ounces = /(?:^|[^a-z])(?:oz|ounces?)\b|lbs? ?\d/.test(said);
    const next = drafts[order + 1];
    if (ounces && next !== undefined && typedPair(items, draft, next)) {
      draft.value += next.value / 16;
      draft.behind.push(next.index);
      next.gone = true;
      // shown in decimals, as a figure that was said
      item.spoken = true;
      asWeight(draft, "lb");
      return;
    }
    const pair = item.loose || (ounces && item.spoken && draft.value >= 100);
    if (pair ? !ounces : ounces || Number.isInteger(draft.value)) return;
    const value = ouncesOf(item, draft.value);
    if (Number.isNaN(value)) return;
    if (value / left.value > apart || left.value / value > apart) return;
    item.loose = false;
    draft.value = value;
    asWeight(draft, "lb");
  });
}

function asWeight(draft: Draft, unit: "lb" | "kg"): void {
  draft.quantity = "mass";
  draft.unit = unitCalled(unit);
  draft.assumedUnit = true;
}
