import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "82 outside: 301 and 98 F liquid": before the colon the weather, behind it what was read. */
export function outsideColon(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    const word = items[draft.index + 1];
    if (word?.label?.place !== "outdoor_air" || items[draft.index + 2]?.text !== ":") continue;
    if (draft.unit !== undefined && draft.unit.dimension !== "temperature") continue;
    if (draft.named !== undefined || draft.points !== undefined) continue;
    draft.place = "outdoor_air";
    draft.hint = "temperature";
    for (const other of list)
      if (other.before.includes(draft.index + 1)) {
        other.before = other.before.filter((index) => index !== draft.index + 1);
        if (other.place === "outdoor_air") other.place = undefined;
        if (other.unit === undefined) other.hint = undefined;
      }
  }
}
