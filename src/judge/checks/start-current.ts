import type { Check } from "../check.ts";
import { compressorCurrents } from "./motor-currents.ts";
import { inverterStart } from "./start-inverter.ts";
import { lineStart } from "./start-line.ts";
import { told } from "./told.ts";

/** Starting: an inverter's ramp, a line start's inrush, or a rotor that does not turn. */
export const startCurrent: Check = {
  name: "start_current",
  signs: [
    "start:line_start",
    "ramp:usual",
    "start:held_locked",
    "start:locked_once",
    "start:at_locked_unknown",
    "start:low",
    "start:above_locked",
    "start_pressures:pressures_unequal",
    "start_pressures:pressures_equal",
    "ramp:high",
    "ramp:limit",
  ],
  judge: (scene) => [
    ...compressorCurrents(scene).flatMap((currents) =>
      scene.facts.drive === "inverter"
        ? inverterStart(currents, scene)
        : lineStart(currents, scene),
    ),
    ...told(scene, "start_current"),
  ],
};
