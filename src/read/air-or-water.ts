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
  for (const draft of drafts) {
    const bare = draft.before.some((index) =>
      /^(?:entering|leaving|ent|lvg)$/.test(items[index]?.text ?? ""),
    );
    const whole = draft.before.every((index) => {
      const item = items[index];
      return item?.label?.place === undefined || item.to - item.from <= "entering".length;
    });
    if (isWater(draft.place) && bare && whole) draft.place = undefined;
  }
}
