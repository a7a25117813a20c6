import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** "67 WB in": the air into the coil, from indoors. */
export function bulbIn(items: readonly Item[], draft: Draft): void {
  if (draft.named !== "wet_bulb_temperature" || draft.place !== undefined) return;
  for (let i = draft.index + 1; i <= draft.index + 3; i++) {
    const text = items[i]?.text;
    if (text === "in" && (items[i + 1] === undefined || items[i + 1]?.kind === itemKind.sign)) {
      draft.place = "indoor_air";
      return;
    }
    if (text !== "wb" && text !== "wet" && text !== "bulb") return;
  }
}
