import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** Microns as well as what a room or a box is brought down to; common practice, no source. */
const either: readonly [number, number] = [15, 90];

const evacuates =
  /^(?:vac|vacuum|evac|evacuat|micron|torr|pump|hold|held|isolat|valved|blank|decay|triple|rate)/;

/** "recovery machine pulled to 12 in": inches of mercury by their size, and no microns. */
function inchesPulled(draft: Draft, items: readonly Item[]): boolean {
  if (draft.gone || draft.quantity !== "vacuum" || draft.ownUnit) return false;
  return (
    draft.value <= 30 &&
    items[draft.index + 1]?.text === "in" &&
    items[draft.index + 2] === undefined
  );
}

/** "pulled it down to forty four" alone: a vacuum as well as what was cooled. */
export function pulledTo(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings, testing }: Context,
): void {
  for (const draft of drafts) if (inchesPulled(draft, items)) draft.question = "unit";
  const told =
    testing === "vacuum" ||
    readings.some(({ quantity }) => quantity === "vacuum") ||
    items.some(({ text }) => evacuates.test(text));
  if (told) return;
  for (const draft of drafts) {
    if (draft.gone || draft.quantity !== "vacuum" || !draft.assumedUnit || draft.ownUnit) continue;
    const inEither = draft.value >= either[0] && draft.value <= either[1];
    const pulled = draft.before.some((index) => items[index]?.text.startsWith("pull") === true);
    if (inEither && pulled) draft.question = "quantity";
  }
}
