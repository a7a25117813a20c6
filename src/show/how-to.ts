import type { CheckName } from "../vocabulary.ts";
import { wordsOfCheck } from "./check-words.ts";
import { gasHeatHow, lineChargeHow } from "./how-to-more.ts";
import { sentenceCase } from "./wording.ts";

/** How a check is done, for someone who does it the first time. One line each, six in all. */
export interface HowTo {
  /** points or places */
  readonly where: string;
  /** instrument and its setting */
  readonly meter: string;
  readonly caution: string;
  /** what a sound machine shows */
  readonly good: string;
  readonly source: string;
  /** how to text it */
  readonly send: string;
}

const dead = "Lock out with your own lock, prove the meter live, test dead, prove it live again.";
const live =
  "Live work: only if qualified, rated gloves on, one hand, no jewelry, cover back after.";
const gas = "Goggles and gloves; crack the fittings slowly; liquid refrigerant burns skin.";
const practice = "common practice, no source";

export const howTo: Readonly<Record<CheckName, HowTo>> = {
  insulation: {
    where: "Each compressor lead to bare ground on the shell, leads off the drive or contactor.",
    meter: "Insulation tester at 500 V, hold one minute a lead, then ground the lead to drain it.",
    caution: `${dead} Not while the circuit is under vacuum.`,
    good: "100 megohm or more on every lead, all three alike; the floor is 5 megohm at 40 C.",
    source: "IEEE 43-2013 for the floor and the minute; 100 megohm is common practice.",
    send: "Text: comp 1 lead 1 220 meg at 500, lead 2 same, lead 3 210, shell 75 F.",
  },
  polarization: {
    where: "One lead to bare ground, the others landed together, leads off the drive.",
    meter: "Insulation tester at 500 V without a break; read at 1 minute and at 10 minutes.",
    caution: `${dead} Drain the winding four times as long as you tested.`,
    good: "Ratio of 2 for class B and up; on small hermetic motors a low ratio alone means little.",
    source: "IEEE 43-2013, polarization index, with its warning on small motors.",
    send: "Text: comp 1 lead 1 at 1 minute 212 meg, ten minute 486.",
  },
  winding: {
    where:
      "Compressor pins: 1 to 2, 2 to 3, 1 to 3, plugs off; single phase C to R, C to S, R to S.",
    meter: "Ohms, lowest range; touch the probes first and subtract what they read.",
    caution: `${dead} Let a hot shell cool first: an open overload looks like an open winding.`,
    good: "Three pairs within 2 in 100; single phase: R to S is the sum of the other two.",
    source: "Electrical maintenance literature for the balance.",
    send: "Text: comp 1 T1-T2 0.74, T2-T3 0.73, T1-T3 0.74 ohm.",
  },
  start_current: {
    where: "Clamp around one compressor lead close to the contactor or drive.",
    meter: "AC amps, peak or inrush hold on, before the start; note how long it stays high.",
    caution: `${live} Terminal cover of the compressor stays on.`,
    good: "Line start: 5 to 8 times rated, over within a second. Inverter: a slow climb, no peak.",
    source: "NEMA MG 1 for line starts; drive literature for the climb.",
    send: "Text: comp 1 start peak 92 for half a second, then 14 A.",
  },
  running_current: {
    where: "Clamp around each compressor lead, one after the other, unit settled ten minutes.",
    meter: "AC amps; average value; keep the clamp closed and square to the wire.",
    caution: live,
    good: "At or under the plate's rated load, legs within a tenth of each other.",
    source: "Unit nameplate; the balance is common practice.",
    send: "Text: comp 1 running 13.8 14.0 13.7 A.",
  },
  supply: {
    where: "Unit disconnect, load side: L1 to L2, L2 to L3, L1 to L3, unit running if it can.",
    meter: "AC volts, meter and leads rated CAT III 600 V or better.",
    caution: live,
    good: "Within a tenth of the plate, unbalance under 2 in 100.",
    source: "NEMA MG 1 for the unbalance; AHRI 110 for the band.",
    send: "Text: running, L1-L2 466, L2-L3 465, L1-L3 467.",
  },
  control_voltage: {
    where: "Transformer secondary, then follow the circuit device by device to the coil.",
    meter: "AC volts; one probe stays on common, the other walks.",
    caution: live,
    good: "24 to 28 V at the transformer, the same at the coil while it is called for.",
    source: `Transformer plate; the band is ${practice}.`,
    send: "Text: control 25.6 V at the transformer, 0 V at the coil.",
  },
  dc_bus: {
    where: "Bus terminals P and N of the drive, as its label shows.",
    meter: "DC volts, 1000 V range, CAT III leads.",
    caution:
      "Power off, wait the label's minutes, measure again: under 50 V before any hand goes in.",
    good: "Idle: 1.41 times the line volts. Loaded three phase: about 1.35 times.",
    source: "Rectifier theory; a boosted bus reads higher, its label tells.",
    send: "Text: bus 648 running, line 478, or bus 2 V after 10 minutes.",
  },
  bridge: {
    where: "Drive input and output: each of L1 L2 L3 and U V W against P and against N.",
    meter: "Diode range; red on N, then red on the phases with black on P; twelve drops in all.",
    caution: `Motor leads off, bus measured near 0 V. ${dead}`,
    good: "0.3 to 0.7 V one way, OL the other, all of one bridge within 0.05 V.",
    source: `Service literature; the spread is ${practice}.`,
    send: "Text: bridge L1 0.38 0.38, L2 0.38 0.37, L3 OL 0.38.",
  },
  capacitor: {
    where: "Capacitor terminals, wires off: common to herm, common to fan.",
    meter: "Microfarads; compare with the value on the can.",
    caution: "Discharge it through a resistor, measure near 0 V, then touch. Unit locked out.",
    good: "Within the can's own tolerance, 6 in 100 where it names none; no bulge, no oil.",
    source: "The label; IEC 60252-1 names the tolerance classes.",
    send: "Text: herm cap rated 45, reads 38.2 microfarad.",
  },
  contactor: {
    where: "Coil pins, wires off; then across each closed pole, under load.",
    meter: "Ohms on the coil, dead; then AC volts across each pole, running.",
    caution: live,
    good: "Coil a few to some tens of ohms; under 0.3 V across a closed pole; faces even.",
    source: practice,
    send: "Text: contactor coil 12 ohm, pole 1 0.1 V, pole 2 2.4 V.",
  },
  fan: {
    where: "Blade or wheel by eye, then clamp around one motor lead.",
    meter: "AC amps against the motor plate; spin by hand only when locked out.",
    caution: "Fans start by themselves: lock out before a hand goes past the guard.",
    good: "Turns free, right way round, amps at or under the plate.",
    source: "Motor nameplate.",
    send: "Text: outdoor fan 1 not turning, 0 A, cap 4.9 microfarad.",
  },
  sensor: {
    where: "Sensor plug off the board; put a thermometer right beside the sensor.",
    meter: "Ohms, and degrees at the same moment.",
    caution: "Low voltage side only; power off before a plug comes off the board.",
    good: "Ohms match the maker's table at that temperature; OL or 0 is a broken one.",
    source: "The unit's own table; without it compare with a like sensor.",
    send: "Text: suction sensor 9.8 kohm at 77 F.",
  },
  communication: {
    where: "The two terminals of the pair, first at the outdoor unit, then at each box.",
    meter: "DC volts; then unplug one box after the other and watch the reading.",
    caution: "Other terminals beside the pair carry line voltage: probe with care.",
    good: "A steady voltage as at a working box; it falls where a box pulls the pair down.",
    source: practice,
    send: "Text: BB-1 pair 0.4 Vdc, BB-2 same pair 16.2 Vdc.",
  },
  superheat: {
    where: "Suction pressure at the service port, temperature on the bare suction line beside it.",
    meter: "Gauge on the low side; clamp thermometer, insulated, two minutes to settle.",
    caution: gas,
    good: "Expansion valve: 8 to 25 F at the compressor. Orifice: by wet bulb and outdoor air.",
    source: `${practice}; dew point is used for blends.`,
    send: "Text: suction 118 psi, line 52 F, return wet bulb 64, outdoor 88.",
  },
  subcooling: {
    where: "Liquid pressure and the liquid line, both right after the condenser.",
    meter: "Gauge on the high side; clamp thermometer on bare copper, shaded.",
    caution: gas,
    good: "What the plate says; without it 8 to 14 F on an expansion valve.",
    source: `Plate, else ${practice}.`,
    send: "Text: liquid 338 psi, line 93 F.",
  },
  saturation: {
    where: "Pressure port and, unit off for an hour, the air and pipe beside it.",
    meter: "Gauge zeroed in open air, thermometer on the pipe.",
    caution: gas,
    good: "At rest pressure and temperature lie on the gas's own line within 2 F.",
    source: "Saturation tables of the gas.",
    send: "Text: off one hour, both sides 201 psi, pipe 70 F, outdoor 70.",
  },
  compression: {
    where: "Suction and discharge ports at the compressor, ten minutes into a run.",
    meter: "Two gauges read at the same moment; amps along with them.",
    caution: gas,
    good: "Comfort cooling: absolute discharge 2.3 to 3.5 times absolute suction.",
    source: practice,
    send: "Text: suction 118, head 365, 14 A, outdoor 88.",
  },
  discharge_temperature: {
    where: "Bare discharge line, six inches from the compressor.",
    meter: "Clamp or strapped thermometer, insulated over.",
    caution: "The line can burn: over 200 F is possible.",
    good: "130 to 200 F in comfort cooling, under 225 F always.",
    source: practice,
    send: "Text: discharge line 181 F.",
  },
  circuit_pattern: {
    where: "Suction and liquid pressure, both line temperatures, outdoor and return air.",
    meter: "Both gauges and three thermometers, read within one minute, unit settled.",
    caution: gas,
    good: "Superheat and subcooling both in their bands; one out of band names the fault.",
    source: "Refrigerant tables; bands are common practice.",
    send: "Text: suction 124, line 54, liquid 338, line 93, outdoor 85, return 75.",
  },
  valve: {
    where: "Valve body, its bulb or coil, and the line before and after it.",
    meter: "Thermometer both sides; opening or steps from the controller.",
    caution: gas,
    good: "Superheat answers within minutes when the opening is changed.",
    source: practice,
    send: "Text: valve 1 at 480 steps, superheat 3 F, bulb tight.",
  },
  airflow: {
    where: "Filter, coil face, blower; static before and after the fan cabinet.",
    meter: "Manometer, two probes, total static against the unit's own table.",
    caution: "Lock out before you reach the wheel; belts and wheels coast.",
    good: "Total static at or under the plate's, commonly 0.5 inch of water on small units.",
    source: `Plate, else ${practice}.`,
    send: "Text: static 0.55 in, filters changed.",
  },
  temperature_split: {
    where: "Return air at the unit and supply air past the coil, out of sight of it.",
    meter: "Two thermometers, wet bulb in the return, ten minutes settled.",
    caution: "Keep leads and fingers out of the blower section.",
    good: "16 to 22 F in cooling at usual indoor humidity, less when the air is humid.",
    source: "State energy code table, from memory; ducted single speed only.",
    send: "Text: return 75 F, wet bulb 63, supply 57.",
  },
  evacuation: {
    where: "Vacuum gauge at the machine, far from the pump, core tools in, hoses short.",
    meter: "Micron gauge; valve off at the core tool, note 0, 2, 5 and 10 minutes.",
    caution: "No power to the compressor and no insulation test while it is under vacuum.",
    good: "Under 500 micron and levels off under 1000. Levels at 1000 to 4600: wet. Straight: leak.",
    source: `${practice}; codes differ in their limit.`,
    send: "Text: isolated at 360 microns, then 390 after ten minutes.",
  },
  pressure_test: {
    where: "Whole circuit, gauge and a thermometer on the pipe, not in the sun.",
    meter: "Nitrogen through a regulator with relief; wait 20 minutes, then note both.",
    caution: "Dry nitrogen only, never oxygen or air, never over the plate's test pressure.",
    good: "Drop no more than the colder pipe explains: about 1 psi a degree F at 550 psi.",
    source: "Gas law; ASHRAE 15 for gas and pressure.",
    send: "Text: nitrogen 500 psi, pipe 81 F; next morning 481, pipe 62.",
  },
  charge: {
    where: "Scale under the cylinder, level and out of the wind.",
    meter: "Scale zeroed with hoses on; blends leave the cylinder as liquid.",
    caution: `${gas} Recover before you open; never vent.`,
    good: "Plate charge plus what the line set asks for beyond the length the plate covers.",
    source: "Unit nameplate and its line table.",
    send: "Text: recovered 7 lb 6 oz, charged 8 lb, cylinder 22.",
  },
  gas_heat: gasHeatHow,
  line_charge: lineChargeHow,
  leak_rate: {
    where: "The circuit's log: full charge, each weight added and its date.",
    meter: "Weights from the scale, not from memory.",
    caution: "The office decides which rule holds; the bot only does the arithmetic.",
    good: "Nothing added between planned services.",
    source: "40 CFR 82.157 and 84.106 where they apply.",
    send: "Text: added 3 lb today, last addition 2 March, full charge 21 lb.",
  },
  room_concentration: {
    where: "Smallest room that a coil or line of the circuit serves: floor area and height.",
    meter: "Tape; total charge of that one circuit.",
    caution: "A leak in a small closed room takes the air: ventilate, then enter with a monitor.",
    good: "Total charge over room volume under the limit for that gas.",
    source: "ASHRAE 15 and 34, or the local code.",
    send: "Text: smallest room 10 by 12 by 9 ft, circuit holds 21 lb.",
  },
  commissioning: {
    where: "At the machine once it runs settled, covers back on where the readings allow.",
    meter: "Gauges, two clamps for pipe and air temperature, amp clamp, volt meter.",
    caution: "Live panel: the meter's own leads only, gloves on, one hand.",
    good: "Hold, vacuum, weight, volts, amps, both pressures, both lines and the air all stand in it.",
    source: "Common practice; the maker's start-up form goes before it.",
    send: "Text: 459 460 458 V, 14.1 14.3 14.0 A, suction 131 at 56 F, head 329 at 92 F.",
  },
  box_temperature: {
    where: "Air at the return of the coil, and between packs of the product, door shut.",
    meter: "Thermometer that was checked in ice water; ten minutes in place.",
    caution: "Ice on a freezer's floor: look down first, and tell somebody that you are inside.",
    good: "Inside the limits that the company's list sets for this box.",
    source: "The company's own list; cold holding commonly 41 F (Food Code 3-501.16).",
    send: "Text: box 38 F, product 40 F.",
  },
  places: {
    where: "Every room of the system: which are out, which are fine.",
    meter: "The room controller, and a hand at the grille.",
    caution: "Ask who is working in the ceiling before you switch anything.",
    good: "The rooms that are out share one box or pipe that no fine room uses.",
    source: "The system's own tree.",
    send: "Text: 12, 14, 15 warm, 11 and 13 fine.",
  },
  history: {
    where: "The job list of this unit.",
    meter: "Ask: history.",
    caution: "A part put in last time can be the fault this time.",
    good: "The same test at the same voltage and temperature, so that it compares.",
    source: "This company's own record.",
    send: "Text: history, or what did we do here last time.",
  },
};

/** The six lines of a check. */
export function howToLines(check: CheckName): readonly string[] {
  const { where, meter, caution, good, source, send } = howTo[check];
  // whoever asked for another check sees at once which one this is
  const name = sentenceCase(wordsOfCheck(check).name);
  return [`${name}: ${where}`, meter, caution, `Good: ${good}`, `Source: ${source}`, send];
}
