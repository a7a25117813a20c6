import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** psi, of what a gauge of this trade shows beside another. Common practice, no source. */
const gaugePsi = { from: 5, to: 700 } as const;

/** Words beside which two figures, one over the other, are both sides' pressures. */
const gasWords =
  /^(?:psi|psig|suction|suct|head|pump|pumps|pumping|cool|cools|cooling|scroll|superheat|subcooling|discharge|gauges|rotation)$/;

function isGauge(draft: Draft): boolean {
  const { unit, named, points, action, value } = draft;
  return (
    (unit === undefined || unit.figure === "psi") &&
    (named === undefined || named === "pressure") &&
    points === undefined &&
    action === undefined &&
    value >= gaugePsi.from &&
    value <= gaugePsi.to
  );
}

/** "96 over 152 psi", "suction won't pull down: 149 over 158": both sides, whichever was spoken of before. */
export function overGauges(left: Draft, right: Draft, items: readonly Item[]): boolean {
  if (!isGauge(left) || !isGauge(right) || left.value === right.value) return false;
  const sides = [undefined, "shell", "suction", "discharge"];
  if (!sides.includes(left.place) || !sides.includes(right.place)) return false;
  const risen =
    left.value >= 40 &&
    left.value < right.value &&
    [left, right].every(({ value }) => Number.isInteger(value));
  const beside = items.some(
    ({ unit }) => unit?.dimension === "temperature" || unit?.dimension === "current",
  );
  return (
    right.unit !== undefined || (risen && beside) || items.some(({ text }) => gasWords.test(text))
  );
}
