import { type Item, itemKind } from "./item.ts";

const tools = /^(?:clips?|leads?|probes?|bridge|meter|ohmmeter|tweezers)$/;

/** "kelvin clips 0.118 0.121 0.084": four wires to a meter, no degrees. */
export function kelvinClips(items: readonly Item[]): void {
  items.forEach((item, i) => {
    if (item.text !== "kelvin" || !tools.test(items[i + 1]?.text ?? "")) return;
    item.kind = itemKind.word;
    item.unit = undefined;
  });
}
