import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const others =
  /^(?:cutout|cutin|cut|switch|pressure|psi|head|suction|fan|valve|control|hp|lp|bar|static|pump|water|speed|drive|eev)$/;
const rooms =
  /^(?:rm|room|stat|tstat|thermostat|zone|space|area|office|house|indoor|actual|box|cooler|freezer|customer|cust|tenant|tenants|wants|want|they)$/;

const ends = /^(?:and|back|out|in|at|heating|cooling|heat|cool|reset|resets|made|makes)$/;

/** What people set a room to, and what a room then has. */
const ROOM = { us: [40, 105], si: [5, 40] } as const;

/** "cuts in at thirty eight and out at thirty four": the other end of what is set. */
export function otherEnd(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((draft, order) => {
    const set = drafts[order - 1];
    if (set?.rating !== "setpoint" || draft.rating !== undefined || draft.unit !== undefined)
      return;
    if (draft.named !== undefined || draft.points !== undefined) return;
    if (draft.hint !== undefined && draft.hint !== set.hint) return;
    const gap = items.slice(set.index + 1, draft.index).map(({ text }) => text);
    if (gap.length > 3 || !gap.every((text) => ends.test(text))) return;
    // "cooling set point's 74 heating's 68"
    const other = gap.length === 1 || (gap.length === 2 && gap[0] === "and");
    const mode = other && /^(?:heating|cooling|heat|cool)$/.test(gap[gap.length - 1] ?? "");
    // "lp switch set at 10 and 25", "set 410 and reset 300"
    const ofSwitch =
      /^(?:and|resets?|makes)$/.test(gap[0] ?? "") &&
      drafts
        .slice(0, order)
        .some(({ rating, hint, named }) => rating === "setpoint" && (named ?? hint) === "pressure");
    if (!gap.includes("in") && !gap.includes("out") && !mode && !ofSwitch) return;
    draft.rating = "setpoint";
    draft.hint = set.hint;
    draft.named = set.named;
    draft.place ??= set.place;
  });
}

/** What a pressure is held at lies at most so far from what it is: a share of it; our choice, no source. */
const nearSet = 0.25;

/** "suct 22 disch 187, set pt is 20": beside pressures alone the one that it is near to is what is set; behind a box, the box. */
export function setOfGauge(drafts: readonly Draft[]): void {
  drafts.forEach((set, order) => {
    const told = set.named ?? set.hint ?? set.quantity ?? set.unit ?? set.points ?? set.place;
    if (set.rating !== "setpoint" || told !== undefined) return;
    // "freezer's at minus two set point's minus ten suction's eight"
    const left = drafts[order - 1];
    // "setpoint 72 humidity 48": nobody sets the one and reads the other of it
    const damp = (drafts[order + 1]?.named ?? drafts[order + 1]?.hint) === "relative_humidity";
    if (set.value < 0 || damp || (left?.place === "box" && left.rating === undefined)) {
      set.hint = "temperature";
      return;
    }
    const rest = drafts.filter((one) => one !== set && !one.gone);
    const gauges = rest.every(({ place, named, hint, unit }) => {
      const kind = named ?? hint;
      const dimension = unit?.dimension ?? "pressure";
      if (dimension !== "pressure" && unit?.figure !== "lb") return false;
      return (
        kind === "pressure" || (kind === undefined && /^(?:suction|discharge)$/.test(place ?? ""))
      );
    });
    const near = rest.some(({ value }) => Math.abs(value - set.value) <= nearSet * value);
    if (gauges && near) set.hint = "pressure";
  });
}

/** "rm set 72 actual 78.5": a setpoint and what the room has; no other pair is told so. */
export function setAndActual(
  items: readonly Item[],
  drafts: readonly Draft[],
  units: UnitHabit,
): void {
  const bare = (draft: Draft): boolean =>
    draft.unit === undefined &&
    draft.named === undefined &&
    draft.hint === undefined &&
    draft.points === undefined &&
    draft.quantity === undefined &&
    draft.action === undefined;
  drafts.forEach((actual, order) => {
    const set = drafts[order - 1];
    if (set?.rating !== "setpoint" || actual.rating !== undefined) return;
    if (!bare(set) || !bare(actual) || set.place !== undefined || actual.place !== undefined)
      return;
    const [low, high] = ROOM[units];
    if (![set, actual].every((one) => one.value >= low && one.value <= high)) return;
    const words = items.slice(0, actual.index + 3);
    if (words.some((item) => others.test(item.text))) return;
    if (!words.some((item) => rooms.test(item.text))) return;
    set.hint = "temperature";
    actual.hint = "temperature";
  });
}
