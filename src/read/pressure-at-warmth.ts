import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { role } from "./word.ts";

/** "standing pressure at 75 F is 160": between the word and its figure stands how warm it was. */
export function pressureAtWarmth(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.unit?.dimension !== "temperature" || right.unit !== undefined) return;
    if (right.named !== undefined || right.place !== undefined || right.points !== undefined)
      return;
    const told = left.before.some((index) => items[index]?.label?.quantity === "pressure");
    if (!told || ((items[right.index - 1]?.roles ?? 0) & role.is) === 0) return;
    if (left.named === "pressure") left.named = undefined;
    right.named = "pressure";
    right.hint = undefined;
    const next = list[order + 1];
    if (next?.rating === "expected" && next.unit === undefined) next.named ??= "pressure";
  });
}

const ofCircuit: ReadonlySet<string> = new Set(["suction", "liquid", "discharge"]);

/** "suction 77 at 106 psi": a side told at its own pressure is how warm its line is. */
export function warmthAtPressure(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || left.unit !== undefined || left.points !== undefined) return;
    if (!ofCircuit.has(left.place ?? "") || left.index !== right.index - 2) return;
    if (items[left.index + 1]?.text !== "at" || !right.ownUnit) return;
    if (right.unit?.dimension !== "pressure") return;
    left.named = "temperature";
    left.hint = undefined;
    left.settled = true;
    right.place = left.place;
  });
}

/** "46 psi at the case, 12 on the pipe": behind a gauge what a pipe shows is how warm it is. */
export function warmthOnPipe(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.unit?.dimension !== "pressure" || !left.ownUnit || left.gone) return;
    if (right.unit !== undefined || right.named !== undefined || right.points !== undefined) return;
    const [on, the, pipe] = items.slice(right.index + 1, right.index + 4).map(({ text }) => text);
    if (!/^(?:on|at)$/.test(on ?? "")) return;
    if (!/^(?:pipe|line|tube)$/.test((/^(?:the|its|that)$/.test(the ?? "") ? pipe : the) ?? ""))
      return;
    right.named = "temperature";
    right.hint = undefined;
    right.place ??= left.place;
  });
}

/** psi of a high side over its low side, at least. Common practice, no source. */
const leastLift = 1.7;

/** "117 psi 51, 345 psi 96": each gauge with its own line. */
export function gaugesWithLines(list: readonly Draft[], items: readonly Item[]): void {
  const [low, cold, high, warm] = list;
  if (low === undefined || cold === undefined || high === undefined || warm === undefined) return;
  const gauge = (one: Draft) =>
    one.ownUnit && one.unit?.dimension === "pressure" && one.place === undefined;
  const bare = (one: Draft, of: Draft) =>
    one.index === of.index + 1 &&
    one.unit === undefined &&
    one.points === undefined &&
    one.value < mostOfLine;
  if (!gauge(low) || !gauge(high) || !bare(cold, low) || !bare(warm, high)) return;
  if (high.value < low.value * leastLift || cold.value >= warm.value) return;
  if (items[cold.index + 1]?.text !== "," && high.index !== cold.index + 1) return;
  [low.place, cold.place, high.place, warm.place] = ["suction", "suction", "liquid", "liquid"];
  for (const one of [cold, warm]) {
    one.named = "temperature";
    one.hint = undefined;
  }
}

/** F of a liquid line at most. Common practice, no source. */
const mostOfLine = 140;

/** "condensing 118 psi": in psi it is the side's gauge, not what it condenses at. */
export function gaugeOfSaturation(list: readonly Draft[]): void {
  for (const draft of list) {
    if (!draft.ownUnit || draft.unit?.dimension !== "pressure") continue;
    if (draft.place === "discharge_saturation") draft.place = "discharge";
    else if (draft.place === "suction_saturation") draft.place = "suction";
  }
}

/** "liquid 88 at 300, suction 36 at 100": where the one side's line was told before its gauge, the other's was too. */
export function turnedLikeLiquid(list: readonly Draft[], items: readonly Item[]): void {
  const turned = list.some((right, order) => {
    const left = list[order - 1];
    return (
      right.place === "liquid" &&
      right.named === "pressure" &&
      right.assumedUnit &&
      left?.place === "liquid" &&
      left.named === "temperature" &&
      items[right.index - 1]?.text === "at"
    );
  });
  if (!turned) return;
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.place !== "suction" || left.named === "temperature" || left.ownUnit) return;
    if (right.points !== undefined || right.ownUnit || right.index !== left.index + 2) return;
    if (items[right.index - 1]?.text !== "at" || right.value <= left.value) return;
    [left.named, right.named] = ["temperature", "pressure"];
    [left.settled, right.settled] = [true, true];
    [left.unit, right.unit] = [undefined, undefined];
    [left.hint, right.hint] = ["temperature", undefined];
    right.place = "suction";
  });
}

/** bar; no liquid stands under more than its head. */
const overHead = 1.15;

/** "high side 20.7 bar liquid 31.1": more than the head in bar, so it is how warm the line is. */
export function liquidOverHead(list: readonly Draft[], units: UnitHabit): void {
  const head = list.find(
    ({ place, ownUnit, unit }) =>
      place === "discharge" && ownUnit && /^bar/.test(unit?.figure ?? ""),
  );
  if (head === undefined || units !== "si") return;
  for (const draft of list) {
    const bare =
      draft.unit === undefined && draft.named === undefined && draft.rating === undefined;
    if (draft.place !== "liquid" || !bare || draft.value < overHead * head.value) continue;
    draft.named = "temperature";
    draft.hint = "temperature";
    draft.question = undefined;
  }
}
