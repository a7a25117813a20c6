import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** What air goes through. */
const airParts = /^(?:filter|filters|filt|filts|flt|fltr|fltrs|fan|blower|prefilter)$/;
/** What a liquid goes through. */
const liquidParts =
  /^(?:strainer|strainers|pump|pumps|evap|evaporator|cond|condenser|barrel|chiller|chw|water|wtr|tower|hx|exchanger|drier|dryer|core|suction|oil)$/;
const lead = /^(?:is|was|at|now|still|down|to|up|@|:|=|across|over|on|the|about|only|of|a|its)$/;
const drop = /^(?:dp|d\/p|deltap)$/;
/** in wc: more no filter and no coil of air costs. Our choice, no source. */
const mostOfAir = 5;
/** psi */
const mostOfWater = 80;
/** bar; what is more is told in kilopascals. Our choice, no source. */
const mostOfWaterBar = 5;

/** Where "dp" stands before the figure, past small words and the part that it is of; -1 where it does not. */
function dropBefore(items: readonly Item[], index: number): number {
  for (let at = index - 1; at >= 0 && at >= index - 5; at--) {
    const { text = "" } = items[at] ?? {};
    if (drop.test(text)) return at;
    if (!lead.test(text) && !airParts.test(text) && !liquidParts.test(text)) return -1;
  }
  return -1;
}

/** "filters dp 1.4 inches", "strainer dp 11", "dp 0.3 now": what air or water loses across a part, no side of the circuit. */
export function dropTold(
  drafts: readonly Draft[],
  items: readonly Item[],
  us: boolean,
  wet: boolean,
): void {
  // "sp 118 dp 340" are both gauges
  if (items.some(({ text }) => text === "sp" || text === "ps")) return;
  for (const draft of drafts) {
    const at = dropBefore(items, draft.index);
    if (at < 0 || draft.gone || draft.points !== undefined || draft.value < 0) continue;
    const words = items.slice(Math.max(0, at - 3), draft.index);
    const ofLiquid = wet || words.some(({ text }) => liquidParts.test(text));
    const ofAir = words.some(({ text }) => airParts.test(text)) || !ofLiquid;
    const { unit, value } = draft;
    const inches = unit?.figure === "in" && value < mostOfAir && ofAir;
    const bareAir = us && unit === undefined && ofAir && value < mostOfAir && isPart(value, words);
    if (inches || bareAir) draft.named = "static_pressure";
    else if (us && unit === undefined && ofLiquid && value <= mostOfWater) {
      draft.named = "pressure";
      draft.unit = unitCalled("psi");
      draft.assumedUnit = true;
    } else if (!us && unit === undefined && ofLiquid && value < mostOfWaterBar) {
      draft.named = "pressure";
      draft.unit = unitCalled("bar");
      draft.assumedUnit = true;
    } else continue;
    draft.place = undefined;
    draft.hint = undefined;
    draft.component = false;
    draft.thing = undefined;
    draft.action = undefined;
  }
}

/** "dp .41", "filters dp 1": tenths, or the part is named. */
function isPart(value: number, words: readonly Item[]): boolean {
  return !Number.isInteger(value) || words.some(({ text }) => airParts.test(text));
}
