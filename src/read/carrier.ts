import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/**
 * What an item says about a value, as one letter: P points, G ground, L place or component,
 * Q quantity, U unit alone, R rating, C condition, A action, N a thing without a number,
 * S subject, T time, E earlier or now; nothing where it says none.
 */
export function classOf(item: Item | undefined): string {
  if (item === undefined || item.owner !== undefined) return "";
  switch (item.kind) {
    case itemKind.points:
      return "P";
    case itemKind.ground:
      return "G";
    case itemKind.subject:
      return (item.roles & role.clock) !== 0 ? "" : "S";
    case itemKind.unit:
      return item.unit?.dimension === "length" || item.unit?.dimension === "time" ? "" : "U";
    case itemKind.number:
      return item.unit?.dimension === "time" ? "T" : "";
    case itemKind.label:
      return labelClass(item);
    default:
      return (item.roles & (role.earlier | role.now)) !== 0 ? "E" : "";
  }
}

function labelClass(item: Item): string {
  const { label } = item;
  if (label === undefined) return "";
  if (label.rating !== undefined) return "R";
  if (label.place !== undefined || label.component === true) return "L";
  if (label.quantity !== undefined || (label.hint !== undefined && label.thing === undefined))
    return "Q";
  if (label.action !== undefined) return "A";
  if (
    label.state !== undefined ||
    label.stat !== undefined ||
    label.kind !== undefined ||
    label.reference !== undefined
  )
    return "C";
  return label.thing === undefined ? "" : "N";
}
