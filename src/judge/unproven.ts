import type { Reading } from "../model.ts";
import { isInVain } from "./in-vain.ts";
import { repairSigns } from "./repairs.ts";
import { replacesCompressor } from "./replaces-compressor.ts";
import type { Scene } from "./scene.ts";
import { stagesOf } from "./stages.ts";

/** Refrigerant went in after work on the circuit, and no running pressure was read since. */
export function isChargedUnproven(scene: Scene): boolean {
  const { after } = stagesOf(scene.notes);
  if (after.length === 0 || !isCharged(scene)) return false;
  const closed = scene.done.some((one) => one.action === "brazed" || one.action === "repaired");
  return closed && !after.some((note) => note.readings.some(isRunningPressure));
}

/** A part of the motor's circuit went in, and neither volts nor amps were read since. */
export function isFittedUnproven(scene: Scene): boolean {
  const { after } = stagesOf(scene.notes);
  if (after.length === 0 || isInVain(scene)) return false;
  const parts = repairSigns(scene).map((one) => one.part);
  const fitted = parts.some((part) => motorParts.includes(part));
  return (
    (fitted || scene.notes.some(replacesCompressor)) &&
    !after.some((note) => note.readings.some((one) => one.quantity === "current"))
  );
}

const motorParts: readonly string[] = ["capacitor", "contactor", "connection", "drive", "rotation"];

function isCharged(scene: Scene): boolean {
  return (
    scene.done.some((one) => one.action === "charged") ||
    scene.readings.some((one) => one.quantity === "mass" && one.action === "charged")
  );
}

function isRunningPressure(one: Reading): boolean {
  return one.quantity === "pressure" && one.at !== undefined;
}
