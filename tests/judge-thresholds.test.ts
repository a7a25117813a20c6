import { describe, expect, test } from "vitest";
import { judge } from "../src/judge/judge.ts";
import type { CaseNote, EquipmentFacts, Reading } from "../src/model.ts";
import { celFromFahrenheit, kelvinPerFahrenheit } from "../src/physics/constants.ts";
import { saturationPa } from "../src/physics/saturation-pressure.ts";
import { targetSuperheatK } from "../src/physics/target-superheat.ts";
import { targetSplitK } from "../src/physics/temperature-split.ts";
import { amps, caseOf, did, megs, note, pairs, r, volts } from "./case-builder.ts";
import { judgedNotes } from "./support/judged-notes.ts";
import { climb, type Stairs } from "./support/stairs.ts";

/** Where the verdict on a figure turns: each figure just before and just behind, with its source. */

const practice = "common practice";
const motor: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };
const drive: EquipmentFacts = { drive: "inverter", phases: 3, supply_V: 460, rla_A: 20 };
const split: EquipmentFacts = {
  ...{ drive: "line", refrigerant: "R-410A", metering: "expansion_valve", mode: "cooling" },
};
const orifice: EquipmentFacts = { ...split, metering: "fixed_orifice" };
const rack: EquipmentFacts = {
  ...{ refrigerant: "R-404A", charge_kg: 100, leak_regime: "us_84" },
};

const one = (...parts: readonly (Reading | readonly Reading[])[]): readonly CaseNote[] => [
  note("", ...parts.map((part) => ("quantity" in part ? [part] : part))),
];
const running = (...values: readonly number[]): readonly CaseNote[] =>
  one(amps(values, { state: "running" }));
const F = kelvinPerFahrenheit;
const cel = celFromFahrenheit;
/** The third of three lines, the others at 460 V, at so many percent of unbalance by NEMA's definition. */
const lineAt = (percent: number): number => (200 * 460 - 920 * percent) / (200 + percent);
const output = (values: readonly number[]): Reading[] =>
  (["U", "V", "W"] as const).map((name, at) =>
    r("current", values[at] ?? 0, { points: [name], state: "running" }),
  );
const outputVolts = (values: readonly number[]): Reading[] =>
  values.map((value, at) =>
    r("voltage", value, {
      points:
        [
          ["U", "V"],
          ["V", "W"],
          ["U", "W"],
        ][at] ?? [],
      at: "drive_output",
    }),
  );

/** Where R-410A boils, or condenses midway between bubble and dew, at so many F. */
const pressure = (fahrenheit: number, at: "suction" | "discharge"): Reading =>
  r("pressure", saturationPa("R-410A", "dew", cel(fahrenheit)) ?? 0, { at, reference: "absolute" });

