import { applicationOf, inTestOperation } from "../application.ts";
import { isNewSystem } from "../checks/commissioning.ts";
import { circuitsOf } from "../circuit.ts";
import type { Scene } from "../scene.ts";
import type { Step } from "../step.ts";
import { isChargedUnproven } from "../unproven.ts";

/** A variable machine was read in normal operation, where nothing speaks of its charge. */
function chargeIsOpen(scene: Scene): boolean {
  const read = circuitsOf(scene).some(
    (one) => one.suctionPa !== undefined || one.highPa !== undefined,
  );
  return read && applicationOf(scene) === "multi_zone" && !inTestOperation(scene);
}

/** Weight and vacuum of a new system stand in the notes. */
function hasStartRecord(scene: Scene): boolean {
  return ["mass", "vacuum"].every((name) => scene.readings.some((one) => one.quantity === name));
}

/** Looks at the refrigerant and air side, in no order: `next.ts` ranks them. */
export const gasSteps: readonly Step[] = [
  {
    check: "charge",
    why: "For the start-up record of a new system: nitrogen hold, vacuum and how it rose, and the weight charged against plate and line set, before anything else is read into it; what nobody wrote down is weighed or tested again",
    minutes: 10,
    danger: 1,
    fills: ["weighed", "start_record"],
    only: (scene) => isNewSystem(scene) && !hasStartRecord(scene),
    wanted: () => true,
  },
  {
    check: "sensor",
    why: "The defrost first: when it last ran by clock or board, amps and volts at the heaters while one is forced, what ends it, door and drain. Then thaw the coil whole before airflow or pressures are read: iced over it shows nothing of either",
    minutes: 15,
    danger: 2,
    fills: ["defrosting", "defrost_heaters"],
    where: { side: "gas", machine: "defrosting" },
    after: ["indoor_air:ice_on_cold_coil"],
  },
  {
    check: "saturation",
    why: "Gauges and probes before the machine: is each clamp on the pipe it is named for, clean and covered, are they exchanged, is the gauge at zero, and which refrigerant is on the plate; then pressure and line once more at one place",
    minutes: 4,
    danger: 1,
    fills: ["read_again"],
    after: ["physics:contradicts"],
  },
  {
    check: "compression",
    why: "The manifold before the compressor: its valves shut, both cores pressed, the hoses on two different ports; then suction and discharge pressure once more while it runs",
    minutes: 4,
    danger: 1,
    fills: ["gauges_again"],
    after: ["ratio:flat"],
  },
  {
    check: "compression",
    why: "Before a compressor is ordered: stop it with the liquid valve shut and watch both gauges. If they run together within a minute, gas passes inside it; a valve ahead of it that does not shut feeds the suction side alone",
    minutes: 5,
    danger: 1,
    fills: ["stopped_again"],
    unless: ["unloads:at_once"],
    after: ["pump_down:fails"],
  },
  {
    check: "airflow",
    why: "Airflow first: filter, indoor coil, blower and supply and return openings by eye, then return and supply air temperature for the split",
    minutes: 4,
    danger: 0,
    fills: ["split"],
    where: { side: "gas", state: "running" },
  },
  {
    check: "superheat",
    why: "Suction pressure and suction line temperature at the same place, with the refrigerant off the plate: superheat tells starved from flooded",
    minutes: 5,
    danger: 1,
    fills: ["superheat"],
    also: ["suction"],
    where: { side: "gas", state: "running", drive: "line" },
  },
  {
    check: "subcooling",
    why: "Liquid line pressure and temperature, and the outdoor air: subcooling and condensing over ambient tell charge from restriction from condenser",
    minutes: 5,
    danger: 1,
    fills: ["subcooling"],
    also: ["head"],
    where: { side: "gas", state: "running", drive: "line" },
  },
  {
    check: "charge",
    why: "Forced test operation for 15 to 20 minutes, settled, no defrost: outdoor subcooling, discharge superheat and valve openings, or weigh the charge out: nothing else judges a variable machine's charge",
    minutes: 25,
    danger: 1,
    fills: ["test_charge", "weighed"],
    where: { side: "gas", state: "running", drive: "inverter" },
    wanted: (scene) => chargeIsOpen(scene),
  },
  {
    check: "valve",
    why: "Temperatures along the liquid line, both sides of drier, solenoid and strainer: a drop of more than 3 F is a restriction",
    minutes: 4,
    danger: 0,
    fills: ["line_drop"],
    where: { side: "gas", state: "running" },
  },
  {
    check: "airflow",
    why: "Total static pressure against the blower rating, then filter and coil drop apart",
    minutes: 6,
    danger: 1,
    fills: ["static"],
    where: { side: "gas", state: "running" },
    // cases and boxes have no ducts, a chiller has no air
    only: (scene) => /^(?:comfort|multi_zone)$/.test(applicationOf(scene)),
  },
  {
    check: "evaporator fans, coil face, ice",
    why: "Every evaporator fan turning and the right way round, coil face open of ice and dirt, nothing stacked before the air: what a box or a case has instead of ducts",
    minutes: 4,
    danger: 0,
    fills: ["indoor_air"],
    also: ["fans"],
    where: { side: "gas", state: "running" },
    only: (scene) => /^(?:cooler|freezer)$/.test(applicationOf(scene)),
  },
  {
    check: "discharge_temperature",
    why: "Discharge line temperature 6 in from the compressor: with the head it tells overheating and liquid carried through",
    minutes: 3,
    danger: 1,
    fills: ["discharge"],
    where: { side: "gas", state: "running" },
  },
  {
    check: "compression",
    why: "Pump it down at the suction or king valve and stop it: does it pull down, and do the pressures stay apart",
    minutes: 8,
    danger: 2,
    fills: ["pump_down"],
    where: { side: "gas", state: "running", drive: "line" },
  },
  {
    check: "saturation",
    why: "At rest half an hour with the fans on: standing pressure against saturation at the coil's temperature shows air or another refrigerant",
    minutes: 30,
    danger: 1,
    fills: ["at_rest"],
    where: { side: "gas", state: "running" },
  },
  {
    check: "superheat",
    why: "Let it run 15 to 20 minutes, then suction, liquid, both line temperatures and the air on both sides once more: they show whether the repair holds",
    minutes: 20,
    danger: 1,
    fills: ["proof_of_charge"],
    where: { side: "gas" },
    wanted: (scene) => isChargedUnproven(scene),
  },
];
