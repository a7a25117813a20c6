import type { Fault } from "../fault.ts";
import { branchValveStuck } from "./branch-valve-stuck.ts";
import { capacitorFailed } from "./capacitor-failed.ts";
import { communicationFailed } from "./communication-failed.ts";
import { compressorInsulationDegraded } from "./compressor-insulation-degraded.ts";
import { compressorOverloadOpen } from "./compressor-overload-open.ts";
import { compressorReversed } from "./compressor-reversed.ts";
import { compressorRotorLocked } from "./compressor-rotor-locked.ts";
import { compressorValvesLeaking } from "./compressor-valves-leaking.ts";
import { compressorWindingGrounded } from "./compressor-winding-grounded.ts";
import { compressorWindingOpen } from "./compressor-winding-open.ts";
import { compressorWindingShorted } from "./compressor-winding-shorted.ts";
import { condenserAirflowLow } from "./condenser-airflow-low.ts";
import { connectionLoose } from "./connection-loose.ts";
import { contactorFailed } from "./contactor-failed.ts";
import { controlBoardFailed } from "./control-board-failed.ts";
import { controlVoltageLost } from "./control-voltage-lost.ts";
import { defrostFailed } from "./defrost-failed.ts";
import { driveControlFailed } from "./drive-control-failed.ts";
import { driveOutputFailed } from "./drive-output-failed.ts";
import { driveRectifierFailed } from "./drive-rectifier-failed.ts";
import { evaporatorAirflowLow } from "./evaporator-airflow-low.ts";
import { expansionValveOverfeeding } from "./expansion-valve-overfeeding.ts";
import { expansionValveUnderfeeding } from "./expansion-valve-underfeeding.ts";
import { fanMotorFailed } from "./fan-motor-failed.ts";
import { floodedStart } from "./flooded-start.ts";
import { liquidLineRestricted } from "./liquid-line-restricted.ts";
import { noFault } from "./no-fault.ts";
import { noncondensables } from "./noncondensables.ts";
import { other } from "./other.ts";
import { refrigerantOvercharge } from "./refrigerant-overcharge.ts";
import { refrigerantUndercharge } from "./refrigerant-undercharge.ts";
import { refrigerantWrongOrMixed } from "./refrigerant-wrong-or-mixed.ts";
import { reversingValveLeaking } from "./reversing-valve-leaking.ts";
import { sensorFailed } from "./sensor-failed.ts";
import { startAgainstPressure } from "./start-against-pressure.ts";
import { supplyPhaseLost } from "./supply-phase-lost.ts";
import { supplyVoltageHigh } from "./supply-voltage-high.ts";
import { supplyVoltageLow } from "./supply-voltage-low.ts";
import { supplyVoltageUnbalanced } from "./supply-voltage-unbalanced.ts";
import { systemLeaking } from "./system-leaking.ts";
import { systemWet } from "./system-wet.ts";

/** The electrical side; a new one is its file and a line here. */
const electrical: readonly Fault[] = [
  capacitorFailed,
  communicationFailed,
  compressorInsulationDegraded,
  compressorOverloadOpen,
  compressorReversed,
  compressorRotorLocked,
  compressorWindingGrounded,
  compressorWindingOpen,
  compressorWindingShorted,
  connectionLoose,
  contactorFailed,
  controlBoardFailed,
  controlVoltageLost,
  driveControlFailed,
  driveOutputFailed,
  driveRectifierFailed,
  fanMotorFailed,
  floodedStart,
  sensorFailed,
  startAgainstPressure,
  supplyPhaseLost,
  supplyVoltageHigh,
  supplyVoltageLow,
  supplyVoltageUnbalanced,
];

/** The refrigerant and air side; a new one is its file and a line here. */
const gas: readonly Fault[] = [
  refrigerantUndercharge,
  refrigerantOvercharge,
  noncondensables,
  liquidLineRestricted,
  condenserAirflowLow,
  evaporatorAirflowLow,
  expansionValveUnderfeeding,
  expansionValveOverfeeding,
  compressorValvesLeaking,
  reversingValveLeaking,
  branchValveStuck,
  systemLeaking,
  systemWet,
  defrostFailed,
  refrigerantWrongOrMixed,
];

/** Every fault: both sides, and the two that are always possible. */
export const faults: readonly Fault[] = [...electrical, ...gas, other, noFault];

const sides: ReadonlyMap<Fault, "electrical" | "gas"> = new Map([
  ...electrical.map((fault) => [fault, "electrical"] as const),
  ...gas.map((fault) => [fault, "gas"] as const),
]);

/** The side that a fault lies on; undefined for the two that are always possible. */
export function sideOf(fault: Fault): "electrical" | "gas" | undefined {
  return sides.get(fault);
}
