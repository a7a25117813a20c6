import type { Fault } from "../fault.ts";
import { capacitorFailed } from "./capacitor-failed.ts";
import { communicationFailed } from "./communication-failed.ts";
import { compressorInsulationDegraded } from "./compressor-insulation-degraded.ts";
import { compressorOverloadOpen } from "./compressor-overload-open.ts";
import { compressorReversed } from "./compressor-reversed.ts";
import { compressorRotorLocked } from "./compressor-rotor-locked.ts";
import { compressorWindingGrounded } from "./compressor-winding-grounded.ts";
import { compressorWindingOpen } from "./compressor-winding-open.ts";
import { compressorWindingShorted } from "./compressor-winding-shorted.ts";
import { connectionLoose } from "./connection-loose.ts";
import { contactorFailed } from "./contactor-failed.ts";
import { controlBoardFailed } from "./control-board-failed.ts";
import { controlVoltageLost } from "./control-voltage-lost.ts";
import { driveControlFailed } from "./drive-control-failed.ts";
import { driveOutputFailed } from "./drive-output-failed.ts";
import { driveRectifierFailed } from "./drive-rectifier-failed.ts";
import { fanMotorFailed } from "./fan-motor-failed.ts";
import { floodedStart } from "./flooded-start.ts";
import { noFault } from "./no-fault.ts";
import { other } from "./other.ts";
import { sensorFailed } from "./sensor-failed.ts";
import { startAgainstPressure } from "./start-against-pressure.ts";
import { supplyPhaseLost } from "./supply-phase-lost.ts";
import { supplyVoltageHigh } from "./supply-voltage-high.ts";
import { supplyVoltageLow } from "./supply-voltage-low.ts";
import { supplyVoltageUnbalanced } from "./supply-voltage-unbalanced.ts";

/** Every fault; a new one is its file and a line here. */
export const faults: readonly Fault[] = [
  // electrical side
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
  // refrigerant and air side
  // always
  other,
  noFault,
];
