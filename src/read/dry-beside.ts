import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "67 wet bulb inside, 80 dry": the dry bulb of the same air, never under its wet one. */
export function dryBeside(items: readonly Item[], drafts: readonly Draft[]): void {
  const wet = drafts.find((draft) => draft.named === "wet_bulb_temperature");
  if (wet === undefined) return;
  for (const draft of drafts) {
    const bare =
      draft.named === undefined && draft.points === undefined && draft.action === undefined;
    const warm = draft.unit === undefined || draft.unit.dimension === "temperature";
    if (!bare || !warm || draft.value < wet.value) continue;
    if (items[draft.index + 1]?.text !== "dry") continue;
    draft.named = "temperature";
    draft.place ??= wet.place;
  }
}
