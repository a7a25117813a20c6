import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const colours =
  /^(?:bl(?:ac)?k|br(?:ow)?n|wh(?:i)?te?|red|blu|blue|yel|yellow|org|orange|gry|gray|grey|pur|purple|grn|green|com|pink|pnk|tan)$/;

/** "brn-blk 48 ohm, brn-wht 71": between which wires. */
export function betweenWires(items: readonly Item[], { index }: Draft): boolean {
  const [first, joint, second] = items.slice(index - 3, index);
  const joined = /^(?:-|to|\/)$/.test(joint?.text ?? "");
  return joined && colours.test(first?.text ?? "") && colours.test(second?.text ?? "");
}
