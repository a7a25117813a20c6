import type { Finding, Reading } from "../../model.ts";
import { unbalancePercent } from "../../physics/unbalance.ts";
import { numbersOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { listed } from "../words.ts";

/** Share of the plate under which a whole even row is no line voltage; percent that it may differ. Common practice, no source. */
const stray = { plateShare: 0.4, unevenPercent: 5, nearPlate: 0.8 } as const;

/**
 * Figures whose unit was filled in and that are hardly the line's: three even ones far under the
 * plate beside a row that is, or the repeat of another test. No verdict on the supply.
 */
export function isStrayRow(
  set: readonly Reading[],
  sets: readonly (readonly Reading[])[],
  scene: Scene,
): boolean {
  if (isRetest(set, scene)) return true;
  const { supply_V } = scene.facts;
  const values = numbersOf(set);
  if (supply_V === undefined || values.length < 3) return false;
  if (!set.every((one) => one.assumed.includes("unit"))) return false;
  if ((unbalancePercent(values) ?? 100) > stray.unevenPercent) return false;
  if (Math.max(...values) >= stray.plateShare * supply_V) return false;
  return sets.some((other) => Math.min(...numbersOf(other)) > stray.nearPlate * supply_V);
}

/** "heater on overnight, again this morning: 260 260 270" behind a megohm test, nothing said of volts. */
function isRetest(set: readonly Reading[], scene: Scene): boolean {
  if (!set.every((one) => one.assumed.includes("quantity"))) return false;
  const note = scene.notes.findIndex(({ readings }) => set.some((one) => readings.includes(one)));
  const words = scene.notes[note]?.text ?? "";
  if (!/\b(?:again|re-?test\w*|repeat\w*|same (?:meter|voltage|tester))\b/i.test(words))
    return false;
  if (/\bv(?:olts?|ac)?\b|\bpanel\b|\bdisconnect\b|\bleg/i.test(words)) return false;
  return (
    scene.notes[note - 1]?.readings.some((one) => one.quantity === "insulation_resistance") === true
  );
}

export function strayFinding(set: readonly Reading[]): Finding {
  return {
    about: "supply",
    check: "supply",
    level: "unknown",
    says: `${listed(numbersOf(set), "V")} were taken for volts, but may be something else, so they are not judged; say them with their unit`,
    brief: "volts, or what?",
    values: {},
    basis: "plausibility",
    missing: "its unit",
  };
}
