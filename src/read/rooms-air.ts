import type { Context } from "./context.ts";
import { type Item, itemKind, newItem } from "./item.ts";

/** How warm people let a room be, and what they set it to, F and Cel. Common practice, no source. */
export const lived = { us: [50, 99], si: [10, 40] } as const;
const noun = /^(?:rm|rms|room|space|spc|zone)$/;

/** Is it a bare number of degrees such as a room is set to, or has? */
export function isLived(item: Item | undefined, units: Context["units"]): boolean {
  const [low, high] = lived[units];
  if (item?.kind !== itemKind.number || item.colon || !(item.value >= low && item.value <= high))
    return false;
  return item.unit === undefined || item.unit.dimension === "temperature";
}

/** Right behind "set 21": where the figure of the setting stands. */
export function settingAt(items: readonly Item[], i: number, units: Context["units"]): number {
  if (items[i]?.label?.rating !== "setpoint") return -1;
  const at = /^(?:at|to|is|:|=)$/.test(items[i + 1]?.text ?? "") ? i + 2 : i + 1;
  return isLived(items[at], units) ? at : -1;
}

function airOf(word: Item): void {
  word.kind = itemKind.label;
  word.subject = undefined;
  word.label = { place: "indoor_air", hint: "temperature" };
}

/** "set 21 rm 26", "sp 70 rm 75": behind what a room is set to the next figure is its air, no other room's number. */
export function roomsAir(items: Item[], { units }: Context, plain: string): void {
  for (let i = 0; i + 2 < items.length; i++) {
    const set = settingAt(items, i, units);
    if (set < 0) continue;
    const at = items[set + 1]?.text === "," ? set + 2 : set + 1;
    const word = items[at];
    if (word === undefined || !noun.test(word.text.split(" ")[0] ?? "")) continue;
    if (word.kind === itemKind.subject) {
      const [, name, figure] = /^([a-z]+) ?(\d+)$/.exec(plain.slice(word.from, word.to)) ?? [];
      const [low, high] = lived[units];
      const value = Number(figure);
      if (name === undefined || figure === undefined || !(value >= low && value <= high)) continue;
      const number = newItem(itemKind.number, word.to - figure.length, word.to, figure);
      number.value = value;
      number.numberTo = word.to;
      word.to = word.from + name.length;
      word.text = name;
      items.splice(at + 1, 0, number);
    } else if (!isLived(items[at + 1], units)) continue;
    airOf(word);
  }
}
