import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { byVerb, numberedRows } from "./numbered-rows.ts";
import { between } from "./relate.ts";
import { rowsAnew } from "./rows-anew.ts";

/** Labels first, values after: "L1 L2 L3 208 209 210", "T1 T2 T3 2.1 2.2 2.1 ohm". */
function zip(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((draft, order) => {
    const { points } = draft;
    if (points === undefined || points.length < 2) return;
    const row = list.slice(order, order + points.length);
    if (row.length < points.length) return;
    const following = Number(points.at(-1)?.[0]?.slice(-1)) + 1;
    const named = row.some(
      (other, at) => other.value === following && byVerb(items, other, list[order + at + 1]),
    );
    if (named) return;
    const joined = row.every(
      (other, at) =>
        at === 0 ||
        (other.points === undefined &&
          sameDimension(other, draft) &&
          plainGap(items, row[at - 1], other)),
    );
    if (!joined) return;
    row.forEach((other, at) => {
      other.points = [points[at] ?? []];
    });
  });
}

function sameDimension(a: Draft, b: Draft): boolean {
  return a.unit === undefined || b.unit === undefined || a.unit.dimension === b.unit.dimension;
}

function plainGap(items: readonly Item[], left: Draft | undefined, right: Draft): boolean {
  if (left === undefined) return false;
  const gap = between(items, left, right);
  return gap.list || gap.empty;
}

/** "1 - 1.22G" lines under "leads to ground": the number before the dash is the lead. */
function tableRows(list: readonly Draft[], items: readonly Item[]): void {
  const leads = items.some(
    (item) =>
      item.text === "leads" ||
      item.text === "lead" ||
      item.points?.[0]?.[0]?.startsWith("lead") === true,
  );
  if (!leads) return;
  list.forEach((draft, order) => {
    const next = list[order + 1];
    if (
      next === undefined ||
      draft.unit !== undefined ||
      draft.points !== undefined ||
      !Number.isInteger(draft.value) ||
      draft.value > 12 ||
      draft.value < 1
    )
      return;
    const item = items[draft.index];
    const before = items[draft.index - 1];
    const joint = items[draft.index + 1];
    if (item === undefined || (before !== undefined && before.kind !== itemKind.line)) return;
    if (
      next.index !== draft.index + 2 ||
      joint === undefined ||
      joint.kind !== itemKind.sign ||
      joint.text === "/"
    )
      return;
    draft.gone = true;
    item.owner = "<row> <value>";
    next.points = [[`lead ${draft.value}`]];
    next.before = [draft.index, ...next.before];
  });
}

/** "0.5 1.6 2.1 on C-R C-S R-S": values, then their points in the same order. */
function zipBehind(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((last, order) => {
    const { points } = last;
    if (points === undefined || points.length < 2 || last.count > 1) return;
    if (!last.behind.some((index) => items[index]?.kind === itemKind.points)) return;
    // "500, same on leads 2 and 3": both are the same
    if (last.same && points.length === 2) return;
    const row = list.slice(order + 1 - points.length, order + 1);
    if (row.length !== points.length || order + 1 < points.length) return;
    const others = row.slice(0, -1);
    if (!others.every((one) => one.points === undefined && sameDimension(one, last))) return;
    if (last.sentence !== row[0]?.sentence) return;
    row.forEach((one, at) => {
      one.points = [points[at] ?? []];
    });
  });
}

export function shareRows(drafts: readonly Draft[], items: readonly Item[]): void {
  zipBehind(
    drafts.filter((draft) => !draft.gone),
    items,
  );
  zip(
    drafts.filter((draft) => !draft.gone),
    items,
  );
  tableRows(
    drafts.filter((draft) => !draft.gone),
    items,
  );
  numberedRows(
    drafts.filter((draft) => !draft.gone),
    items,
  );
  rowsAnew(
    drafts.filter((draft) => !draft.gone),
    items,
  );
}
