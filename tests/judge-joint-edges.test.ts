import type { CaseNote, EquipmentFacts, Reading } from "../src/model.ts";
import { celFromFahrenheit as cel, kilogramPerPound } from "../src/physics/constants.ts";
import { amps, note, pairs, r } from "./case-builder.ts";
import { climb, type Stairs } from "./support/stairs.ts";

/** Where verdicts on joints, pumps, windings by four wires, fuses, probes and gauges turn, each side of it. */

const motor: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };
const pump: EquipmentFacts = { kind: "pump", drive: "line", phases: 3, supply_V: 460 };
const practice = "common practice";
const said = (text: string, ...readings: readonly Reading[]): CaseNote => note(text, [...readings]);
const at = (c: number): Reading => r("temperature", c);
/** The third of three ohms, the others at 8, at so many percent from the mean. */
const ohmAt = (percent: number): number => (8 * (200 + 2 * percent)) / (200 - percent);

const spanOf = (text: string, figure: string): readonly [number, number] => {
  const from = text.indexOf(figure);
  return [from, from + figure.length];
};

const stairs: readonly Stairs[] = [
  {
    what: "one lug of three, the others at 36 C, Cel",
    check: "supply",
    source: "ANSI/NETA MTS table 100.18: over 15 K between alike parts (from memory)",
    equipment: motor,
    notes: (value) => [said("lugs by camera", at(36), at(value), at(36))],
    steps: [
      [50.9, ""],
      [51.1, "bad joint:burnt_connection"],
    ],
  },
  {
    what: "amps of a pump with 10 A on its plate",
    check: "running_current",
    source: "NEMA MG 1 12.51: service factor 1.15 (from memory); 1.3 common practice",
    equipment: { ...pump, rla_A: 10 },
    notes: (value) => [note("", amps([value, value, value], { state: "running" }))],
    steps: [
      [11.4, "good"],
      [11.6, "watch"],
      [12.9, "watch"],
      [13.1, "bad"],
    ],
  },
  {
    what: "one of three amps of a pump, the others 10 A",
    check: "running_current",
    source: "maintenance literature: above 10 percent look at supply or motor",
    equipment: { ...pump, rla_A: 20 },
    notes: (value) => [note("", amps([10, 10, value], { state: "running" }))],
    steps: [
      [11.5, "good"],
      [11.7, "watch"],
    ],
  },
  {
    what: "windings by four wires, percent from the mean",
    check: "winding",
    source:
      "maintenance literature on unbalanced current: 2 percent by a low-resistance meter, 5 by hand",
    equipment: motor,
    notes: (value) => [note("4 wire meter", pairs([8, 8, Number(ohmAt(value).toFixed(4))]))],
    steps: [
      [1.9, "good winding:balanced"],
      [2.1, "watch"],
      [4.9, "watch"],
      [5.1, "watch winding:one_high"],
    ],
  },
  {
    what: "windings by a hand meter, percent from the mean",
    check: "winding",
    source: "maintenance literature on unbalanced current: 5 percent by a hand meter",
    equipment: motor,
    notes: (value) => [note("", pairs([8, 8, Number(ohmAt(value).toFixed(4))]))],
    steps: [
      [4.9, "good winding:balanced"],
      [5.1, "watch winding:one_high"],
      [11.9, "watch winding:one_high"],
      [12.1, "bad winding:one_high"],
    ],
  },
  {
    what: "highest of three lines to ground, the others 120 V: a delta's high leg is 208",
    check: "supply",
    source: "delta geometry: sqrt(3) times, from 1.6 to 1.85",
    equipment: { ...motor, supply_V: 230 },
    notes: (value) => [
      note(
        "",
        [120, value, 120].map((v, i) => r("voltage", v, { points: [`L${i + 1}`, "ground"] })),
      ),
    ],
    steps: [
      [191, "good supply:sound"],
      [208, "good supply:sound"],
      [223, "good supply:sound"],
    ],
  },
  {
    what: "a display's liquid pipe against the clamp on the gas pipe at 21 C, Cel",
    check: "sensor",
    source: practice,
    equipment: { kind: "outdoor unit", drive: "inverter", mode: "cooling" },
    notes: (value) => [
      said(
        "display says liquid and gas",
        r("temperature", value, { at: "liquid" }),
        r("temperature", 6, { at: "suction" }),
      ),
      said(
        "my clamps",
        r("temperature", 6, { at: "liquid" }),
        r("temperature", 21, { at: "suction" }),
      ),
    ],
    steps: [
      [17.9, ""],
      [18.1, "bad sensor:off"],
      [23.9, "bad sensor:off"],
      [24.1, ""],
    ],
  },
  {
    what: "pounds of a full charge that was emptied by half and filled again",
    check: "leak_rate",
    source: "40 CFR 84.106(a): under 15 lb no federal rule",
    equipment: { refrigerant: "R-410A", leak_regime: "us_84", last_addition: "2026-02-12" },
    notes: (value) => [
      {
        ...said(
          `plate ${value} lb, recovered ${value / 2} lb, charged ${value} lb`,
          r("mass", value * kilogramPerPound, { rating: "nameplate_charge" }),
          r("mass", (value / 2) * kilogramPerPound, { action: "recovered" }),
          r("mass", value * kilogramPerPound, { action: "charged" }),
        ),
        at: "2026-05-12T09:00:00Z",
      },
    ],
    steps: [
      [14.9, ""],
      [15.1, "bad leak_rate:over added:again"],
    ],
  },
  {
    what: "a second set of gauges on a head of 400 psi, where the first said so",
    check: "subcooling",
    source: practice,
    equipment: {
      ...{ drive: "line", refrigerant: "R-410A", metering: "expansion_valve", mode: "cooling" },
    },
    notes: (value) => [
      said(
        "first gauge set, then second set on the same ports",
        r("pressure", 2_757_903, { at: "discharge" }),
        r("pressure", value * 6_894.757, { at: "discharge" }),
        r("temperature", cel(95), { at: "liquid" }),
      ),
    ],
    steps: [
      [370, "good subcooling:usual"],
      [366, ""],
    ],
  },
  {
    what: "volts behind the fuses, 480 ahead of them",
    check: "supply",
    source:
      "circuit reasoning: what hangs on two live lines feeds about half back; 0.6 common practice",
    equipment: motor,
    notes: (value) => {
      const text = `line side of the fuses 480, load side of the fuses ${value}`;
      const read = (volt: number): Reading =>
        r("voltage", volt, { points: ["L1", "L3"], spans: [spanOf(text, String(volt))] });
      return [said(text, read(480), read(value))];
    },
    steps: [
      [287, "good, bad supply:phase_lost"],
      [289, "good"],
    ],
  },
  {
    what: "amps of no said moment, 130 A locked: from 0.55 of it a start's",
    check: "start_current",
    source: practice,
    equipment: { drive: "line", phases: 3, supply_V: 460, lra_A: 130 },
    notes: (value) => [note("", amps([value]))],
    steps: [
      [71.4, ""],
      [71.6, "good start:line_start"],
    ],
  },
  {
    what: "amps of no said moment, 20 A rated and nothing locked known: from three times a start's",
    check: "start_current",
    source: practice,
    equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20 },
    notes: (value) => [note("", amps([value]))],
    steps: [
      [59.9, ""],
      [60.1, "good start:line_start"],
    ],
  },
  {
    what: "amps that may be a signal's or a flame's",
    check: "running_current",
    source: practice,
    equipment: motor,
    notes: (value) => [note("", amps([value], { state: "running" }))],
    steps: [
      [0.004, ""],
      [0.006, "watch current:none"],
    ],
  },
  {
    what: "amps that may be the line's 230 V, 15 A rated: eight times and within 12 percent of the plate's volts",
    check: "start_current",
    source: practice,
    equipment: { drive: "line", phases: 1, supply_V: 230, rla_A: 15 },
    notes: (value) => [note("", amps([value]))],
    steps: [
      [202, "unknown start:at_locked_unknown"],
      [203, ""],
      [257, ""],
      [258, "unknown start:at_locked_unknown"],
    ],
  },
  {
    what: "inches of vacuum that a circuit of 250 lb of R-22 was recovered to, 10 asked",
    check: "charge",
    source: "40 CFR 82.156(a) table 1: 10 inHg from 200 lb on; a gauge in inches shows half of one",
    equipment: { refrigerant: "R-22", charge_kg: 250 * kilogramPerPound },
    notes: (value) => [
      said("recovered down to", r("pressure", -3_386.39 * value, { reference: "gauge" })),
    ],
    steps: [
      [9.4, "watch"],
      [9.6, "good"],
    ],
  },
  {
    what: "pounds of R-22 that a circuit recovered to 5 inches holds: 0 inches under 200 lb, 10 from there",
    check: "charge",
    source: "40 CFR 82.156(a) table 1, high-pressure class",
    equipment: { refrigerant: "R-22" },
    notes: (value) => [
      said(
        `recovered down to 5, plate ${value}`,
        r("pressure", -3_386.39 * 5, { reference: "gauge" }),
        r("mass", value * kilogramPerPound, { rating: "nameplate_charge" }),
      ),
    ],
    steps: [
      [199, "good"],
      [201, "watch"],
    ],
  },
  {
    what: "the same of R-134a, recovered to 12 inches: 10 under 200 lb, 15 from there",
    check: "charge",
    source: "40 CFR 82.156(a) table 1, medium-pressure class",
    equipment: { refrigerant: "R-134a" },
    notes: (value) => [
      said(
        `recovered down to 12, plate ${value}`,
        r("pressure", -3_386.39 * 12, { reference: "gauge" }),
        r("mass", value * kilogramPerPound, { rating: "nameplate_charge" }),
      ),
    ],
    steps: [
      [199, "good"],
      [201, "watch"],
    ],
  },
];

climb(stairs);
