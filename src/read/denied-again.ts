import type { Reading } from "../model.ts";
import { isStrongBreak } from "./breaks.ts";
import type { Context } from "./context.ts";
import { adopt } from "./correct.ts";
import type { Draft } from "./draft.ts";
import { onlyAlive } from "./inherit.ts";
import { type Item, itemKind, wordsFrom } from "./item.ts";
import { usualQuantity } from "./kinds.ts";

/** Where "not" or "instead of" stands right before item `index`; -1 where it does not. */
function denied(items: readonly Item[], index: number): number {
  const [first, second] = [items[index - 2]?.text, items[index - 1]?.text];
  if (/^(?:not|wasnt|isnt|aint)$/.test(second ?? "")) return index - 1;
  return second === "of" && first === "instead" ? index - 2 : -1;
}

/** Nothing but a few small words between the value and its denial. */
function near(items: readonly Item[], from: number, to: number): boolean {
  const between = items.slice(from + 1, to);
  return (
    between.length <= 4 &&
    between.every(
      (item) => item.kind !== itemKind.number && (!isStrongBreak(item) || item.text === ","),
    )
  );
}

/** "that was 9.1 lbs not kilos": the figure stands, its unit was another. */
function unitDenied(drafts: readonly Draft[], items: readonly Item[], context: Context): void {
  const only = onlyAlive(drafts);
  if (only === undefined || !only.ownUnit || only.corrects) return;
  const [not, unit] = items.slice(only.index + 1, only.index + 3);
  if (not?.text !== "not" || unit?.kind !== itemKind.unit || unit.unit === undefined) return;
  const old = context.readings.findLast(
    (one) => Number(one.figure.number) === only.value && one.figure.unit === unit.unit?.figure,
  );
  if (old === undefined || unit.unit.dimension !== only.unit?.dimension) return;
  only.behind = [...only.behind, only.index + 1, only.index + 2];
  adopt(only, old);
}

/** The last figure of the job that was said so, and is no plate's. */
function saidSo(context: Context, value: number): Reading | undefined {
  return context.readings.findLast(
    (one) => Number(one.figure.number) === value && one.rating === undefined,
  );
}

const takenBack = /^(?:change|undo|scratch|strike|forget|ignore|delete|disregard)$/;

const isSmall = (item: Item | undefined): boolean => /^(?:the|that|my)$/.test(item?.text ?? "");

/** "sorry, not 418, head was 381": the first is what was filed before, and no value. */
function deniedFirst(left: Draft, right: Draft, items: readonly Item[], context: Context): boolean {
  const [item, value] = [items[left.index], items[right.index]];
  const back = takenBack.test(
    items[left.index - (isSmall(items[left.index - 1]) ? 2 : 1)]?.text ?? "",
  );
  // "that 14.3 should be 13.4"
  const meant = items[left.index - 1]?.text === "that" && left.index === 1;
  const should = meant && /^should\b/.test(wordsFrom(items, left.index + 1, right.index));
  if (denied(items, left.index) < 0 && !back && !should) return false;
  if (item?.kind !== itemKind.number) return false;
  if (value?.kind !== itemKind.number || right.index > left.index + 6) return false;
  const old = saidSo(context, left.value);
  if (old === undefined || (right.place !== undefined && old.at !== right.place)) return false;
  const other = right.named ?? (right.unit && usualQuantity(right.unit.dimension));
  if (other !== undefined && other !== old.quantity) return false;
  if (should) right.rating = undefined;
  left.gone = true;
  item.owner = "not <value>";
  right.before = [left.index, ...right.before];
  adopt(right, old);
  return true;
}

/** "not L2, L1 was 39": of two points in a row the first is what it was not. */
function deniedPoint(drafts: readonly Draft[], items: readonly Item[], context: Context): void {
  const at = items.findIndex(({ text }) => text === "not");
  const name = items[at + 1];
  if (at < 0 || at > 2 || name?.kind !== itemKind.points || name.points?.length !== 2) return;
  const [, right] = name.points;
  const only = onlyAlive(drafts);
  if (only === undefined || right === undefined || !only.before.includes(at + 1)) return;
  const old = context.readings.findLast(
    ({ points, rating }) => points?.[0] === right[0] && rating === undefined,
  );
  if (old === undefined) return;
  only.points = [old.points?.length === 2 && right.length === 1 ? [...(old.points ?? [])] : right];
  only.count = 1;
  only.corrects = true;
}

/** "put the amps down as 14.8 please, not 18.4": the second is what was filed before, and no value. */
export function deniedAgain(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  unitDenied(drafts, items, context);
  deniedPoint(drafts, items, context);
  const list = drafts.filter((draft) => !draft.gone);
  const [left, right] = list;
  if (left === undefined || right === undefined || list.length > 2) return;
  if (deniedFirst(left, right, items, context)) return;
  const at = denied(items, right.index);
  if (at < 0 || !near(items, left.index, at)) return;
  // "340 not 304" is read elsewhere
  if (at === left.index + 1 && items[at]?.text === "not") return;
  const old = saidSo(context, right.value);
  const item = items[right.index];
  if (old === undefined || item === undefined) return;
  if (left.place !== undefined && old.at !== left.place) return;
  right.gone = true;
  item.owner = "not <value>";
  left.behind = [...left.behind, right.index];
  left.place = undefined;
  adopt(left, old);
}
