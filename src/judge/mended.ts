import type { FaultName } from "../vocabulary.ts";
import { isInVain } from "./in-vain.ts";
import { repairSigns } from "./repairs.ts";
import { replacesCompressor } from "./replaces-compressor.ts";
import { perScene, type Scene } from "./scene.ts";

/** What mends each fault: a part of `repairs.ts`, a new compressor, or a leak closed and charged. */
const cures: Readonly<Partial<Record<FaultName, readonly string[]>>> = {
  capacitor_failed: ["capacitor"],
  contactor_failed: ["contactor"],
  fan_motor_failed: ["fan"],
  evaporator_airflow_low: ["filter", "coil", "belt"],
  condenser_airflow_low: ["coil"],
  connection_loose: ["connection"],
  sensor_failed: ["sensor"],
  control_voltage_lost: ["control"],
  control_board_failed: ["board"],
  drive_output_failed: ["drive", "board"],
  drive_rectifier_failed: ["drive", "board"],
  drive_control_failed: ["drive", "board"],
  defrost_failed: ["defrost"],
  compressor_reversed: ["rotation"],
  compressor_rotor_locked: ["compressor"],
  compressor_winding_grounded: ["compressor"],
  compressor_winding_shorted: ["compressor"],
  compressor_winding_open: ["compressor"],
  compressor_valves_leaking: ["compressor"],
  refrigerant_undercharge: ["leak"],
  system_leaking: ["leak"],
};

const curesByFault: ReadonlyMap<string, readonly string[]> = new Map(Object.entries(cures));

/** The cause was put right, as told, and nothing says that it was in vain: its proofs are past. */
export function isMended(fault: string, scene: Scene): boolean {
  if (isInVain(scene)) return false;
  const cure = curesByFault.get(fault);
  return cure !== undefined && doneParts(scene).some((part) => cure.includes(part));
}

const doneParts: (scene: Scene) => readonly string[] = perScene((scene) => [
  ...repairSigns(scene).map((one) => one.part),
  ...(scene.notes.some(replacesCompressor) ? ["compressor"] : []),
  ...(isLeakClosed(scene) ? ["leak"] : []),
]);

/** Something on the piping was closed, and refrigerant went in. */
function isLeakClosed(scene: Scene): boolean {
  const closed = scene.done.some(
    (one) =>
      one.action === "brazed" ||
      ((one.action === "repaired" || one.action === "replaced" || one.action === "tightened") &&
        /leak|flare|joint|coil|core|schrader|valve|fitting|line|^\s*$/i.test(one.what ?? "")),
  );
  const charged =
    scene.readings.some(isCharged) || scene.done.some((one) => one.action === "charged");
  return closed && charged;
}

function isCharged(one: Scene["readings"][number]): boolean {
  return one.quantity === "mass" && one.action === "charged";
}
