import { classOf } from "./carrier.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import type { Label } from "./label.ts";
import { between } from "./relate.ts";
import { role } from "./word.ts";

/** A named rating outweighs a plate's "rated" beside it. */
function takeRating(draft: Draft, label: Label): void {
  if (label.rating === undefined) return;
  if (draft.rating === undefined || draft.rating === "nominal") {
    draft.rating = label.rating;
    draft.plate = label.plate === true || draft.plate;
  }
}

function takeLabel(draft: Draft, label: Label): void {
  takeRating(draft, label);
  draft.place ??= label.place;
  draft.named ??= label.quantity;
  draft.hint ??= label.hint;
  draft.state ??= label.state;
  draft.stat ??= label.stat;
  draft.kind ??= label.kind;
  draft.reference ??= label.reference;
  draft.action ??= label.action;
  draft.thing ??= label.thing;
  if (label.component === true) draft.component = true;
  if (label.earlier === true) draft.earlier = true;
}

/** "suction … saturation 43" is the saturation of the suction. */
function joinPlaces(draft: Draft, label: Label): boolean {
  if (label.quantity !== "temperature" || label.place !== undefined) return false;
  if (draft.place === "suction") draft.place = "suction_saturation";
  else if (draft.place === "discharge" || draft.place === "liquid")
    draft.place = "discharge_saturation";
  else return false;
  draft.named = "temperature";
  return true;
}

function takeTime(draft: Draft, items: readonly Item[], index: number): void {
  const item = items[index];
  if (item?.unit === undefined) return;
  const seconds = item.value * item.unit.factor;
  const before = items[index - 1];
  const held =
    before?.text === "for" ||
    ((before?.roles ?? 0) & role.about && items[index - 2]?.text === "for");
  if (held) draft.lasting ??= seconds;
  else draft.after ??= seconds;
}

function take(draft: Draft, items: readonly Item[], index: number): void {
  const item = items[index];
  if (item === undefined) return;
  switch (item.kind) {
    case itemKind.points:
      draft.points ??= item.points;
      return;
    case itemKind.ground:
      draft.grounded = true;
      return;
    case itemKind.subject:
      draft.subject ??= item.subject;
      return;
    case itemKind.number:
      takeTime(draft, items, index);
      return;
    case itemKind.unit:
      if (item.label !== undefined) takeLabel(draft, item.label);
      if (!draft.ownUnit && draft.unit === undefined) draft.unit = item.unit;
      return;
    default:
      if (item.label !== undefined) {
        if (!joinPlaces(draft, item.label)) takeLabel(draft, item.label);
      }
      if ((item.roles & role.earlier) !== 0) draft.earlier = true;
      if ((item.roles & role.now) !== 0) draft.now = true;
  }
}

/** "got 4 lb out", "6 lb in": what became of the mass. */
function inOrOut(items: readonly Item[], draft: Draft): "recovered" | "charged" | undefined {
  if (items[draft.index]?.unit?.dimension !== "mass") return undefined;
  for (let i = draft.index + 1; i <= draft.index + 2; i++) {
    const text = items[i]?.text;
    if (text === "out") return "recovered";
    if (text === "in" || text === "into") return "charged";
    if (text !== "back" && text !== "of") return undefined;
  }
  return undefined;
}

/** Earlier and now: of two in one draft the nearer counts. */
function settleTime(draft: Draft): void {
  if (draft.earlier && draft.now) draft.earlier = false;
}

const counts: Readonly<Record<string, number>> = {
  both: 2,
  two: 2,
  "2": 2,
  three: 3,
  "3": 3,
  four: 4,
  "4": 4,
  six: 6,
  "6": 6,
  five: 5,
  "5": 5,
};

/** "all three", "both of them": how many readings the value stands for. */
function countOf(items: readonly Item[], from: number, to: number, plain: string): number {
  for (let i = from; i < to; i++) {
    const item = items[i];
    if (item === undefined || (item.roles & role.all) === 0) continue;
    for (const word of plain.slice(item.from, item.to).split(" ")) {
      const count = counts[word];
      if (count !== undefined) return count;
    }
    const next = items[i + 1]?.text ?? "";
    if (
      next === "legs" ||
      next === "phases" ||
      next === "leads" ||
      next === "pairs" ||
      item.text === "across"
    )
      return 3;
  }
  return 1;
}

/** Fills a draft from the items that speak of it: the nearest first, those before ahead of those behind. */
export function describe(drafts: readonly Draft[], items: readonly Item[], plain: string): void {
  drafts.forEach((draft, order) => {
    for (let at = draft.before.length - 1; at >= 0; at--) {
      const index = draft.before[at];
      if (index !== undefined) take(draft, items, index);
    }
    for (const index of draft.behind) take(draft, items, index);
    draft.action ??= inOrOut(items, draft);
    settleTime(draft);
    const previous = drafts[order - 1];
    const next = drafts[order + 1];
    const from =
      previous === undefined
        ? 0
        : (previous.behind[previous.behind.length - 1] ?? previous.index) + 1;
    const to = next === undefined ? items.length : (next.before[0] ?? next.index);
    const row =
      (previous !== undefined && between(items, previous, draft).list) ||
      (next !== undefined && between(items, draft, next).list);
    draft.count = row ? 1 : countOf(items, from, to, plain);
  });
}

/** Does anything in the list belong to the class? */
export function hasClass(items: readonly Item[], list: readonly number[], kind: string): boolean {
  return list.some((index) => classOf(items[index]) === kind);
}
