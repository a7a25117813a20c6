import type { Context } from "./context.ts";
import { type Draft, isUntold } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

/** How cold or warm a case is told, in the company's scale. Common practice, no source. */
const warmth = { us: [-40, 75], si: [-40, 24] } as const;

/** What stands right before the figure, or past "is", "at", "down to". */
function nameOf({ index }: Draft, items: readonly Item[]): Item | undefined {
  const before = items[index - 1];
  const verb =
    before !== undefined &&
    ((before.roles & (role.is | role.preposition)) !== 0 || /^(?:down|up|back)$/.test(before.text));
  return verb ? items[index - 2] : before;
}

/** Right behind the case's name. */
function behindName(draft: Draft, items: readonly Item[]): boolean {
  const name = nameOf(draft, items);
  // "case 1 2.4, 2 3.1"
  return (
    name?.kind === itemKind.subject || (name?.kind === itemKind.number && name.owner !== undefined)
  );
}

/** "case 4 -19, case 5 -18": a figure alone behind the number of a case is how cold it is, whatever gauge was read before. */
export function numberedCases(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const last = context.readings.findLast(({ subject }) => /^case \d/.test(subject ?? ""));
  if (last !== undefined && last.quantity !== "temperature") return;
  const [low, high] = warmth[context.units];
  for (const draft of drafts) {
    if (!/^case \d/.test(draft.subject ?? "") || !isUntold(draft) || !behindName(draft, items))
      continue;
    if (draft.value < low || draft.value > high) continue;
    draft.hint = "temperature";
    draft.place = "box";
  }
}

const wares =
  /^(?:dairy|meat|meats|produce|deli|bakery|fish|seafood|beer|frozen|icecream|freezer|cooler|cheese|poultry|chicken)$/;

/** "freezer -18, dairy 3, meat 1": cases by what lies in them, where more than one is told. */
export function waresCold(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const [low, high] = warmth[context.units];
  const told = drafts.filter((draft) => wares.test(nameOf(draft, items)?.text ?? ""));
  if (told.length < 2) return;
  for (const draft of told) {
    if (!isUntold(draft) || draft.value < low || draft.value > high) continue;
    draft.hint = "temperature";
    draft.place = "box";
  }
}
