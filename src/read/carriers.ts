import { classOf } from "./carrier.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** "same shell temp it was 2100", "at this temp": how it was measured, not what. */
function sameAsBefore(items: readonly Item[], i: number): boolean {
  const item = items[i];
  const before = items[i - 1]?.text;
  if (item?.kind !== itemKind.label || items[i + 1]?.kind === itemKind.number) return false;
  if (before === "same") return items[i + 1] !== undefined;
  return (before === "this" || before === "that") && items[i - 2]?.text === "at";
}

/** "won't start, 481 480 482": what it does not do is no state of a value. */
function denied(items: readonly Item[], i: number): boolean {
  return items[i]?.label?.state !== undefined && ((items[i - 1]?.roles ?? 0) & role.not) !== 0;
}

/** "L3 OL, DC- side all ok": another side of the bridge, told for itself. */
function sideOfBridge(items: readonly Item[], i: number): boolean {
  const item = items[i];
  if (item?.kind !== itemKind.points || items[i + 1]?.text !== "side") return false;
  return (
    item.points?.[0]?.[0]?.startsWith("DC") === true &&
    items[i + 2]?.kind !== itemKind.number &&
    items[i - 1]?.text === ","
  );
}

/** Items between two places that say something of a value. */
export function carriers(items: readonly Item[], from: number, to: number): number[] {
  const list: number[] = [];
  for (let i = from; i < to; i++)
    if (
      classOf(items[i]) !== "" &&
      !sameAsBefore(items, i) &&
      !sideOfBridge(items, i) &&
      !denied(items, i)
    )
      list.push(i);
  return list;
}
