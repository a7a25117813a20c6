import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const way = /^(?:at|to|into|in|entering|leaving|off|by|near)$/;
const ofCircuit: ReadonlySet<string> = new Set(["liquid", "suction", "discharge"]);

/** "liquid back at the outdoor 41 degrees": where on a pipe it was read is the unit, and not the weather. */
export function atTheOutdoor(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (draft.place !== "outdoor_air") continue;
    const at = draft.before.find((i) =>
      /^(?:outdoor|od|outdoors|outside)$/.test(items[i]?.text ?? ""),
    );
    if (at === undefined) continue;
    const led = items[at - 1]?.text === "the" ? items[at - 2]?.text : items[at - 1]?.text;
    const pipe = draft.before.find((i) => i < at && ofCircuit.has(items[i]?.label?.place ?? ""));
    const place = pipe === undefined ? undefined : items[pipe]?.label?.place;
    if (!way.test(led ?? "") || place === undefined) continue;
    draft.place = place;
    draft.named ??= "temperature";
  }
}
