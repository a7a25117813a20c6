import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** What people set a room to, F and Cel. Common practice, no source. */
const room: Readonly<Record<UnitHabit, readonly [number, number]>> = { us: [50, 90], si: [10, 32] };

/** "tstat says 78 set for 72, got 26v": what a thermostat shows and is set to are degrees, whatever else has its unit. */
export function statShows(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  const [low, high] = room[units];
  drafts.forEach((shown, order) => {
    const verb = /^(?:says|reads|reading|shows|showing|at|is)$/.test(
      items[shown.index - 1]?.text ?? "",
    );
    const name = items[shown.index - (verb ? 2 : 1)]?.text ?? "";
    if (!/^(?:stat|tstat|thermostat|t'stat)$/.test(name)) return;
    const set = drafts[order + 1];
    if (!verb && set?.rating !== "setpoint") return;
    for (const draft of [shown, ...(set?.rating === "setpoint" ? [set] : [])]) {
      const bare = draft.unit === undefined && draft.named === undefined && !draft.gone;
      if (!bare || draft.points !== undefined) continue;
      if (draft.value < low || draft.value > high + 20) continue;
      draft.hint = "temperature";
      draft.named = "temperature";
    }
  });
}

/** "stat 68 actual 73", "tstat 70 room 76": right behind the thermostat stands what it is set to, where the room's own follows. */
export function statSet(drafts: readonly Draft[], items: readonly Item[], units: UnitHabit): void {
  const [low, high] = room[units];
  drafts.forEach((set, order) => {
    const actual = drafts[order + 1];
    if (actual === undefined || set.gone || actual.gone) return;
    if (!/^(?:stat|tstat|thermostat|t'stat)$/.test(items[set.index - 1]?.text ?? "")) return;
    if (!/^(?:actual|space|room|zone|reading|temp)$/.test(items[actual.index - 1]?.text ?? ""))
      return;
    const degrees = [set, actual].every(
      ({ unit, points, rating, value }) =>
        (unit === undefined || unit.dimension === "temperature") &&
        points === undefined &&
        rating === undefined &&
        value >= low &&
        value <= high + 20,
    );
    if (!degrees || set.value > high) return;
    set.rating = "setpoint";
    for (const draft of [set, actual]) {
      draft.hint = "temperature";
      draft.named = "temperature";
    }
  });
}

/** "72 deg 48% rh sp is 70": what is set is the one of the two that it is near, where it has no sign of its own. */
export function setBesideHumidity(drafts: readonly Draft[], units: UnitHabit): void {
  const [low, high] = room[units];
  for (const set of drafts) {
    if (set.rating !== "setpoint" || set.unit !== undefined || set.named !== undefined) continue;
    if (set.place !== undefined || set.value < low || set.value > high) continue;
    const told = drafts.filter(({ index, rating }) => index < set.index && rating === undefined);
    const damp = told.find(({ unit }) => unit?.dimension === "percent");
    const warm = told.find(
      ({ unit, hint }) => unit?.dimension === "temperature" || hint === "temperature",
    );
    if (damp === undefined || warm === undefined || warm === damp) continue;
    if (Math.abs(set.value - warm.value) >= Math.abs(set.value - damp.value)) continue;
    set.hint = "temperature";
    set.named = "temperature";
  }
}
