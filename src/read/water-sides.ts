import { isStrongBreak } from "./breaks.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const waters =
  /^(?:glycol|brine|cdw|cdwtr|cndw|cw|water|chilled|chw|tower|loop|condenser|cond|evap|evaporator|barrel|chiller|wtr|hw|hhw|boiler)$/;

/** The side that is told right behind a value: "178 out 159 back", "180 going out 160 coming back". */
function sideBehind(items: readonly Item[], { index }: Draft): string {
  const moves = /^(?:going|coming)$/.test(items[index + 1]?.text ?? "");
  const side = items[index + (moves ? 2 : 1)]?.text ?? "";
  return side === "back" ? "in" : side;
}

/** The side told right before a value: "in 54 out 44". */
function sideBefore(items: readonly Item[], { index }: Draft): string {
  return items[index - 1]?.text ?? "";
}

/** Machines that water goes through; a tag begins with what it is. */
export const waterMachine = /^(?:boiler|chiller|tower|ch[ -]?\d|b-\d)/i;

/** Does it name what the water belongs to, by a word or as a machine: "chw", "boiler 2"? */
const ofWater = (item: Item): boolean =>
  waters.test(item.text) || waterMachine.test(item.subject ?? "");

function bothSides(sides: readonly string[]): boolean {
  return sides.includes("in") && sides.includes("out");
}

const airs = /^(?:air|duct|room|rooms|return|supply|outside|outdoor|oat|ambient|coil|fan|vent)$/;

const isAirs = (place: string | undefined): boolean =>
  place !== undefined && place !== "outdoor_air" && place.endsWith("_air");

/** Degrees that water has at least, told without their unit. Common practice, no source. */
const coldest = { us: 20, si: 2 } as const;

/** Degrees without a name: whatever names it stands in another sentence. */
function isPlain(
  { named, unit, action, rating, value, index }: Draft,
  items: readonly Item[],
  least: number,
): boolean {
  if (action !== undefined || rating !== undefined || value < least || value > 220) return false;
  if (unit !== undefined && unit.dimension !== "temperature") return false;
  return (
    named === undefined ||
    named === "temperature" ||
    (named === "water_flow" && items.slice(index - 1, index).some(isStrongBreak))
  );
}

/** "condenser water 85 in 95 out", "chilled water 44 out 54 in": the sides stand behind the values. */
export function waterSides(
  items: readonly Item[],
  drafts: readonly Draft[],
  { wet, units }: Pick<Context, "wet" | "units">,
): void {
  const ofAir = items.some(({ text, label }) => airs.test(text) || isAirs(label?.place));
  // "236 gpm in 53.8 out 45.2"
  const flowing = wet === true || items.some(({ unit }) => unit?.dimension === "waterflow");
  const least = coldest[units];
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || right.points !== undefined || left.points !== undefined) return;
    const behind = [sideBehind(items, left), sideBehind(items, right)];
    const before = [sideBefore(items, left), sideBefore(items, right)];
    // "chiller 2 in 54 out 44"
    const ahead =
      !bothSides(behind) &&
      (waterMachine.test(items[left.index - 2]?.subject ?? "") ||
        behindValve(items, left) ||
        flowing);
    const sides = ahead ? before : behind;
    if (!bothSides(sides)) return;
    const named = items
      .slice(Math.max(0, left.index - (ahead ? 7 : 4)), left.index)
      .filter(ofWater);
    // "flow's back. 54 in 44 out" at a chiller, where nobody speaks of air
    const known =
      (wet === true || (ahead && flowing)) &&
      !ofAir &&
      [left, right].every((one) => isPlain(one, items, least));
    if (
      !known &&
      !named.some(
        (item) =>
          item.subject !== undefined ||
          /^(?:boiler|hhw|glycol|brine|water|chilled|chw|cw|chiller|tower|loop|wtr|hw|barrel|condenser|cond|cdw|cdwtr|cndw)$/.test(
            item.text,
          ),
      )
    )
      return;
    if (left.unit !== undefined && left.unit.dimension !== "temperature") return;
    const tower = named.some(({ subject }) => subject?.startsWith("tower") === true);
    const cond = /^(?:condenser|cond|tower|cdw|cdwtr|cndw)$/;
    const whose =
      tower || named.some((item) => cond.test(item.text))
        ? "condenser"
        : named.some((item) => /^(?:evap|evaporator|barrel)$/.test(item.text))
          ? "evaporator"
          : "water";
    // a tower cools: what goes into it comes out of the condenser
    const [into, out] = sides[0] === "in" ? [left, right] : [right, left];
    const atTower = tower || named.some(({ text }) => text === "tower");
    const turned = atTower && into.value > out.value;
    for (const [draft, side] of [
      [left, sides[0]],
      [right, sides[1]],
    ] as const) {
      draft.place = (side === "in") !== turned ? `${whose}_in` : `${whose}_out`;
      draft.hint = "temperature";
      draft.action = undefined;
      if (known) draft.named = "temperature";
      if (ahead && draft.named?.startsWith("valve_") === true) draft.named = undefined;
    }
  });
}

/** "chw valve 100% open, in 46 out 52": the water of the valve that was just told. */
function behindValve(items: readonly Item[], left: Draft): boolean {
  const words = items.slice(Math.max(0, left.index - 7), left.index);
  const at = words.findIndex(({ text }) => /^(?:chw|hw|hhw|chilled|hot|water|loop)$/.test(text));
  return (
    at >= 0 &&
    words
      .slice(at)
      .some(
        ({ text, label }) =>
          /^(?:valve|vlv|control)$/.test(text) || label?.quantity?.startsWith("valve_") === true,
      )
  );
}

/** "evap 54.1/44.2 cond 85.2/94.6": an evaporator cools its water, a condenser warms it. */
export function waterPairs(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || items[left.index + 1]?.text !== "/" || right.index !== left.index + 2)
      return;
    if (left.unit !== undefined || right.unit !== undefined || left.value === right.value) return;
    const word = items[left.index - 1]?.text ?? "";
    const low = Math.min(left.value, right.value);
    const high = Math.max(left.value, right.value);
    const warm = /^(?:cond|condenser|cw|tower|cdw)$/.test(word) && low >= 55 && high <= 115;
    const cold = /^(?:evap|evaporator|barrel|chw)$/.test(word) && low >= 34 && high <= 75;
    if (!warm && !cold) return;
    const whose = warm ? "condenser" : word === "chw" ? "water" : "evaporator";
    for (const draft of [left, right]) {
      const enters = warm ? draft.value === low : draft.value === high;
      draft.place = enters ? `${whose}_in` : `${whose}_out`;
      draft.named = "temperature";
    }
  });
}