const stairs: readonly Stairs[] = [
  {
    what: "volts between lines",
    check: "supply",
    source: "NEMA MG 1 12.44: 10 percent about the plate's 460 V",
    equipment: motor,
    notes: (value) => one(volts([value, value, value])),
    steps: [
      [413, "good, bad supply:low"],
      [414, "good, good supply:sound"],
      [506, "good, good supply:sound"],
      [507, "good, bad supply:high"],
    ],
  },
  {
    what: "unbalance between lines",
    check: "supply",
    source: "NEMA MG 1 14.36: over 5 percent a motor is not run; 2 percent common in cooling",
    equipment: motor,
    notes: (value) => one(volts([460, 460, lineAt(value)])),
    steps: [
      [1.99, "good, good supply:sound"],
      [2.01, "watch supply:unbalanced_slightly, good"],
      [2.99, "watch supply:unbalanced_slightly, good"],
      [3.01, "watch supply:unbalanced, good"],
      [4.99, "watch supply:unbalanced, good"],
      [5.01, "bad supply:unbalanced, good"],
    ],
  },
  {
    what: "one of three lines",
    check: "supply",
    source: practice,
    equipment: motor,
    notes: (value) => one(volts([460, 460, value])),
    steps: [
      [0, "bad supply:phase_lost"],
      [344, "bad supply:phase_lost"],
      [346, "bad supply:unbalanced, bad supply:low"],
    ],
  },
  {
    what: "one of three lines to ground",
    check: "supply",
    source: practice,
    equipment: motor,
    notes: (value) =>
      one([277, 277, value].map((v, at) => r("voltage", v, { points: [`L${at + 1}`, "ground"] }))),
    steps: [
      [0, "bad supply:phase_lost"],
      [110, "bad supply:phase_lost"],
      [112, "good supply:sound"],
      [480, "good supply:sound"],
    ],
  },
  {
    what: "one of two legs to their neutral, the other at 120 V",
    check: "supply",
    source:
      "ANSI C84.1 range A, utilization: 108 to 126 V a leg; a delta's high leg is sqrt(3) times",
    equipment: { drive: "line", phases: 1, supply_V: 230 },
    notes: (value) =>
      one([120, value].map((v, at) => r("voltage", v, { points: [`L${at + 1}`, "N"] }))),
    steps: [
      [102.8, "bad joint:connection_loose"],
      [102.9, "good supply:sound"],
      [139.9, "good supply:sound"],
      [140.1, "bad joint:connection_loose"],
      [191.9, "bad joint:connection_loose"],
      [192.1, "good supply:sound"],
      [221.9, "good supply:sound"],
      [222.1, "bad joint:connection_loose"],
    ],
  },
  {
    what: "running amps against the plate",
    check: "running_current",
    source: practice,
    equipment: motor,
    notes: (value) => running(value, value, value),
    steps: [
      [0, "watch current:none"],
      [0.59, "watch current:none"],
      [0.61, "watch current:light"],
      [10.9, "watch current:light"],
      [11, "good current:usual"],
      [22, "good current:usual"],
      [22.1, "watch current:high"],
      [25.6, "watch current:high"],
      [25.7, "bad current:high"],
    ],
  },
  {
    what: "running amps against the most that the plate allows",
    check: "running_current",
    source: "NFPA 70 440.2 (maximum operating current)",
    equipment: { ...motor, moc_A: 20, rla_A: 15 },
    notes: (value) => running(value, value, value),
    steps: [
      [20, "good current:usual"],
      [20.1, "watch current:high"],
      [25.7, "bad current:high"],
    ],
  },
  {
    what: "running amps of a drive, which may idle along",
    check: "running_current",
    source: practice,
    equipment: drive,
    notes: (value) => running(value, value, value),
    steps: [
      [0.5, "watch current:none"],
      [1, "good current:usual"],
      [22.1, "watch current:high"],
    ],
  },
  {
    what: "one of three running lines",
    check: "running_current",
    source: "first principles: a line with less than 6 percent is dead",
    equipment: motor,
    notes: (value) => running(20, 20, value),
    steps: [
      [0, "bad current:line_dead"],
      [1.2, "bad current:line_dead"],
      [1.3, "watch current:unbalanced"],
      // 10 percent off the mean
      [17.1, "watch current:unbalanced"],
      [17.2, "good current:usual"],
    ],
  },
  {
    what: "one of three lines into a drive",
    check: "running_current",
    source: "rectifier theory: its input is uneven by nature, and dead on one line by a fault",
    equipment: drive,
    notes: (value) =>
      one(
        ["L1", "L2", "L3"].map((name, at) =>
          r("current", at === 2 ? value : 15, { points: [name], state: "running" }),
        ),
      ),
    steps: [
      [0.89, "bad current:input_dead"],
      [1, "good"],
      [15, "good current:usual"],
    ],
  },
  {
    what: "one of three lines out of a drive",
    check: "running_current",
    source: "power-electronics literature; 10 percent common practice",
    equipment: drive,
    notes: (value) => one(output([15, 15, value])),
    steps: [
      [12.8, "bad output:unbalanced"],
      [13, "good output:balanced"],
    ],
  },
  {
    what: "volts of one of three pairs out of a drive",
    check: "bridge",
    source: practice,
    equipment: drive,
    notes: (value) => one(outputVolts([200, 200, value])),
    steps: [
      [170, "bad output:unbalanced"],
      [172, "watch output:unbalanced"],
      [188, "watch output:unbalanced"],
      [189, "good output:balanced"],
    ],
  },
  {
    what: "uneven amps with uneven volts of 2.5 percent",
    check: "running_current",
    source: "NEMA MG 1 14.36: the current's unbalance is 6 to 10 times that of the voltage",
    equipment: motor,
    notes: (value) => [
      note(
        "",
        volts([460, 460, lineAt(2.5)]),
        amps([20, 20, (200 * 20 - 40 * value) / (200 + value)], { state: "running" }),
      ),
    ],
    steps: [
      [24, "watch current:unbalanced_by_supply"],
      [32, "watch current:unbalanced_by_supply"],
      [33, "watch current:unbalanced_by_motor"],
    ],
  },
  {
    what: "a run capacitor of 40 uF",
    check: "capacitor",
    source: "6 percent: the label's usual tolerance; the rest common practice",
    equipment: motor,
    notes: (value) => [
      note(
        "run capacitor",
        r("capacitance", 40e-6, { rating: "nominal" }),
        r("capacitance", value * 1e-6),
      ),
    ],
    steps: [
      [1.1, "bad capacitor:open"],
      [3.9, "bad capacitor:open"],
      [4.1, "bad capacitor:low"],
      [34.3, "bad capacitor:low"],
      [34.5, "bad capacitor:weak"],
      [37.5, "bad capacitor:weak"],
      [37.7, "good capacitor:good"],
      [42.3, "good capacitor:good"],
      [42.5, "watch capacitor:high"],
    ],
  },
  {
    what: "volts of a 24 V circuit",
    check: "control_voltage",
    source: practice,
    equipment: split,
    notes: (value) => one(r("voltage", value, { at: "control" })),
    steps: [
      [0, "bad control:lost"],
      [4.9, "bad control:lost"],
      [5, "bad control:low"],
      [19.9, "bad control:low"],
      [20, "good control:present"],
      [30, "good control:present"],
      [30.1, "watch control:present"],
    ],
  },
  {
    what: "superheat behind a valve, as said",
    check: "superheat",
    source: practice,
    equipment: split,
    notes: (value) => one(r("superheat", value * F)),
    steps: [
      [2.9, "bad superheat:none"],
      [3.1, "watch superheat:low"],
      [4.9, "watch superheat:low"],
      [5.1, "good superheat:usual"],
      [24.9, "good superheat:usual"],
      [25.1, "bad superheat:high"],
    ],
  },
  {
    what: "superheat behind an orifice, as said, with no weather to go by",
    check: "superheat",
    source: practice,
    equipment: orifice,
    notes: (value) => one(r("superheat", value * F)),
    steps: [
      [2.9, "bad superheat:none"],
      [3.1, "watch superheat:low"],
      [5.1, "good superheat:usual"],
      [29.9, "good superheat:usual"],
      [30.1, "bad superheat:high"],
    ],
  },
  {
    what: "subcooling, as said",
    check: "subcooling",
    source: practice,
    equipment: split,
    notes: (value) => one(r("subcooling", value * F)),
    steps: [
      [2.9, "bad subcooling:none"],
      [3.1, "watch subcooling:low"],
      [5.9, "watch subcooling:low"],
      [6.1, "good subcooling:usual"],
      [17.9, "good subcooling:usual"],
      [18.1, "bad subcooling:high"],
    ],
  },
  {
    what: "subcooling against the plate's 10 F",
    check: "subcooling",
    source: "ANSI/ACCA 5 QI 2015, from memory: 3 F about the plate's figure",
    equipment: split,
    notes: (value) =>
      one(r("subcooling", 10 * F, { rating: "expected" }), r("subcooling", value * F)),
    steps: [
      [6.9, "bad subcooling:none"],
      [7.1, "good subcooling:usual"],
      [12.9, "good subcooling:usual"],
      [13.1, "bad subcooling:high"],
    ],
  },
  {
    what: "the discharge line",
    check: "discharge_temperature",
    source: practice,
    equipment: split,
    notes: (value) => one(r("temperature", cel(value), { at: "discharge" })),
    steps: [
      [31, "unknown sensor:off"],
      [33, "good discharge:usual"],
      [199, "good discharge:usual"],
      [201, "watch discharge:usual"],
      [224, "watch discharge:usual"],
      [226, "bad discharge:hot"],
    ],
  },
  {
    what: "the air's split, no wet bulb read",
    check: "temperature_split",
    source: practice,
    equipment: split,
    notes: (value) =>
      one(
        r("temperature", cel(76), { at: "return_air" }),
        r("temperature", cel(76 - value), { at: "supply_air" }),
      ),
    steps: [
      [13.9, "watch split:low"],
      [14.1, "good split:usual"],
      [24.9, "good split:usual"],
      [25.1, "watch split:high"],
    ],
  },
  {
    what: "the least megohm to ground, winding at 40 C",
    check: "insulation",
    source: "IEEE 43-2013 (5 megohm at 40 C, random-wound, under 1 kV); tiers common practice",
    equipment: motor,
    notes: (value) =>
      one(megs([value * 1e6, value * 1e6, value * 1e6], { test_voltage: 500, temperature: 40 })),
    steps: [
      [0.49, "bad insulation:ground_fault"],
      [0.51, "bad insulation:below_floors"],
      [1.99, "bad insulation:below_floors"],
      [2, "bad insulation:very_low, watch insulation:very_low"],
      [4.99, "bad insulation:very_low, watch insulation:very_low"],
      [5, "watch insulation:very_low, watch insulation:very_low"],
      [19.9, "watch insulation:very_low, watch insulation:very_low"],
      [20, "watch insulation:low, watch insulation:low"],
      [49.9, "watch insulation:low, watch insulation:low"],
      [50, "good insulation:low, watch insulation:low"],
      [99.9, "good insulation:low, watch insulation:low"],
      [100, "good insulation:sound"],
    ],
  },
  {
    what: "volts on a bus, the drive running on 480 V",
    check: "dc_bus",
    source: "rectifier theory: 1.35 times the line loaded; bands common practice",
    equipment: drive,
    notes: (value) =>
      one(
        volts([480, 480, 480]),
        r("voltage", value, { at: "dc_bus", kind: "dc", state: "running" }),
      ),
    steps: [
      [49, "bad bus:dead"],
      [51, "bad bus:low"],
      [599, "bad bus:low"],
      [601, "good bus:sound"],
      [710, "good bus:sound"],
      [711, "watch bus:high"],
    ],
  },
  {
    what: "volts on a bus, the drive standing",
    check: "dc_bus",
    source: "rectifier theory: 1.414 times the line idle; 1.30 common practice",
    equipment: drive,
    notes: (value) =>
      one(volts([480, 480, 480]), r("voltage", value, { at: "dc_bus", kind: "dc" })),
    steps: [
      [623, "bad bus:low"],
      [625, "good bus:sound"],
    ],
  },
  {
    what: "volts on a bus with the power off",
    check: "dc_bus",
    source: "29 CFR 1910.333(a)(1): 50 V",
    equipment: drive,
    notes: (value) => [
      note("", did("power_off")),
      note("", r("voltage", value, { at: "dc_bus", kind: "dc" })),
    ],
    steps: [
      [49.9, "good"],
      [50, "bad"],
      [600, "bad"],
    ],
  },
  {
    what: "the absorption ratio",
    check: "polarization",
    source: practice,
    equipment: motor,
    notes: (value) => one(r("absorption_ratio", value)),
    steps: [
      [0.99, "watch polarization:falls"],
      [1.1, "unknown"],
      [1.39, "unknown"],
      [1.41, "good"],
      [1.61, "good"],
    ],
  },
  {
    what: "the index of an open motor",
    check: "polarization",
    source: "IEEE 43-2013 12.2: 2 for class F",
    equipment: { ...motor, supply_V: 2300 },
    notes: (value) => one(r("polarization_index", value)),
    steps: [
      [0.99, "watch polarization:falls"],
      [1.99, "watch polarization:falls"],
      [2, "good"],
    ],
  },
  {
    what: "the index of a hermetic motor, which decides nothing",
    check: "polarization",
    source: "IEEE 43-2013: may not apply to small random-wound motors",
    equipment: motor,
    notes: (value) => one(r("polarization_index", value)),
    steps: [
      [0.99, "watch polarization:falls"],
      [1.01, "unknown"],
      [4, "unknown"],
    ],
  },
  {
    what: "volts while it starts, 460 at rest",
    check: "supply",
    source: practice,
    equipment: { ...motor, phases: 1 },
    notes: (value) => [
      note("", r("voltage", 460)),
      note("", r("voltage", value, { state: "start", stat: "minimum" })),
    ],
    steps: [
      [390, "good supply:sound, bad supply:sags"],
      [392, "good supply:sound, watch supply:sags"],
      [413, "good supply:sound, watch supply:sags"],
      [415, "good supply:sound, good supply:holds_at_start"],
    ],
  },
  {
    what: "a start of a motor with 130 A locked, the peak alone",
    check: "start_current",
    source: practice,
    equipment: motor,
    notes: (value) => one(r("current", value, { state: "start", stat: "peak" })),
    steps: [
      [59, "unknown start:low"],
      [61, "good start:line_start"],
      [97, "good start:line_start"],
      [98, "unknown start:at_locked_unknown"],
      [169, "unknown start:at_locked_unknown"],
      [170, "watch start:above_locked"],
    ],
  },
  {
    what: "seconds at locked-rotor current",
    check: "start_current",
    source: practice,
    equipment: motor,
    notes: (value) => one(r("current", 128, { state: "start", for_s: value })),
    steps: [
      [1.4, "good start:line_start"],
      [1.5, "bad start:held_locked"],
    ],
  },
  {
    what: "amps behind a start at locked-rotor current",
    check: "start_current",
    source: practice,
    equipment: motor,
    notes: (value) =>
      one(r("current", 120, { state: "start" }), r("current", value, { state: "running" })),
    steps: [
      [65, "good start:line_start"],
      [67, "unknown start:at_locked_unknown"],
    ],
  },
  {
    what: "one of three windings, the others 8 ohm",
    check: "winding",
    source: "maintenance literature: 5 percent to investigate; the rest common practice",
    equipment: motor,
    notes: (value) => one(pairs([8, 8, value])),
    steps: [
      [2.39, "bad winding:shorted"],
      [2.41, "bad winding:one_low"],
      [6.6, "bad winding:one_low"],
      [6.68, "watch winding:one_low"],
      [7.4, "watch winding:one_low"],
      [7.43, "good winding:balanced"],
      [8.61, "good winding:balanced"],
      [8.62, "watch winding:one_high"],
      [9.5, "watch winding:one_high"],
      [9.6, "bad winding:one_high"],
      [11.9, "bad winding:one_high"],
      // a star with one phase shorted reads 2 to 1 to 1 (first principles)
      [12.1, "bad winding:two_low"],
    ],
  },
  {
    what: "run to start, common to run 0.6 and to start 1.8 ohm",
    check: "winding",
    source: "circuit of joined windings; allowance common practice",
    equipment: { ...motor, phases: 1 },
    notes: (value) =>
      one(
        (
          [
            ["C", "R", 0.6],
            ["C", "S", 1.8],
            ["R", "S", value],
          ] as const
        ).map(([a, b, ohm]) => r("winding_resistance", ohm, { points: [a, b] })),
      ),
    steps: [
      [0.09, "bad winding:shorted"],
      [0.11, "bad winding:one_low"],
      [2.04, "bad winding:one_low"],
      [2.06, "good winding:balanced"],
      [2.74, "good winding:balanced"],
      [2.76, "watch winding:one_high"],
    ],
  },
  {
    what: "one of six diodes of a rectifier, the others 0.45 V",
    check: "bridge",
    source: "service literature; a spread of 0.06 V common practice",
    equipment: drive,
    notes: (value) => [
      note(
        "motor leads off",
        ["L1", "L2", "L3"].flatMap((leg) =>
          ["DC+", "DC-"].map((rail) =>
            r("diode_drop", leg === "L1" && rail === "DC+" ? value : 0.45, { points: [leg, rail] }),
          ),
        ),
      ),
    ],
    steps: [
      [0.098, "bad rectifier:shorted"],
      [0.102, "watch rectifier:odd"],
      [0.388, "watch rectifier:odd"],
      [0.392, "good rectifier:sound"],
      [0.508, "good rectifier:sound"],
      [0.512, "watch rectifier:odd"],
      [0.9, "watch rectifier:odd"],
      [2, "watch rectifier:odd"],
    ],
  },
  {
    what: "all six diodes of a rectifier alike",
    check: "bridge",
    source: "service literature: 0.3 to 0.7 V forward; 0.25 V common practice",
    equipment: drive,
    notes: (value) => [
      note(
        "motor leads off",
        ["L1", "L2", "L3"].flatMap((leg) =>
          ["DC+", "DC-"].map((rail) => r("diode_drop", value, { points: [leg, rail] })),
        ),
      ),
    ],
    steps: [
      [0.098, "bad rectifier:shorted"],
      [0.245, "watch rectifier:odd"],
      [0.255, "good rectifier:sound"],
    ],
  },
  {
    what: "one of two drops of an input bridge without its rail, the other 0.45 V: from 0.75 V two in a row",
    check: "bridge",
    source: practice,
    equipment: drive,
    notes: (value) => [note("input diodes", r("diode_drop", 0.45), r("diode_drop", value))],
    steps: [
      [0.745, "watch rectifier:odd"],
      [0.755, "good rectifier:sound"],
    ],
  },
  {
    what: "volts from a rail to a leg in a note of diodes",
    check: "bridge",
    source: practice,
    equipment: drive,
    notes: (value) => [note("diodes of the input", r("voltage", value, { points: ["L1", "DC+"] }))],
    steps: [
      [1.49, "good rectifier:sound"],
      [1.51, ""],
    ],
  },
  {
    what: "amps of a fan with 2 A on its plate",
    check: "fan",
    source: practice,
    equipment: motor,
    notes: (value) => [
      note("condenser fan", r("current", 2, { rating: "FLA" }), r("current", value)),
    ],
    steps: [
      [0.098, "watch fan:no_current"],
      [0.102, "good fan:turns"],
      [2.29, "good fan:turns"],
      [2.31, "watch fan:high_current"],
      [3.19, "watch fan:high_current"],
      [3.21, "bad fan:overloaded"],
    ],
  },
  {
    what: "megohms of a cable by itself",
    check: "insulation",
    source: "IEC 60364-6 and ANSI/NETA ATS table 100.1, from memory",
    equipment: motor,
    notes: (value) => one(r("insulation_resistance", value * 1e6, { subject: "cable" })),
    steps: [
      [0.99, "bad feed:grounded"],
      [1.01, "watch"],
      [99, "watch"],
      [101, "good"],
    ],
  },
  {
    what: "a capacitor that nobody knows the size of, uF",
    check: "capacitor",
    source: practice,
    equipment: motor,
    notes: (value) => [note("run capacitor", r("capacitance", value * 1e-6))],
    steps: [
      [1.19, "bad capacitor:open"],
      [1.21, "unknown"],
    ],
  },
  {
    what: "microfarads between two pins of a compressor, which are a winding's ohms",
    check: "capacitor",
    source: practice,
    equipment: motor,
    notes: (value) => [note("capacitor", r("capacitance", value * 1e-6, { points: ["C", "R"] }))],
    steps: [
      [9.9, ""],
      [10.1, "unknown"],
    ],
  },
  {
    what: "peak at an inverter's start over 20 A rated",
    check: "start_current",
    source: "drive literature: 1 to 1.5 times the running maximum",
    equipment: drive,
    notes: (value) => one(r("current", value, { state: "start", stat: "peak" })),
    steps: [
      [19.9, "good ramp:usual"],
      [20.1, "watch ramp:high"],
      [29.9, "watch ramp:high"],
      [30.1, "bad ramp:limit"],
    ],
  },
  {
    what: "peak of a start over 20 A rated, no locked-rotor amps known",
    check: "start_current",
    source: practice,
    equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20 },
    notes: (value) => one(r("current", value, { state: "start" })),
    steps: [
      [59, "unknown start:low"],
      [61, "good start:line_start"],
      [79, "good start:line_start"],
      [81, "unknown start:at_locked_unknown"],
    ],
  },
  {
    what: "amps told in the breath of a start of 120 A, 130 A locked",
    check: "start_current",
    source: practice,
    equipment: motor,
    notes: (value) =>
      one(r("current", 120, { state: "start" }), r("current", value, { state: "start" })),
    steps: [
      [41, "good start:line_start"],
      [43, "unknown start:at_locked_unknown"],
    ],
  },
  {
    what: "head over suction at a start that held at locked-rotor current",
    check: "start_current",
    source: practice,
    equipment: motor,
    notes: (value) =>
      one(
        r("current", 120, { state: "start", for_s: 4 }),
        r("pressure", 1e6, { at: "suction" }),
        r("pressure", 1e6 * value, { at: "discharge" }),
      ),
    steps: [
      [1.07, "bad start:held_locked start_pressures:pressures_equal"],
      [1.09, "bad start:held_locked"],
      [1.49, "bad start:held_locked"],
      [1.51, "bad start:held_locked start_pressures:pressures_unequal"],
    ],
  },
  {
    what: "shell of a motor with its common pin open, C",
    check: "winding",
    source: practice,
    equipment: { drive: "line", phases: 1, supply_V: 230 },
    notes: (value) =>
      one(
        r("winding_resistance", "OL", { points: ["C", "R"] }),
        r("winding_resistance", "OL", { points: ["C", "S"] }),
        r("winding_resistance", 3.6, { points: ["R", "S"] }),
        r("temperature", value, { at: "shell" }),
      ),
    steps: [
      [54.5, "bad winding:open"],
      [55.5, "watch winding:overload_open"],
    ],
  },
  {
    what: "three figures without a unit beside 460 V",
    check: "supply",
    source: practice,
    equipment: motor,
    notes: (value) => [
      note("", volts([460, 460, 460])),
      note("", volts([value, value, value], { assumed: ["unit"] })),
    ],
    steps: [
      [183, "good, good supply:sound, unknown"],
      [185, "good, good supply:sound, good, bad supply:low"],
    ],
  },
  {
    what: "percent that three figures of 150 without a unit differ, beside 460 V",
    check: "supply",
    source: practice,
    equipment: motor,
    notes: (value) => [
      note("", volts([460, 460, 460])),
      note(
        "",
        volts([150, 150, (300 * (1 + value / 100)) / (2 - value / 100)], { assumed: ["unit"] }),
      ),
    ],
    steps: [
      [4.9, "good, good supply:sound, unknown"],
      [5.1, "good, good supply:sound, bad supply:unbalanced, bad supply:low"],
    ],
  },
  {
    what: "volts beside three figures of 150 without a unit",
    check: "supply",
    source: practice,
    equipment: motor,
    notes: (value) => [
      note("", volts([value, value, value])),
      note("", volts([150, 150, 150], { assumed: ["unit"] })),
    ],
    steps: [
      [367, "good, bad supply:low, good, bad supply:low"],
      [369, "good, bad supply:low, unknown"],
    ],
  },
  {
    what: "one of three lines in a later note, dead in the first, the others 460 V",
    check: "supply",
    source: practice,
    equipment: motor,
    notes: (value) => [note("", volts([460, 460, 0])), note("", volts([460, 460, value]))],
    steps: [
      [344, "bad supply:phase_lost, bad supply:phase_lost"],
      [346, "good supply:phase_lost, bad supply:unbalanced, bad supply:low"],
    ],
  },
  {
    what: "run to start, common to run 2 and to start 6 ohm",
    check: "winding",
    source: "series circuit; 12 percent common practice",
    equipment: { drive: "line", phases: 1, supply_V: 230 },
    notes: (value) =>
      one(
        r("winding_resistance", 2, { points: ["C", "R"] }),
        r("winding_resistance", 6, { points: ["C", "S"] }),
        r("winding_resistance", value, { points: ["R", "S"] }),
      ),
    steps: [
      [7.03, "bad winding:one_low"],
      [7.05, "good winding:balanced"],
      [8.95, "good winding:balanced"],
      [8.97, "watch winding:one_high"],
    ],
  },
  {
    what: "seconds of the second reading of a polarization index",
    check: "polarization",
    source: "IEEE 43-2013, 5: ten minutes, a watch's tolerance common practice",
    equipment: motor,
    notes: (value) =>
      one(
        r("insulation_resistance", 2e8, { after_s: 60 }),
        r("insulation_resistance", 3e8, { after_s: value }),
      ),
    steps: [
      [538, ""],
      [542, "unknown"],
      [658, "unknown"],
      [662, ""],
    ],
  },
  {
    what: "seconds of the first reading of a polarization index",
    check: "polarization",
    source: "IEEE 43-2013, 5: one minute, a watch's tolerance common practice",
    equipment: motor,
    notes: (value) =>
      one(
        r("insulation_resistance", 2e8, { after_s: value }),
        r("insulation_resistance", 3e8, { after_s: 600 }),
      ),
    steps: [
      [49, ""],
      [51, "unknown"],
      [74, "unknown"],
      [76, ""],
    ],
  },
  {
    what: "seconds of the first reading of an absorption ratio",
    check: "polarization",
    source: "convention: 60 s over 30 s, a watch's tolerance common practice",
    equipment: motor,
    notes: (value) =>
      one(
        r("insulation_resistance", 2e8, { after_s: value }),
        r("insulation_resistance", 3e8, { after_s: 60 }),
      ),
    steps: [
      [24, ""],
      [26, "good"],
      [34, "good"],
      [36, ""],
    ],
  },
  {
    what: "volts on the bus of a boosting input of 230 V, single phase",
    check: "dc_bus",
    source: "rectifier theory: 340 to 410 V on 208 to 240 V",
    equipment: { drive: "inverter", phases: 1, supply_V: 230, rla_A: 20 },
    notes: (value) =>
      one(
        r("voltage", value, { at: "dc_bus", kind: "dc" }),
        r("voltage", 230, { points: ["L1", "L2"] }),
      ),
    steps: [
      [408, "good bus:sound"],
      [412, "watch bus:high"],
    ],
  },
  {
    what: "microns at the end of a stand of ten minutes",
    check: "evacuation",
    source: "500 micron: common practice",
    equipment: {},
    notes: (value) => one(r("vacuum", value * 0.133322, { for_s: 600 })),
    steps: [
      [499, "good evacuation:tight"],
      [501, "unknown"],
    ],
  },
  {
    what: "seconds that 450 micron stood",
    check: "evacuation",
    source: "five minutes: common practice",
    equipment: {},
    notes: (value) => one(r("vacuum", 60, { for_s: value })),
    steps: [
      [299, "unknown"],
      [300, "good evacuation:tight"],
    ],
  },
  ...(
    [
      ["boiling with no air read", "suction", split, [33.8, 34.2, 51.8, 52.2]],
      ["condensing with no air read", "discharge", split, [71.8, 72.2, 128.8, 129.2]],
      [
        "boiling in a cooler with no air read",
        "suction",
        { ...split, kind: "walk-in cooler" },
        [11.8, 12.2, 33.8, 34.2],
      ],
    ] as const
  ).map(([what, at, equipment, [under, from, to, over]]): Stairs => {
    const side = at === "suction" ? "suction" : "head";
    return {
      what: `${what}, F`,
      ...{ check: "saturation", source: practice, equipment },
      notes: (value) => one(pressure(value, at)),
      steps: [
        [under, `watch ${side}:low`],
        [from, `good ${side}:usual`],
        [to, `good ${side}:usual`],
        [over, `watch ${side}:high`],
      ],
    };
  }),
  {
    what: "boiling under a return air of 75 F",
    check: "saturation",
    source: practice,
    equipment: split,
    notes: (value) =>
      one(r("temperature", cel(75), { at: "return_air" }), pressure(75 - value, "suction")),
    steps: [
      [19.8, "watch suction:high"],
      [20.2, "good suction:usual"],
      [42.8, "good suction:usual"],
      [43.2, "watch suction:low"],
    ],
  },
  {
    what: "condensing over an outdoor air of 90 F",
    check: "saturation",
    source: practice,
    equipment: split,
    notes: (value) =>
      one(r("temperature", cel(90), { at: "outdoor_air" }), pressure(90 + value, "discharge")),
    steps: [
      [9.3, "watch head:low"],
      [9.7, "good head:usual"],
      [31.8, "good head:usual"],
      [32.2, "watch head:high"],
    ],
  },
  {
    what: "the compression ratio",
    check: "compression",
    source: "definition; bands common practice",
    equipment: split,
    notes: (value) =>
      one(
        r("pressure", 9e5, { at: "suction", reference: "absolute" }),
        r("pressure", 9e5 * value, { at: "discharge", reference: "absolute" }),
      ),
    steps: [
      [1.29, "watch ratio:flat"],
      [1.31, "watch ratio:low"],
      [1.89, "watch ratio:low"],
      [1.91, "good ratio:usual"],
      [4.9, "good ratio:usual"],
      [5.1, "watch ratio:high"],
    ],
  },
  {
    what: "superheat by pressure and line",
    check: "superheat",
    source: "dew point: ASHRAE Handbook Refrigeration; band common practice",
    equipment: split,
    notes: (value) =>
      one(pressure(40, "suction"), r("temperature", cel(40 + value), { at: "suction" })),
    steps: [
      [4.8, "watch superheat:low"],
      [5.2, "good superheat:usual"],
      [24.8, "good superheat:usual"],
      [25.2, "bad superheat:high"],
    ],
  },
  {
    what: "superheat off the target of an orifice by so many F",
    check: "superheat",
    source: "target rule; tolerance ANSI/ACCA 5 QI 2015, from memory: 5 F",
    equipment: orifice,
    notes: (value) =>
      one(
        r("wet_bulb_temperature", cel(67), { at: "return_air" }),
        r("temperature", cel(85), { at: "outdoor_air" }),
        r("superheat", (targetSuperheatK(cel(67), cel(85)) ?? 0) + value * F),
      ),
    steps: [
      [-5.1, "watch superheat:low"],
      [-4.9, "good superheat:usual"],
      [4.9, "good superheat:usual"],
      [5.1, "bad superheat:high"],
    ],
  },
  {
    what: "the air's split off its target by so many F",
    check: "temperature_split",
    source: "California Title 24 RA3.2, from memory: 4 F about the target",
    equipment: split,
    notes: (value) => {
      const targetK = targetSplitK(cel(76), cel(63)) ?? 0;
      return one(
        r("temperature", cel(76), { at: "return_air" }),
        r("wet_bulb_temperature", cel(63), { at: "return_air" }),
        r("temperature", cel(76) - targetK - value * F, { at: "supply_air" }),
      );
    },
    steps: [
      [-4.1, "watch split:low"],
      [-3.9, "good split:usual"],
      [3.9, "good split:usual"],
      [4.1, "watch split:high"],
    ],
  },
  ...(
    [
      ["comfort_cooling", 10],
      ["commercial_refrigeration", 20],
      ["industrial_process", 30],
    ] as const
  ).map(
    ([use, percent]): Stairs => ({
      what: `the leak rate a year, ${use.replaceAll("_", " ")}`,
      check: "leak_rate",
      source: "40 CFR 82.157(c)(2), 84.106(c)(2): 10, 20 and 30 percent; annualized by 82.152",
      equipment: { ...rack, use, last_addition: "2025-05-12" },
      notes: (value) => [
        {
          ...note(
            `added ${value} kg, last addition was 365 days ago`,
            r("mass", value, { action: "charged" }),
          ),
          at: "2026-05-12T09:00:00Z",
        },
      ],
      steps: [
        // over the lowest of them it leaks, whatever its use allows
        [10, "good leak_rate:under added:again"],
        [10.1, `${percent > 10 ? "good" : "bad"} leak_rate:over added:again`],
        [percent, `good leak_rate:${percent > 10 ? "over" : "under"} added:again`],
        [percent + 0.1, "bad leak_rate:over added:again"],
      ],
    }),
  ),
];

