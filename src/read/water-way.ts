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

const ofWater =
  /^(?:water|wtr|gpm|chw|hw|tower|loop|chiller|boiler|cond|condenser|evap|evaporator|glycol|pump)$/;

/** "55 leaving the coil 76 entering", "supply 54, entering 75": behind the one way of the air its other, where no water is spoken of. */
export function airWay(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    const other = right.place === "water_in" ? "supply_air" : "return_air";
    if (left?.place !== other || (right.place !== "water_in" && right.place !== "water_out"))
      return;
    const words = [...right.before, ...right.behind].map((index) => items[index]);
    const named = words.filter((item) => item?.label?.place !== undefined);
    if (named.length !== 1 || !/^(?:entering|leaving|ent|lvg)$/.test(named[0]?.text ?? "")) return;
    if (items.some(({ text }) => ofWater.test(text))) return;
    right.place = right.place === "water_in" ? "return_air" : "supply_air";
  });
}

/** "62 out of the coil 78 return", "55 leaving the coil 76 entering": what comes out of the coil, beside what returns to it. */
export function outOfCoil(items: readonly Item[], drafts: readonly Draft[]): void {
  if (drafts.some(({ unit }) => unit?.dimension === "pressure")) return;
  const returns = drafts.filter(
    ({ place, behind, before }) =>
      place === "return_air" ||
      [...behind, ...before].some((index) => items[index]?.text === "entering"),
  );
  if (returns.length === 0) return;
  for (const draft of drafts) {
    if (draft.unit !== undefined && draft.unit.dimension !== "temperature") continue;
    const behind = items.slice(draft.index + 1, draft.index + 4).map(({ text }) => text);
    if (!/^(?:out|leaving)(?: of)?(?: the)? coil\b/.test(behind.join(" "))) continue;
    if (!returns.some((one) => one !== draft)) continue;
    draft.place = "supply_air";
    draft.quantity ??= "temperature";
  }
}
