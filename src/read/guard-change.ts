import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { notMeasured } from "./not-measured.ts";
import { roseBy } from "./rose-by.ts";

const moved = /^(?:lost|losing|loses|gained|gaining)$/;

/** "lost 12 in an hr": how far it went, no value; pounds that were lost are weighed. */
function lost(draft: Draft, items: readonly Item[]): boolean {
  if (draft.unit?.dimension === "mass" || !moved.test(items[draft.index - 1]?.text ?? ""))
    return false;
  return draft.quantity !== "current" && draft.quantity !== "voltage";
}

/** "all 3 up 2 amps": by how much; "up to", "up at" lead to a value. */
function upBy(draft: Draft, items: readonly Item[]): boolean {
  const [word, before] = [items[draft.index - 1], items[draft.index - 2]];
  const way = word?.text ?? "";
  // "down to 4.2" is one word here
  if (word === undefined || word.to - word.from > way.length) return false;
  if (!/^(?:up|down)$/.test(way) || !draft.ownUnit || before === undefined) return false;
  if (draft.unit?.dimension !== "current" && draft.unit?.dimension !== "voltage") return false;
  return draft.count > 1 || /^(?:is|are|its|went|came|amps|all|all 3|legs)$/.test(before.text);
}

/** A bare number with a dash between it and this one: "8-4". */
function dashedTo(items: readonly Item[], index: number, way: 1 | -1): boolean {
  const [dash, other] = [items[index + way], items[index + 2 * way]];
  const glued = dash?.glued === true && items[way === 1 ? index + 2 : index]?.glued === true;
  return dash?.text === "-" && glued && other?.kind === itemKind.number && other.unit === undefined;
}

/** "total now 4-6", "plate 11-8" of pounds and ounces: no range of a weight, and no two weights. */
function poundsDash(draft: Draft, items: readonly Item[]): boolean {
  if (draft.quantity !== "mass" || draft.ownUnit) return false;
  if (!Number.isNaN(draft.high)) return true;
  return dashedTo(items, draft.index, 1) || dashedTo(items, draft.index, -1);
}

const gauged: ReadonlySet<string> = new Set(["pressure", "superheat", "subcooling", "current"]);

/** Of so small a figure nobody says whether it is where it stands or by how much; common practice, no source. */
const smallest = { pressure: 40, superheat: 15, subcooling: 15, current: 6 } as const;

/** "suction fell 12 and head rose 30": by how much, or to what? */
function fellBy(draft: Draft, items: readonly Item[]): boolean {
  const { quantity } = draft;
  if (draft.ownUnit || quantity === undefined || draft.series !== undefined) return false;
  if (!gauged.has(quantity)) return false;
  const most = Object.entries(smallest).find(([name]) => name === quantity)?.[1] ?? 0;
  return draft.value <= most && roseBy(items, draft.index, "");
}

/** F or Cel by which a day grows colder at most, so told; more is how warm it is. Our choice, no source. */
const mostOfDay = 25;

/** "ambient's down 10": by how much, or to what? */
function dayBy(draft: Draft, items: readonly Item[]): boolean {
  const word = items[draft.index - 1];
  if (draft.place !== "outdoor_air" || draft.ownUnit || draft.value > mostOfDay) return false;
  const bare = word !== undefined && word.to - word.from === word.text.length;
  return bare && /^(?:up|down)$/.test(word.text);
}

/** What says how something changed is no value of it. */
export function changes(draft: Draft, items: readonly Item[]): void {
  if (fellBy(draft, items) || dayBy(draft, items)) draft.question = "quantity";
  else if (lost(draft, items)) notMeasured(draft);
  else if (upBy(draft, items)) draft.question = "quantity";
  else if (poundsDash(draft, items)) draft.question = "unit";
}
