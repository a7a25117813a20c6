import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const water =
  /^(?:water|wtr|chill|chlr|h2o|tower|cond|barrel|gpm|flow|pump|loop|boiler|hx|ewt|lwt|chw|hw|glycol|brine|evap|bundle|lift|approach)/;

const isWater = (place: string | undefined): boolean => place?.startsWith("water") === true;

/** "entering 78 leaving 56": of air or of water, where nobody speaks of water. */
export function airOrWater(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  if (!drafts.some(({ place }) => isWater(place))) return;
  if (items.some(({ text, unit }) => water.test(text) || unit?.dimension === "waterflow")) return;
  if (readings.some((one) => isWater(one.at) || one.quantity === "water_flow")) return;
  let cleared = false;
  for (const draft of drafts) {
    const named = draft.before.some((index) => items[index]?.label?.place !== undefined);
    const bare = draft.before.some((index) =>
      /^(?:entering|leaving|ent|lvg)$/.test(items[index]?.text ?? ""),
    );
    const whole = draft.before.every((index) => {
      const item = items[index];
      return item?.label?.place === undefined || item.to - item.from <= "entering".length;
    });
    // "fcu 1 ent 71 lvg 112, fcu 2 71 109": the row below is of the same
    if (!isWater(draft.place) || !(bare ? whole : cleared && !named)) continue;
    draft.place = ofBulbs(draft, drafts);
    cleared = true;
  }
  besideDry(drafts);
}

/** "entering 80 db 67 wb, leaving 57 db": who names bulbs speaks of air, on its way through the coil. */
function ofBulbs(draft: Draft, drafts: readonly Draft[]): Draft["place"] {
  // "hd1 ent 71 lvg 112": an indoor head has air alone
  const wet =
    draft.subject?.startsWith("head ") === true ||
    drafts.some(({ quantity }) => quantity === "wet_bulb_temperature");
  if (!wet || (draft.named ?? draft.quantity) !== "temperature") return undefined;
  return draft.place === "water_in" ? "return_air" : "supply_air";
}

/** "leaving 57 db 56 wb": both bulbs hang in the same air. */
function besideDry(drafts: readonly Draft[]): void {
  drafts.forEach((bulb, order) => {
    const dry = drafts[order - 1];
    if (bulb.quantity !== "wet_bulb_temperature" || bulb.place !== undefined) return;
    if (dry?.quantity !== "temperature" || !dry.place?.endsWith("_air")) return;
    if (bulb.value <= dry.value && bulb.index - dry.index <= 3) bulb.place = dry.place;
  });
}