climb(stairs);

/** The same for figures whose words place them: what, the check, the note, and the verdicts. */
const worded: readonly {
  readonly what: string;
  readonly check: string;
  readonly source: string;
  readonly note: (value: string) => string;
  readonly steps: readonly (readonly [string, string])[];
}[] = [
  {
    what: "volts behind a contactor that is in",
    check: "contactor",
    source: practice,
    note: (value) => `contactor pulled in, line side 480, load side ${value}`,
    steps: [
      ["336", "bad contactor:pole_open"],
      ["337", "bad contactor:drop"],
      ["475", "bad contactor:drop"],
      ["476", "watch contactor:passes"],
      ["479", "watch contactor:passes"],
      ["479.5", "good contactor:passes"],
    ],
  },
  {
    what: "volts across a contactor that is in",
    check: "contactor",
    source: practice,
    note: (value) => `contactor pulled in, ${value} V across the contactor`,
    steps: [
      ["0.9", "good contactor:passes"],
      ["1", "watch contactor:passes"],
      ["1.9", "watch contactor:passes"],
      ["2", "watch contactor:drop"],
      ["4.9", "watch contactor:drop"],
      ["5", "bad contactor:drop"],
      ["100", "bad contactor:pole_open"],
    ],
  },
  {
    what: "volts across one of three poles, 0.21 V across the others: ten times as much and 2 V is a burnt one",
    check: "contactor",
    source: practice,
    note: (value) => `contactor pulled in, drop across its poles 0.19, 0.19, ${value} volts`,
    steps: [
      ["1.95", "watch contactor:passes"],
      ["2.05", "bad contactor:drop"],
    ],
  },
  {
    what: "volts across one of three poles, 0.3 V across the others",
    check: "contactor",
    source: practice,
    note: (value) => `contactor pulled in, drop across its poles 0.3, 0.3, ${value} volts`,
    steps: [
      ["2.9", "watch contactor:drop"],
      ["3.1", "bad contactor:drop"],
    ],
  },
  {
    what: "ohms of a contactor's coil",
    check: "contactor",
    source: practice,
    note: (value) => `contactor coil ${value} ohm`,
    steps: [
      ["0.9", "bad contactor:coil_open"],
      ["1.1", "good contactor:coil_sound"],
      ["250", "good contactor:coil_sound"],
      ["OL", "bad contactor:coil_open"],
    ],
  },
  {
    what: "volts of a board's logic supply of 5 V",
    check: "control_voltage",
    source: practice,
    note: (value) => `5 v supply on the board reads ${value} V dc`,
    steps: [
      ["2.95", "bad control:logic_lost"],
      ["3.05", "good"],
    ],
  },
  {
    what: "volts of a pair at one unit, 14 V at another",
    check: "communication",
    source: practice,
    note: (value) => `comm pair 14 V dc at the outdoor and ${value} V dc at indoor 4`,
    steps: [
      ["8.3", "bad communication:dead_part"],
      ["8.5", "good communication:alive"],
    ],
  },
  {
    what: "volts on the coil of a contactor that stays out",
    check: "contactor",
    source: practice,
    note: (value) => `contactor not pulling in, ${value} V on its coil`,
    steps: [
      ["17.8", "watch contacts:contactor_not_pulling_in"],
      ["18.2", "bad contactor:no_pull_in, watch contacts:contactor_not_pulling_in"],
    ],
  },
  {
    what: "ohms of what may be a contactor's coil",
    check: "contactor",
    source: practice,
    note: (value) => `contactor coil ${value} ohm`,
    steps: [
      ["2980", "good contactor:coil_sound"],
      ["3020", ""],
    ],
  },
  {
    what: "volts behind a contactor with its coil fed",
    check: "contactor",
    source: practice,
    note: (value) => `24 V on the contactor coil, line side 480, load side ${value}`,
    steps: [
      ["14.8", "bad contactor:no_pull_in"],
      ["15.2", ""],
    ],
  },
  {
    what: "kilohms of a sensor whose table says 10",
    check: "sensor",
    source: practice,
    note: (value) => `suction sensor should be 10k at 77 F, it reads ${value}k`,
    steps: [
      ["8.79", "bad sensor:off"],
      ["8.81", "good sensor:sound"],
      ["11.19", "good sensor:sound"],
      ["11.21", "bad sensor:off"],
    ],
  },
  {
    what: "ohms of a shorted sensor",
    check: "sensor",
    source: practice,
    note: (value) => `suction sensor should be 10k at 77 F, it reads ${value} ohm`,
    steps: [
      ["99", "bad sensor:open"],
      ["101", "bad sensor:off"],
    ],
  },
  {
    what: "kilohms of a sensor beside two of 10",
    check: "sensor",
    source: practice,
    note: (value) => `suction sensor ${value}k, the other two sensors are both 10k`,
    steps: [
      ["6.9", "bad sensor:off"],
      ["7.1", "unknown, unknown"],
    ],
  },
  {
    what: "nitrogen at 500 psig the day after, as warm as before",
    check: "pressure_test",
    source: "real gas law; 2 psi, two gauge steps or half a percent common practice",
    note: (value) =>
      `nitrogen 500 psig with pipes at 70 F, next day ${value} psig with pipes at 70 F`,
    steps: [
      ["495", "bad hold:drops"],
      ["496", "watch"],
      ["497", "watch"],
      ["498", "good hold:holds"],
      ["505", "good hold:holds"],
    ],
  },
  {
    what: "nitrogen at 500 psig the day after, nobody knows how warm",
    check: "pressure_test",
    source: "real gas law: without temperatures no one can say",
    note: (value) => `nitrogen 500 psig last night, ${value} psig this morning`,
    steps: [
      ["490", "unknown"],
      ["497", "unknown"],
      ["498", "good hold:holds"],
      ["502", "good hold:holds"],
      ["503", "unknown"],
    ],
  },
];

