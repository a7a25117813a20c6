import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { coldest } from "./line-then-liquid.ts";

/** "108 psig 41 line temp": the line beside the only gauge is of its side. */
export function lineOfGauge(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  const gauges = list.filter(({ quantity }) => quantity === "pressure");
  const [gauge] = gauges;
  if (gauges.length !== 1 || gauge === undefined) return;
  if (gauge.place !== "suction" && gauge.place !== "liquid") return;
  const at = list.indexOf(gauge);
  for (const draft of [list[at - 1], list[at + 1]]) {
    if (draft?.quantity !== "temperature" || draft.place !== undefined) continue;
    if (draft.rating !== undefined || draft.points !== undefined) continue;
    if (namesLine(draft, items)) draft.place = gauge.place;
  }
}

function namesLine(draft: Draft, items: readonly Item[]): boolean {
  const words = [...draft.before, ...draft.behind].map((index) => items[index]?.text ?? "");
  return words.some((text) => /^(?:line|pipe)(?: temp(?:erature)?)?$/.test(text));
}

/**
 * "118 over 410, line 48, liq 101": behind both gauges the only line that is not named is the suction's, where it
 * is colder than the liquid that was told, or than any liquid under a head.
 */
export function lineOfGauges(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  const list = drafts.filter((draft) => !draft.gone);
  const gauges = list.filter(({ quantity }) => quantity === "pressure");
  const [low, high] = gauges;
  if (gauges.length !== 2 || low?.place !== "suction" || high?.place !== "discharge") return;
  const warm = list.filter(({ quantity }) => quantity === "temperature");
  const [line, ...others] = warm.filter((one) => one.place === undefined && namesLine(one, items));
  if (line === undefined || others.length > 0 || line.ownUnit) return;
  if (line.index < high.index || line.rating !== undefined || line.points !== undefined) return;
  if (warm.some(({ place }) => place === "suction")) return;
  const liquid = warm.find(({ place }) => place === "liquid");
  const under = liquid?.ownUnit === false ? liquid.value : coldest[units];
  if (line.value < under) line.place = "suction";
}
