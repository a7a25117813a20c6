import { absorptionRatio } from "./absorption-ratio.ts";
import { airflow } from "./airflow.ts";
import { apparentPower } from "./apparent-power.ts";
import { capacitance } from "./capacitance.ts";
import { concentration } from "./concentration.ts";
import { current } from "./current.ts";
import { diodeDrop } from "./diode-drop.ts";
import { duration } from "./duration.ts";
import { faultCode } from "./fault-code.ts";
import { frequency } from "./frequency.ts";
import { insulationResistance } from "./insulation-resistance.ts";
import { length } from "./length.ts";
import { mass } from "./mass.ts";
import { polarizationIndex } from "./polarization-index.ts";
import { power } from "./power.ts";
import { powerFactor } from "./power-factor.ts";
import { pressure } from "./pressure.ts";
import { relativeHumidity } from "./relative-humidity.ts";
import { resistance } from "./resistance.ts";
import { rotationalSpeed } from "./rotational-speed.ts";
import { staticPressure } from "./static-pressure.ts";
import { subcooling } from "./subcooling.ts";
import { superheat } from "./superheat.ts";
import { temperature } from "./temperature.ts";
import { temperatureDifference } from "./temperature-difference.ts";
import { vacuum } from "./vacuum.ts";
import { valveOpening } from "./valve-opening.ts";
import { valveSteps } from "./valve-steps.ts";
import { voltage } from "./voltage.ts";
import { waterFlow } from "./water-flow.ts";
import { wetBulbTemperature } from "./wet-bulb-temperature.ts";
import { windingResistance } from "./winding-resistance.ts";

/** Everything that can be measured; a new quantity is its file and a line here. */
export const quantities = [
  insulationResistance,
  windingResistance,
  resistance,
  polarizationIndex,
  absorptionRatio,
  current,
  voltage,
  diodeDrop,
  frequency,
  capacitance,
  power,
  powerFactor,
  apparentPower,
  valveSteps,
  faultCode,
  pressure,
  vacuum,
  staticPressure,
  temperature,
  wetBulbTemperature,
  temperatureDifference,
  superheat,
  subcooling,
  relativeHumidity,
  valveOpening,
  mass,
  airflow,
  rotationalSpeed,
  length,
  waterFlow,
  concentration,
  duration,
] as const;

export type QuantityName = (typeof quantities)[number]["name"];