describe.each(worded)("$what ($source)", ({ check, note: words, steps }) => {
  test.each(steps)("at %s: %s", (value, verdict) => {
    const found = judgedNotes(motor, [words(value)]).findings.filter((one) => one.check === check);
    expect(found.map(({ level, signs = [] }) => [level, ...signs].join(" ")).join(", ")).toBe(
      verdict,
    );
  });
});

test("every verdict says what it stands on, in few words", () => {
  for (const row of stairs) {
    for (const [value] of row.steps) {
      const { findings } = judge(caseOf(row.equipment, row.notes(value)));
      for (const { says, brief = "", basis, level, missing, values } of findings) {
        expect(`${says} ${brief} ${missing}`).not.toMatch(/NaN|Infinity|undefined [a-z]/);
        expect(brief.split(" ").length).toBeLessThanOrEqual(12);
        expect(basis).not.toBe("");
        if (level === "unknown") expect([says, missing ?? ""]).not.toContain("");
        for (const figure of Object.values(values)) expect(Number.isFinite(figure)).toBe(true);
      }
    }
  }
});

/** Readings of one compressor, by name. */
const of = (subject: string, notes: readonly CaseNote[]): readonly CaseNote[] =>
  notes.map((one) => ({
    ...one,
    readings: one.readings.map((reading) => ({ ...reading, subject })),
  }));

