import { type Item, itemKind } from "./item.ts";

const ends = /^(?:terminated|terminates|ended|finished|done)$/;

/** "defrost terminated at 48 after 22 min", "defrost ended on 52": how warm the coil was that ended it. */
export function defrostEnd(items: readonly Item[]): void {
  const defrost = items.findIndex(({ text }) => /^(?:defrost|defrosts|dfr)$/.test(text));
  if (defrost < 0) return;
  items.forEach((item, i) => {
    if (i < defrost || !ends.test(item.text) || item.label !== undefined) return;
    const [at, value] = [items[i + 1], items[i + 2]];
    if (!/^(?:at|on|@)$/.test(at?.text ?? "") || value?.kind !== itemKind.number) return;
    if (value.unit !== undefined || value.colon || i - defrost > 3) return;
    item.kind = itemKind.label;
    item.label = { quantity: "temperature" };
    item.signs = undefined;
  });
}
