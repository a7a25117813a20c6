import type { Reading } from "../../model.ts";
import { noteOf } from "../near.ts";
import { numbersOf, ofQuantity } from "../pick.ts";
import type { Scene } from "../scene.ts";
import type { MotorCurrents } from "./motor-currents.ts";

/** Head over suction, gauge: apart from the first on, equal up to the second. Common practice, no source. */
const apart = 1.5;
const equal = 1.08;

/** Whether a start was tried against pressure, from the gauges read in the same note. */
export function startPressures(currents: MotorCurrents, scene: Scene): string[] {
  const notes = currents.start.map((one) => noteOf(scene, one));
  const there = ofQuantity(scene.readings, "pressure").filter(
    (one) => notes.includes(noteOf(scene, one)) && isGauge(one),
  );
  const values = numbersOf(there);
  if (values.length < 2) return [];
  const ratio = Math.max(...values) / Math.max(1, Math.min(...values));
  if (ratio >= apart) return ["start_pressures:pressures_unequal"];
  return ratio <= equal ? ["start_pressures:pressures_equal"] : [];
}

function isGauge(reading: Reading): boolean {
  return reading.reference !== "absolute";
}