test("of two compressors each has its own verdict, whatever the other reads", () => {
  const compressors = stairs.filter(
    ({ check, what, equipment }) =>
      ["insulation", "running_current", "winding", "start_current"].includes(check) &&
      equipment.drive === "line" &&
      !/volts/.test(what),
  );
  expect(compressors.length).toBeGreaterThan(6);
  for (const row of compressors) {
    const verdicts = (notes: readonly CaseNote[], about: string) =>
      judge(caseOf(row.equipment, notes))
        .findings.filter((found) => found.check === row.check && found.about === about)
        .map(({ level, signs = [], values }) => [level, signs, values]);
    for (const [value] of row.steps) {
      const own = of("compressor 2", row.notes(value));
      for (const [other] of [row.steps[0] ?? [0], row.steps.at(-1) ?? [0]]) {
        const beside = of("compressor 1", row.notes(other));
        const both = verdicts([...beside, ...own], "compressor 2");
        expect([row.what, value, both]).toEqual([row.what, value, verdicts(own, "compressor 2")]);
      }
    }
  }
});

test("nothing that nobody measured is judged: the plate's figures, an earlier day's, a doubted one", () => {
  for (const row of stairs) {
    const value = row.steps.at(-1)?.[0] ?? 1;
    for (const more of [{ rating: "nominal" }, { rating: "setpoint" }] as const) {
      const told = row.notes(value).map((one) => ({
        ...one,
        text: "",
        readings: one.readings.map((reading) => ({ ...reading, ...more })),
      }));
      const { findings, diagnosis } = judge(caseOf(row.equipment, told));
      expect([row.what, findings.filter(({ level }) => level === "bad")]).toEqual([row.what, []]);
      expect(diagnosis[0]?.probability ?? 0).toBeLessThan(0.9);
    }
  }
});
