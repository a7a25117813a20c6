import type { QuantityName } from "../quantities/list.ts";
import type { CheckName, Place } from "../vocabulary.ts";

/** How a check is said, and which measured quantities it speaks about. */
export interface CheckWords {
  /** what it is called: "insulation" */
  readonly name: string;
  /** what to do, after "Next:" */
  readonly act: string;
  readonly of: readonly QuantityName[];
  /** where it must have been measured, where the quantity alone does not tell */
  readonly places?: readonly Place[];
}

export const checkWords: Readonly<Record<CheckName, CheckWords>> = {
  insulation: {
    name: "insulation",
    act: "megohms, each lead to ground, leads off",
    of: ["insulation_resistance"],
  },
  polarization: {
    name: "polarization index",
    act: "megohms at 1 and 10 minutes",
    of: ["insulation_resistance", "polarization_index", "absorption_ratio"],
  },
  winding: {
    name: "windings",
    act: "winding ohms, all three pairs, at the pins",
    of: ["winding_resistance"],
  },
  start_current: {
    name: "start",
    act: "amps at start, peak and how long",
    of: ["current"],
  },
  running_current: { name: "running amps", act: "running amps on every leg", of: ["current"] },
  supply: {
    name: "supply",
    act: "supply volts, all pairs, under load",
    of: ["voltage", "frequency"],
  },
  control_voltage: {
    name: "control voltage",
    act: "control volts at the coil",
    of: ["voltage"],
    places: ["control"],
  },
  dc_bus: {
    name: "DC bus",
    act: "DC bus volts, running and off",
    of: ["voltage"],
    places: ["dc_bus"],
  },
  bridge: {
    name: "diode test",
    act: "diode drops of the bridge, bus proven dead",
    of: ["diode_drop"],
  },
  capacitor: {
    name: "capacitor",
    act: "capacitor microfarads, discharged first",
    of: ["capacitance"],
  },
  contactor: {
    name: "contactor",
    act: "contactor coil ohms and volts across the contacts",
    of: ["voltage", "resistance"],
  },
  fan: {
    name: "fan",
    act: "does the fan turn, its amps",
    of: ["current", "rotational_speed"],
  },
  sensor: {
    name: "sensor",
    act: "sensor ohms against its real temperature",
    of: ["resistance"],
  },
  communication: {
    name: "communication",
    act: "volts on the communication pair at each box",
    of: ["voltage", "resistance"],
  },
  superheat: {
    name: "superheat",
    act: "suction pressure and suction line temperature",
    of: ["pressure", "temperature", "superheat"],
    places: ["suction", "suction_saturation", "evaporator_out"],
  },
  subcooling: {
    name: "subcooling",
    act: "liquid pressure and liquid line temperature",
    of: ["pressure", "temperature", "subcooling"],
    places: ["liquid", "discharge", "discharge_saturation", "condenser_out"],
  },
  saturation: {
    name: "saturation",
    act: "saturation temperature against the pressure",
    of: ["pressure", "temperature"],
    places: [
      "suction",
      "discharge",
      "liquid",
      "suction_saturation",
      "discharge_saturation",
      "outdoor_air",
      "return_air",
      "box",
    ],
  },
  compression: {
    name: "compression",
    act: "suction and discharge pressure, settled",
    of: ["pressure"],
    places: ["suction", "discharge"],
  },
  discharge_temperature: {
    name: "discharge line",
    act: "discharge line temperature",
    of: ["temperature"],
    places: ["discharge"],
  },
  circuit_pattern: {
    name: "gas side",
    act: "pressures and line temperatures, settled",
    of: ["pressure", "temperature", "superheat", "subcooling"],
    places: ["suction", "discharge", "liquid"],
  },
  valve: {
    name: "valve",
    act: "valve opening and superheat",
    of: ["valve_opening", "valve_steps", "superheat"],
  },
  airflow: {
    name: "airflow",
    act: "filter, coil, total static pressure",
    of: ["static_pressure", "airflow", "temperature_difference"],
  },
  temperature_split: {
    name: "air split",
    act: "return and supply air temperature",
    of: ["temperature", "temperature_difference", "wet_bulb_temperature"],
    places: ["return_air", "supply_air"],
  },
  evacuation: {
    name: "vacuum hold",
    act: "vacuum hold, pump valved off, 10 minutes",
    of: ["vacuum"],
  },
  pressure_test: {
    name: "pressure test",
    act: "nitrogen pressure and pipe temperature, start and end",
    of: ["pressure", "temperature"],
  },
  gas_heat: {
    name: "gas heat",
    act: "temperature rise against the plate, flame microamps",
    of: ["temperature_difference"],
  },
  charge: { name: "charge", act: "weigh the charge against the plate", of: ["mass"] },
  line_charge: { name: "line charge", act: "line length and size", of: ["mass", "length"] },
  leak_rate: {
    name: "leak rate",
    act: "weight added and the date of the last addition",
    of: ["mass"],
  },
  room_concentration: {
    name: "room concentration",
    act: "smallest room and total charge",
    of: ["mass", "concentration"],
  },
  commissioning: { name: "start-up record", act: "what the start-up record still lacks", of: [] },
  box_temperature: {
    name: "box temperature",
    act: "box and product temperature, after the door was shut a while",
    of: ["temperature"],
    places: ["box", "product"],
  },
  places: { name: "rooms", act: "which rooms are out and which are fine", of: [] },
  history: { name: "history", act: "what the last visit measured", of: [] },
};

const byName = new Map<string, CheckWords>(Object.entries(checkWords));

/** A check's words; one that is not in the table is said by its name. */
export function wordsOfCheck(check: string): CheckWords {
  const plain = check.replaceAll("_", " ");
  return byName.get(check) ?? { name: plain, act: plain, of: [] };
}
