import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

function isRail(points: readonly (readonly string[])[]): boolean {
  return points.length === 1 && points[0]?.length === 1 && points[0][0]?.startsWith("DC") === true;
}

/** Gives a draft the points that an item names: the first, or the other end of what it has. */
export function takePoints(draft: Draft, items: readonly Item[], index: number): void {
  const item = items[index];
  if (item === undefined) return;
  if (draft.points === undefined) draft.points = item.points;
  else if (
    index < draft.index &&
    isRail(draft.points) &&
    item.points !== undefined &&
    !isRail(item.points) &&
    item.points.every((one) => one.length === 1)
  )
    draft.points = item.points.map((one) => [one[0] ?? "", draft.points?.[0]?.[0] ?? ""]);
  // "DC minus side: U 0.40"
  else if (
    index < draft.index &&
    item.points !== undefined &&
    isRail(item.points) &&
    draft.points.every(
      (one) => one.length === 1 && /^(?:[UVW]|L\d|phase [ABC])$/.test(one[0] ?? ""),
    )
  )
    draft.points = draft.points.map((one) => [item.points?.[0]?.[0] ?? "", one[0] ?? ""]);
  else if (
    index > draft.index &&
    items[index - 1]?.text === "to" &&
    draft.points.every((one) => one.length === 1) &&
    item.points?.length === 1 &&
    item.points[0]?.length === 1
  )
    draft.points = draft.points.map((one) => [one[0] ?? "", item.points?.[0]?.[0] ?? ""]);
  else if (
    index > draft.index &&
    draft.points.length === 1 &&
    draft.points[0]?.length === 1 &&
    item.points?.[0]?.[0]?.startsWith("DC") === true
  )
    draft.points = [[draft.points[0][0] ?? "", item.points[0][0]]];
}
