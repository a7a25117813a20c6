import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const joins = /^(?:,|and|n|&|at|with|w|out|outside|in|inside|\/|@)$/;
const airs = /^(?:outdoor|indoor|return|supply)_air$/;

/** %, of air that anyone reports. Common practice, no source. */
const usual = { from: 10, to: 100 } as const;

/** Words behind the percent that say what else it is of. */
const ofElse =
  /^(?:open|closed|load|loaded|speed|charge|full|oa|damper|valve|glycol|fan|on|off|capacity|output|of|fresh)$/;

/** "95 out and 60 percent": what is told with an air's degrees is how damp it is. */
export function dampBehind(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((damp, order) => {
    const air = drafts[order - 1];
    if (air === undefined || air.gone || !airs.test(air.place ?? "")) return;
    if (air.named !== undefined && air.named !== "temperature") return;
    if (air.unit !== undefined && air.unit.dimension !== "temperature") return;
    if (damp.unit?.dimension !== "percent" || damp.named !== undefined || damp.hint !== undefined)
      return;
    if (damp.place !== undefined || damp.points !== undefined || damp.rating !== undefined) return;
    if (damp.value < usual.from || damp.value > usual.to) return;
    const between = items.slice(air.index + 1, damp.index);
    const told = between.filter(
      ({ text }, at) => !joins.test(text) && !air.behind.includes(air.index + 1 + at),
    );
    if (told.length > 0 || ofElse.test(items[damp.index + 1]?.text ?? "")) return;
    damp.named = "relative_humidity";
  });
}
