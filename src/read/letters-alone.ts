import type { UnitHabit } from "../model.ts";
import type { Draft } from "./draft.ts";
import { highSide, leastRatio, lowSide } from "./gauge-pair.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** Bar (or psi) below which a bare "pd" may be a drop; common practice, no source. */
const leastPsi = 30;
const mostBar = 60;
/** Cel that no difference has, and no line exceeds; common practice, no source. */
const warmCel = 45;
const hottestCel = 160;

function isGauge(draft: Draft, units: UnitHabit): boolean {
  if (draft.unit !== undefined) return draft.unit.dimension === "pressure";
  if (units === "si") return draft.value > 0 && draft.value < mostBar;
  return draft.value >= leastPsi;
}

function isWarm(draft: Draft, units: UnitHabit): boolean {
  if (draft.unit !== undefined)
    return (
      draft.unit.dimension === "temperature" && draft.unit.figure !== "K" && draft.value >= warmCel
    );
  return units === "si" && draft.value >= warmCel && draft.value < hottestCel;
}

/** "still L3 low at 431": of a leg that is how it stands, no side of a circuit. */
export function lowOfLeg(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    const legs = draft.points?.every((points) => /^[LT]\d$/.test(points[0] ?? "")) === true;
    if (draft.gone || !legs || draft.unit !== undefined) continue;
    const words = draft.before.filter((index) => items[index]?.label !== undefined);
    const low = words.every((index) => /^(?:low|lo|high|hi)$/.test(items[index]?.text ?? ""));
    if (words.length === 0 || !low) continue;
    draft.place = undefined;
    draft.hint = undefined;
    draft.named = undefined;
    draft.before = draft.before.filter((index) => !words.includes(index));
  }
}

/** "su 128 di 361": the first letters of the two gauges, side by side. */
function firstLetters(drafts: readonly Draft[], items: readonly Item[]): void {
  const at = (name: RegExp): Draft | undefined =>
    drafts.find((draft) => !draft.gone && name.test(items[draft.index - 1]?.text ?? ""));
  const [low, high] = [at(/^su$/), at(/^di$/)];
  if (low === undefined || high === undefined || high.value < low.value * 1.3) return;
  low.place = "suction";
  high.place = "discharge";
  for (const draft of [low, high]) draft.named = "pressure";
}

/** "ckt 1 s 98 h 412": suction and head by one letter, right behind one another. */
function oneLetter(drafts: readonly Draft[], items: readonly Item[], units: UnitHabit): void {
  drafts.forEach((left, order) => {
    const right = drafts[order + 1];
    if (right?.index !== left.index + 2 || left.gone || right.gone) return;
    if (items[left.index - 1]?.text !== "s" || items[right.index - 1]?.text !== "h") return;
    const told = [left, right].some((one) => one.unit ?? one.points ?? one.named ?? one.rating);
    const [low, high] = [lowSide[units], highSide[units]];
    const fits =
      left.value >= low[0] &&
      left.value <= low[1] &&
      right.value >= high[0] &&
      right.value <= high[1] &&
      right.value >= left.value * leastRatio;
    if (told || !fits) return;
    left.place = "suction";
    right.place = "discharge";
    right.subject ??= left.subject;
    for (const draft of [left, right]) {
      draft.named = "pressure";
      draft.hint = undefined;
    }
  });
}

/** "coil pd 0.6 bar": a drop across something. */
function isDrop(items: readonly Item[]): boolean {
  return items.some(
    ({ text, label }) =>
      /^(?:across|filter|coil|drier|strainer|barrel|water)$/.test(text) ||
      label?.quantity === "static_pressure",
  );
}

/** "Pd 24 bar", "Ps 8,6", "Td 79": a gauge's letters hold by themselves where the figure can be nothing else. */
export function lettersAlone(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  firstLetters(drafts, items);
  oneLetter(drafts, items, units);
  for (const draft of drafts) {
    if (draft.gone || draft.points !== undefined) continue;
    const joint = /^(?:[:=]|ca|is|now)$/.test(items[draft.index - 1]?.text ?? "");
    const name = items[draft.index - (joint ? 2 : 1)];
    const saturated = name?.label?.place?.endsWith("_saturation") === true;
    if (!saturated && !/^(?:p[ds]|td)$/.test(name?.text ?? "")) continue;
    if (isDrop(items)) return;
    if (/^p[ds]$/.test(name?.text ?? "") && isGauge(draft, units)) {
      draft.place = name?.text === "pd" ? "discharge" : "suction";
      draft.named = "pressure";
      if (draft.unit === undefined) {
        draft.unit = unitCalled(units === "si" ? "bar" : "psi");
        draft.assumedUnit = true;
      }
    } else if (name?.text === "td" && isWarm(draft, units)) {
      draft.place = "discharge";
      draft.named = "temperature";
      draft.hint = undefined;
    } else if (saturated && draft.place === undefined && draft.named === undefined) {
      draft.place = name?.label?.place;
      draft.hint = "temperature";
    }
  }
}
