import { isParted } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { fits } from "./kinds.ts";

const moves = /^(?:went|goes|rose|rises|climbed|crept|drifted|fell|falls|dropped|drops|sank)$/;

/** "…, went .65 to .9 torr": both ends of the change are told behind the comma. */
function hasItsOwnStart(items: readonly Item[], { index }: Draft): boolean {
  const [verb, to, end] = [items[index - 1], items[index + 1], items[index + 2]];
  return moves.test(verb?.text ?? "") && to?.text === "to" && end?.kind === itemKind.number;
}

/** "amps 14.1 14.2 14.0": the unit or the name before a row, which its last figure does not show. */
function headOfRow(items: readonly Item[], { index }: Draft): Item | undefined {
  let at = index - 1;
  while (items[at]?.kind === itemKind.number || items[at]?.text === "/") at--;
  return items[at];
}

/**
 * "amps 14.1 14.2 14.0, down to 310 mics", "return 140, signal is 7.2 volts", "bus 583, went .65 to .9 torr":
 * behind the comma something else is told, no change of what stands before it.
 */
export function ofOtherClause(items: readonly Item[], left: Draft, right: Draft): boolean {
  if (!isParted(items, left.index, right.index)) return false;
  if (hasItsOwnStart(items, right)) return true;
  const dimension = right.ownUnit ? right.unit?.dimension : undefined;
  if (dimension === undefined || left.unit !== undefined) return false;
  if (left.hint !== undefined && !fits(left.hint, dimension)) return true;
  const head = headOfRow(items, left);
  if (head?.kind === itemKind.unit) return head.unit?.dimension !== dimension;
  const named = head?.label?.quantity ?? head?.label?.hint;
  return named !== undefined && !fits(named, dimension);
}
