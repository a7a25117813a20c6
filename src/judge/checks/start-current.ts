import type { Check } from "../check.ts";
import { compressorCurrents } from "./motor-currents.ts";
import { inverterStart } from "./start-inverter.ts";
import { lineStart } from "./start-line.ts";
import { told } from "./told.ts";

/** Starting: an inverter's ramp, a line start's inrush, or a rotor that does not turn. */
export const startCurrent: Check = {
  name: "start_current",
  examples: [
    {
      level: "good",
      notes: ["inrush 120 A, drops to 15 A in three cycles"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "bad",
      notes: ["pulls 128 A for 5 seconds, then the overload opens"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "bad",
      notes: ["plate: 10 hp, code G", "71 A and it stays there till the overload opens"],
      equipment: { drive: "line", phases: 3, supply_V: 460 },
    },
    { level: "unknown", notes: ["inrush 95 A"], equipment: { drive: "line", phases: 3 } },
  ],
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
    "current:line_dead",
    "start_kit:relay_failed",
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
