import type { Finding, Reading } from "../../model.ts";
import { unbalancePercent } from "../../physics/unbalance.ts";
import { numbersOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { listed } from "../words.ts";

/** Share of the plate under which a whole even row is no line voltage; percent that it may differ. Common practice, no source. */
const stray = { plateShare: 0.4, unevenPercent: 5, nearPlate: 0.8 } as const;

/**
 * Three even figures far under the plate, their unit filled in, beside a row that is the line's:
 * amps or something else, and no verdict on the supply.
 */
export function isStrayRow(
  set: readonly Reading[],
  sets: readonly (readonly Reading[])[],
  scene: Scene,
): boolean {
  const { supply_V } = scene.facts;
  const values = numbersOf(set);
  if (supply_V === undefined || values.length < 3) return false;
  if (!set.every((one) => one.assumed.includes("unit"))) return false;
  if ((unbalancePercent(values) ?? 100) > stray.unevenPercent) return false;
  if (Math.max(...values) >= stray.plateShare * supply_V) return false;
  return sets.some((other) => Math.min(...numbersOf(other)) > stray.nearPlate * supply_V);
}

export function strayFinding(set: readonly Reading[]): Finding {
  return {
    about: "supply",
    check: "supply",
    level: "unknown",
    says: `${listed(numbersOf(set), "V")} beside the line's own volts: that may be amps, so it is not judged; say it with its unit`,
    brief: "volts or amps?",
    values: {},
    basis: "plausibility",
    missing: "its unit",
  };
}
