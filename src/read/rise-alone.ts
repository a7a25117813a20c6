import { isStrongBreak } from "./breaks.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** F or K between what goes into a heater and what comes out; common practice, no source. */
const usual: readonly [number, number] = [5, 120];

/** Where "rise" would be one of what is watched: a vacuum, a gauge. */
const watched: ReadonlySet<string> = new Set(["low_pressure", "pressure", "inches_of_mercury"]);

function ofWatched({ unit, named, place }: Draft): boolean {
  if (unit !== undefined) return watched.has(unit.dimension);
  if (named !== undefined) return named === "vacuum" || named === "pressure";
  return place === "suction" || place === "discharge";
}

/** "pressure rise is 4": of what it would be no two airs. */
const rises = /^(?:pressure|vacuum|micron|microns|head|suction|water|oil|the|amp|amps|a|no)$/;

/** "temp rise is 51 on high, 44 on low": the fires of a burner, no sides of a compressor. */
function ofFires(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    const behind = items[draft.index + 2]?.text ?? "";
    const fire = items[draft.index + 1]?.text === "on" && /^(?:high|low)$/.test(behind);
    if (fire && draft.named === "temperature_difference") draft.place = undefined;
  }
}

/** The word stands at the head of what it names, and its figure right behind it. */
function heads(items: readonly Item[], index: number): boolean {
  const joint = /^(?:is|was|of|at|[=:])$/.test(items[index - 1]?.text ?? "");
  const at = joint ? index - 2 : index - 1;
  if (items[at]?.text !== "rise") return false;
  const before = items[at - 1];
  // "no trips rise is 51 on high": with its verb it begins a thought of its own
  if (joint && /^(?:is|was)$/.test(items[index - 1]?.text ?? "") && !rises.test(before?.text ?? ""))
    return true;
  if (before === undefined || isStrongBreak(before) || before.kind === itemKind.number) return true;
  return /^(?:[,/|-]|and|n|&|so|with|w|furnace|heat|heater|heating|heatstrips?|strips?|coil|unit)$/.test(
    before.text,
  );
}

/** "59 rise": its name right behind it, and nothing that it rises to. */
function ends(items: readonly Item[], index: number): boolean {
  const next = items[index + 2];
  if (items[index + 1]?.text !== "rise") return false;
  return next === undefined || next.kind === itemKind.sign || next.kind === itemKind.line;
}

/** "flame 2.9 ua, rise 48", "heat strips 21.3 a, rise 30": between the two airs, no more of what was told before. */
export function riseAlone(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  ofFires(drafts, items);
  // alone behind a vacuum or a gauge it is how far that rose
  const last = context.readings.at(-1)?.quantity;
  const alone = drafts.length === 1;
  if (alone && (context.testing !== undefined || last === "vacuum" || last === "pressure")) return;
  drafts.forEach((draft, order) => {
    if (draft.gone || draft.named !== undefined || draft.points !== undefined) return;
    if (draft.unit !== undefined && draft.unit.dimension !== "temperature") return;
    if (!heads(items, draft.index) && !ends(items, draft.index)) return;
    if (drafts.slice(0, order).some(ofWatched)) return;
    if (draft.value < usual[0] || draft.value > usual[1]) return;
    if (items[draft.index - 1]?.text === "rise") draft.before = [...draft.before, draft.index - 1];
    draft.named = "temperature_difference";
    draft.hint = undefined;
    draft.place = undefined;
    plateOfRise(drafts.slice(order + 1));
  });
}

/** "rise is 62 return 64 supply 126 plate says 35-65": what a plate allows is a rise, with other figures between. */
function plateOfRise(behind: readonly Draft[]): void {
  for (const draft of behind) {
    const most = Number.isNaN(draft.high) ? draft.value : draft.high;
    const bare =
      draft.unit === undefined && draft.named === undefined && draft.points === undefined;
    if (!draft.plate || !bare || draft.place !== undefined) continue;
    if (most >= usual[0] && most <= usual[1]) draft.named = "temperature_difference";
  }
}
