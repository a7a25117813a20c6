import { isStrongBreak } from "../breaks.ts";
import type { Item } from "../item.ts";
import type { Note } from "../note.ts";
import { role } from "../word.ts";

export function isBreak(item: Item | undefined): boolean {
  return (
    item === undefined ||
    isStrongBreak(item) ||
    item.text === "," ||
    (item.roles & role.conjunction) !== 0
  );
}

/** What stands behind an item up to the next break, no farther than so many items. */
export function clauseBehind(items: readonly Item[], i: number, far: number): readonly Item[] {
  const rest = items.slice(i + 1, i + 1 + far);
  const end = rest.findIndex(isBreak);
  return end < 0 ? rest : rest.slice(0, end);
}

const shut =
  /^(?:drier|driers|dryer|filter|coil|evaporator|evap|condenser|receiver|accumulator|case|cases|leak|valve|txv|strainer|core|heat|exchanger|compressor|comp|header|zone|room|iu)\b/;

/** A part named right behind "valved off", and no figure that a gauge would show. */
export function shutIn({ items, plain }: Note, i: number): boolean {
  const item = items[i];
  const said = plain.slice(item?.from, item?.signsTo);
  if (!/^(?:valved off|valving off|closed it off|isolated)$/.test(said)) return false;
  const named = clauseBehind(items, i, 5).some(
    ({ text, subject }) => shut.test(text) || subject !== undefined,
  );
  // "comp 2 isolated and taped": the machine named right before is shut off
  const ahead = items[/^(?:is|was|now)$/.test(items[i - 1]?.text ?? "") ? i - 2 : i - 1];
  const machine = (ahead?.subject ?? "") !== "";
  return (
    (named || (said === "isolated" && machine)) &&
    !items.some(({ text }) => /^(?:pump|microns?|vac|vacuum)\b/.test(text))
  );
}
