import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** What no air reads that comes back to a unit, F and Cel; common practice, no source. */
const hot = { us: 110, si: 45 } as const;
const side = /^(?:return|ret|rtn|supply|sup)$/;
const air = /^(?:air|duct|filter|filters|coil|grille|register|vent|plenum|rise|split)$/;

/** "Return was 142" behind a boiler's 180 out and 178 back: of the water that was told, no air is so hot. */
export function waterAgain(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  endsAgain(drafts, items, context);
  const { readings, units } = context;
  const water = readings.some((one) => one.quantity === "temperature" && isWater(one.at));
  if (!water || items.some(({ text }) => air.test(text))) return;
  for (const draft of drafts) {
    const named = draft.before.some((i) => side.test(items[i]?.text ?? ""));
    const degrees = draft.unit === undefined || draft.unit.dimension === "temperature";
    if (!named || !degrees || draft.value < hot[units]) continue;
    if (draft.place === "return_air") draft.place = "water_in";
    else if (draft.place === "supply_air") draft.place = "water_out";
  }
}

/** "in 9,7, out 6,2 now" behind "water in 14 out 9": the same two ends, no weather. */
function endsAgain(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings, latest }: Context,
): void {
  const last = readings.slice(-latest);
  const both = ["water_in", "water_out"].every((place) => last.some(({ at }) => at === place));
  if (!both || last.some(({ at }) => at === "outdoor_air" || at?.endsWith("_air"))) return;
  for (const draft of drafts) {
    const way = items[draft.index - 1]?.text;
    const degrees = draft.unit === undefined || draft.unit.dimension === "temperature";
    const free = draft.place === undefined || draft.place === "outdoor_air";
    if (!degrees || !free || draft.named !== undefined || draft.points !== undefined) continue;
    if (way !== "in" && way !== "out") continue;
    draft.place = way === "in" ? "water_in" : "water_out";
    draft.hint = "temperature";
    draft.action = undefined;
  }
}

const isWater = (at: string | undefined): boolean => at === "water_in" || at === "water_out";
