import { isHeating } from "./application.ts";
import type { Evidence } from "./evidence.ts";
import type { Scene } from "./scene.ts";

/**
 * In heating the indoor coil condenses and the outdoor coil evaporates, so what is seen of the one
 * speaks of the other's part. Signs are named for cooling.
 */
const turned: Readonly<Record<string, string>> = {
  "indoor_air:filter_dirty": "outdoor_air:outdoor_coil_dirty",
  "indoor_air:indoor_coil_dirty": "outdoor_air:outdoor_coil_dirty",
  "indoor_air:airflow_blocked": "outdoor_air:outdoor_coil_dirty",
  "belt:belt_broken": "outdoor_air:outdoor_coil_dirty",
  "belt:belt_slipping": "outdoor_air:outdoor_coil_dirty",
  "static:high": "outdoor_air:outdoor_coil_dirty",
  "outdoor_air:outdoor_coil_dirty": "indoor_air:indoor_coil_dirty",
  "outdoor_air:recirculating_air": "indoor_air:airflow_blocked",
  "fans:outdoor_fan_not_turning": "fans:indoor_fan_not_turning",
  "fans:indoor_fan_not_turning": "fans:outdoor_fan_not_turning",
};

/** The evidence with the coils' parts as the mode has them. */
export function byRole(evidence: readonly Evidence[], scene: Scene): readonly Evidence[] {
  if (!isHeating(scene)) return evidence;
  return evidence.map((one) => ({ ...one, sign: turned[one.sign] ?? one.sign }));
}
