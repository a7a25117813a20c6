import type { UnitHabit } from "../model.ts";
import type { Context } from "./context.ts";
import { type Draft, isUntold } from "./draft.ts";
import { weather } from "./hot-out.ts";
import type { Item } from "./item.ts";

function asOutdoor(draft: Draft): void {
  draft.named = "temperature";
  draft.hint = "temperature";
  draft.place = "outdoor_air";
}

/** "118 suction 340 head 95 out": behind a circuit's gauges the last figure is the day's. */
export function outAtEnd(
  drafts: readonly Draft[],
  items: readonly Item[],
  { units, readings }: Context,
): void {
  const last = drafts[drafts.length - 1];
  if (last === undefined || last.gone || last.named !== undefined || last.place !== undefined)
    return;
  if (last.unit !== undefined && last.unit.dimension !== "temperature") return;
  if (last.points !== undefined || last.action !== undefined || last.rating !== undefined) return;
  const [out, end] = [items[last.index + 1], items[last.index + 2]];
  if (out?.text !== "out" || (end !== undefined && end.text !== ".")) return;
  const gauges = drafts.some(({ place }) => place === "suction" || place === "discharge");
  // "n2 500 in 0810 55 out", "0910 503 61 out": the day beside what holds
  const held =
    drafts.length > 1 && readings.slice(-3).some(({ quantity }) => quantity === "pressure");
  const nitrogen = items.some(({ text }) => /^(?:n2|nitro|nitrogen)$/.test(text));
  const free = (at: number): boolean => items[at]?.owner === undefined;
  const inAndOut = items.some(
    ({ text }, at) => /^(?:in|entering|leaving)$/.test(text) && free(at) && free(at + 1),
  );
  const [low, high] = weather[units];
  if (!(gauges || held || nitrogen) || inAndOut || last.value < low || last.value > high) return;
  asOutdoor(last);
}

/** "what should sh be for 95 out and 63 wb": behind "for" or "at" stands the weather, whatever is asked about. */
export function outsideBehind(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  drafts.forEach((draft, order) => {
    const heat = draft.named === "superheat" || draft.named === "subcooling";
    // "standing pressure 41 psi, its 88 out so its flat"
    const its = /^(?:its|it's)$/.test(items[draft.index - 1]?.text ?? "");
    const free = its && isUntold(draft) && items[draft.index + 2]?.text !== "of";
    if (draft.gone || !(heat || free)) return;
    if (draft.unit !== undefined && draft.unit.dimension !== "temperature") return;
    const led = /^(?:for|at|@|with|w|when|its|it's)$/.test(items[draft.index - 1]?.text ?? "");
    const out = /^(?:out|outside|outdoors|outdoor|ambient|amb|od|oat)$/.test(
      items[draft.index + 1]?.text ?? "",
    );
    const [low, high] = weather[units];
    if (!led || !out || draft.value < low || draft.value > high) return;
    asOutdoor(draft);
    draft.rating = undefined;
    draft.before = draft.before.filter((index) => index > draft.index - 2);
    // "95 out and 67 wb": the bulb is not outside for it
    const next = drafts[order + 1];
    if (next?.place === "outdoor_air" && next.named === "wet_bulb_temperature")
      next.place = undefined;
  });
}
