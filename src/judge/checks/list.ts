import type { Check } from "../check.ts";
import { airflow } from "./airflow.ts";
import { boxTemperature } from "./box-temperature.ts";
import { bridge } from "./bridge.ts";
import { capacitor } from "./capacitor.ts";
import { charge } from "./charge.ts";
import { circuitPattern } from "./circuit-pattern.ts";
import { commissioning } from "./commissioning.ts";
import { communication } from "./communication.ts";
import { compression } from "./compression.ts";
import { contactor } from "./contactor.ts";
import { controlVoltage } from "./control-voltage.ts";
import { dcBus } from "./dc-bus.ts";
import { dischargeTemperature } from "./discharge-temperature.ts";
import { driveOutput } from "./drive-output.ts";
import { evacuation } from "./evacuation.ts";
import { fan } from "./fan.ts";
import { gasHeat } from "./gas-heat.ts";
import { insulation } from "./insulation.ts";
import { leakRate } from "./leak-rate.ts";
import { lineCharge } from "./line-charge.ts";
import { places } from "./places.ts";
import { polarization } from "./polarization.ts";
import { pressureTest } from "./pressure-test.ts";
import { repeatFailure } from "./repeat-failure.ts";
import { roomConcentration } from "./room-concentration.ts";
import { runningCurrent } from "./running-current.ts";
import { saturation } from "./saturation.ts";
import { sensor } from "./sensor.ts";
import { startCurrent } from "./start-current.ts";
import { subcooling } from "./subcooling.ts";
import { superheat } from "./superheat.ts";
import { supply } from "./supply.ts";
import { temperatureSplit } from "./temperature-split.ts";
import { valve } from "./valve.ts";
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
  repeatFailure,
  places,
  // refrigerant and air side
  superheat,
  subcooling,
  saturation,
  compression,
  dischargeTemperature,
  circuitPattern,
  valve,
  airflow,
  temperatureSplit,
  gasHeat,
  evacuation,
  pressureTest,
  charge,
  lineCharge,
  leakRate,
  roomConcentration,
  commissioning,
  boxTemperature,
];
