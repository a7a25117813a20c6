import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "chilled water supply 44 return 53": behind the water's one way "return" and "supply" are its other. */
export function waterWay(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left?.place !== "water_out" && left?.place !== "water_in") return;
    if (right.place !== "return_air" && right.place !== "supply_air") return;
    // "water in 15.5 out 12, supply 15.6": both ends were told
    const told = drafts[order - 2]?.place;
    if (told !== left.place && (told === "water_out" || told === "water_in")) return;
    const words = right.before.map((index) => items[index]);
    const bare = words.filter((item) => item?.label?.place !== undefined);
    const [word, ...more] = bare;
    if (word === undefined || more.length > 0 || !/^(?:return|supply)$/.test(word.text)) return;
    if (word.to - word.from > "supply's".length) return;
    const between = items.slice(left.index + 1, right.index);
    if (between.some(({ text }) => /^(?:air|duct|space|room)$/.test(text))) return;
    right.place = left.place === "water_out" ? "water_in" : "water_out";
  });
}
