import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "67 wet bulb inside, 80 dry", "78 db 65 wb return": the dry bulb of the same air, never under its wet one. */
export function dryBeside(items: readonly Item[], drafts: readonly Draft[]): void {
  const at = drafts.findIndex((draft) => draft.named === "wet_bulb_temperature");
  const wet = drafts[at];
  if (wet === undefined) return;
  drafts.forEach((draft, order) => {
    const besides = Math.abs(order - at) === 1 && draft.sentence === wet.sentence;
    const db = besides && isDb(items, draft.index);
    const bare =
      (draft.named === undefined || (db && draft.place === undefined)) &&
      draft.points === undefined &&
      draft.action === undefined;
    const warm = draft.unit === undefined || draft.unit.dimension === "temperature";
    if (!bare || !warm || draft.value < wet.value) return;
    if (!db && items[draft.index + 1]?.text !== "dry") return;
    draft.named = "temperature";
    draft.place ??= wet.place;
  });
}

/** "78 db" or "db 78" alone; "88 db out" is other air. */
function isDb(items: readonly Item[], at: number): boolean {
  const step = [1, -1].find((one) => items[at + one]?.text === "db");
  if (step === undefined) return false;
  return ![at + 2, at + 1, at - 1, at - 2].some((near) => other.test(items[near]?.text ?? ""));
}

const other = /^(?:out|outside|outdoors?|ambient|oat|roof|supply|leaving|off)$/;
