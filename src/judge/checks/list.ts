import type { Check } from "../check.ts";
import { bridge } from "./bridge.ts";
import { capacitor } from "./capacitor.ts";
import { communication } from "./communication.ts";
import { contactor } from "./contactor.ts";
import { controlVoltage } from "./control-voltage.ts";
import { dcBus } from "./dc-bus.ts";
import { driveOutput } from "./drive-output.ts";
import { fan } from "./fan.ts";
import { insulation } from "./insulation.ts";
import { polarization } from "./polarization.ts";
import { runningCurrent } from "./running-current.ts";
import { sensor } from "./sensor.ts";
import { startCurrent } from "./start-current.ts";
import { supply } from "./supply.ts";
import { winding } from "./winding.ts";

/** Every check, in the order of the work; a new one is its file and a line here. */
export const checks: readonly Check[] = [
  // electrical side
  supply,
  controlVoltage,
  insulation,
  polarization,
  winding,
  dcBus,
  bridge,
  driveOutput,
  startCurrent,
  runningCurrent,
  capacitor,
  contactor,
  fan,
  sensor,
  communication,
  // refrigerant and air side
];
