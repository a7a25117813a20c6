import type { EquipmentFacts } from "../src/model.ts";
import { refrigerantNamed } from "../src/physics/refrigerant.ts";
import { saturationPa } from "../src/physics/saturation-pressure.ts";
import type { FaultName } from "../src/vocabulary.ts";
import { amps, type Part, r, seen } from "./case-builder.ts";
import { randomFrom } from "./support/random.ts";

/**
 * Machines with one fault, as a second opinion on the diagnosis: what each look would measure is
 * written here from the published signatures (NEMA MG 1, IEEE 43, rectifier theory, the rule tables
 * of Rossi & Braun 1997, Chen & Braun 2001 and NIST SP 1087), with noise, apart from the tables in
 * `src/judge`.
 */

export interface Noise {
  /** 0 to 1 */
  readonly next: () => number;
  /** about 1 with a spread */
  readonly near: (spread: number) => number;
  readonly chance: (share: number) => boolean;
  readonly between: (from: number, to: number) => number;
}

/** A small generator with a well mixed start: the same run each time. */
export function noiseFrom(seed: number): Noise {
  const next = randomFrom(seed);
  const near = (spread: number) => 1 + spread * (next() + next() + next() - 1.5);
  return {
    next,
    near,
    chance: (share) => next() < share,
    between: (from, to) => from + (to - from) * next(),
  };
}

export type Look =
  | "eyes"
  | "supply"
  | "control"
  | "insulation"
  | "winding"
  | "bus"
  | "diodes"
  | "output"
  | "start"
  | "running"
  | "capacitor"
  | "contactor"
  | "fan"
  | "gas_low"
  | "gas_high"
  | "air";

export interface Machine {
  readonly facts: EquipmentFacts;
  readonly noise: Noise;
}

export interface Simulated {
  readonly fault: FaultName;
  readonly facts: EquipmentFacts;
  /** relative share of calls */
  readonly share: number;
  /** what each look measures; a look that is not named shows a sound machine */
  readonly looks: Partial<Record<Look, (machine: Machine) => readonly Part[]>>;
}

const line3: EquipmentFacts = {
  kind: "rooftop unit",
  drive: "line",
  phases: 3,
  supply_V: 460,
  rla_A: 20,
  lra_A: 130,
  refrigerant: "R-410A",
  metering: "expansion_valve",
  mode: "cooling",
};
const line1: EquipmentFacts = {
  ...line3,
  phases: 1,
  supply_V: 230,
  rla_A: 16,
  lra_A: 92,
  kind: "split system",
};
const inverter: EquipmentFacts = {
  kind: "outdoor unit",
  drive: "inverter",
  phases: 3,
  supply_V: 460,
  rla_A: 20,
};

// ---------------------------------------------------------------- what a sound machine shows

const lineNames = [
  ["L1", "L2"],
  ["L2", "L3"],
  ["L1", "L3"],
] as const;

function lines(values: readonly number[]): Part[] {
  if (values.length === 1) return [r("voltage", values[0] ?? 0, { at: "supply" })];
  return values.map((one, at) => r("voltage", one, { points: lineNames[at] ?? [] }));
}

const supplyAt =
  (share: number, uneven = 0) =>
  ({ facts, noise }: Machine): Part[] => {
    const volts = (facts.supply_V ?? 460) * share;
    if (facts.phases === 1) return lines([Math.round(volts * noise.near(0.015))]);
    return lines([
      Math.round(volts * (1 + uneven) * noise.near(0.004)),
      Math.round(volts * noise.near(0.004)),
      Math.round(volts * (1 - uneven) * noise.near(0.004)),
    ]);
  };

const insulationAt =
  (fromOhm: number, toOhm: number) =>
  ({ noise }: Machine): Part[] => {
    const ohm = Math.exp(noise.between(Math.log(fromOhm), Math.log(toOhm)));
    return [1, 2, 3].map((lead) =>
      r("insulation_resistance", ohm * noise.near(0.06), {
        points: [`lead ${lead}`, "ground"],
        test_voltage: 500,
      }),
    );
  };

const pairNames = [
  ["T1", "T2"],
  ["T2", "T3"],
  ["T1", "T3"],
] as const;

function pairsOf(values: readonly (number | "OL")[]): Part[] {
  return values.map((one, at) =>
    r("winding_resistance", one === "OL" ? one : Number(one.toFixed(2)), {
      points: pairNames[at] ?? [],
      figure: { number: one === "OL" ? "OL" : one.toFixed(2), unit: "ohm" },
    }),
  );
}

const windingsAt =
  (shares: readonly (number | "OL")[]) =>
  ({ facts, noise }: Machine): Part[] => {
    if (facts.phases === 1) return singlePhase(shares, noise);
    return pairsOf(shares.map((one) => (one === "OL" ? "OL" : 0.62 * one * noise.near(0.006))));
  };

function singlePhase(shares: readonly (number | "OL")[], noise: Noise): Part[] {
  const ohms = [0.7, 2.1, 2.8];
  const names = [
    ["C", "R"],
    ["C", "S"],
    ["R", "S"],
  ] as const;
  return shares.map((one, at) =>
    r(
      "winding_resistance",
      one === "OL" ? one : Number(((ohms[at] ?? 1) * one * noise.near(0.01)).toFixed(2)),
      {
        points: names[at] ?? [],
      },
    ),
  );
}

const busAt =
  (ofLine: number) =>
  ({ facts, noise }: Machine): Part[] => [
    r("voltage", Math.round((facts.supply_V ?? 460) * ofLine * noise.near(0.01)), {
      at: "dc_bus",
      kind: "dc",
    }),
  ];

const legs = ["U", "V", "W"] as const;
const inputs = ["L1", "L2", "L3"] as const;

const diodesAt =
  (bad: { output?: number; rectifier?: number | "OL" } = {}) =>
  ({ noise }: Machine): Part[] => {
    const row = (names: readonly string[], odd: number | "OL" | undefined) =>
      names.map((one, at) =>
        at === 1 && odd !== undefined
          ? r("diode_drop", odd, { points: [one, "DC+"], said: `${one} ${odd} both ways` })
          : r("diode_drop", Number((0.42 * noise.near(0.02)).toFixed(2)), { points: [one, "DC+"] }),
      );
    return [...row(legs, bad.output), ...row(inputs, bad.rectifier)];
  };

const outputAt =
  (odd: number) =>
  ({ noise }: Machine): Part[] =>
    [
      ["U", "V"],
      ["V", "W"],
      ["U", "W"],
    ].map((points, at) =>
      r("voltage", Math.round(180 * (at === 0 ? 1 : odd) * noise.near(0.008)), {
        points,
        at: "drive_output",
      }),
    );

const startOf =
  (share: number, forS: readonly [number, number], remark?: Part) =>
  ({ facts, noise }: Machine): Part[] => [
    ...amps([Math.round((facts.lra_A ?? 130) * share * noise.near(0.04))], {
      state: "start",
      stat: "peak",
      for_s: Number(noise.between(forS[0], forS[1]).toFixed(1)),
    }),
    ...(remark !== undefined && noise.chance(0.7) ? [remark] : []),
  ];

const rampTo =
  (ofRated: number, remark?: Part) =>
  ({ facts, noise }: Machine): Part[] => [
    ...amps([Number(((facts.rla_A ?? 20) * ofRated * noise.near(0.06)).toFixed(1))], {
      state: "start",
      stat: "peak",
    }),
    ...(remark !== undefined && noise.chance(0.7) ? [remark] : []),
  ];

const runningAt =
  (shares: readonly number[]) =>
  ({ facts, noise }: Machine): Part[] => {
    const used = facts.phases === 1 ? shares.slice(0, 1) : shares;
    return amps(
      used.map((one) => Number(((facts.rla_A ?? 20) * one * noise.near(0.02)).toFixed(1))),
      { state: "running" },
    );
  };

const capacitorAt =
  (share: number) =>
  ({ noise }: Machine): Part[] => [
    r("capacitance", 45e-6, { rating: "nominal" }),
    r("capacitance", 45e-6 * share * noise.near(0.015), {}),
  ];

const controlAt =
  (volts: number) =>
  ({ noise }: Machine): Part[] => [
    r("voltage", Number((volts * noise.near(0.03)).toFixed(1)), { at: "control", kind: "ac" }),
  ];

const pressureAt = (cel: number, side: "dew" | "bubble", place: "suction" | "liquid"): Part[] => {
  const gas = refrigerantNamed("R-410A");
  const absolute = gas === undefined ? undefined : saturationPa(gas, side, cel);
  return absolute === undefined ? [] : [r("pressure", absolute - 101325, { at: place })];
};

/** Suction side by evaporating temperature and superheat. */
const lowAt =
  (evaporatingCel: number, superheatK: number) =>
  ({ noise }: Machine): Part[] => {
    const boils = evaporatingCel + noise.between(-1, 1);
    const over = Math.max(0, superheatK + noise.between(-1, 1));
    return [
      ...pressureAt(boils, "dew", "suction"),
      r("temperature", boils + over, { at: "suction" }),
    ];
  };

/** Liquid side by condensing over outdoor air of 31 C, and subcooling. */
const highAt =
  (overAmbientK: number, subcoolingK: number) =>
  ({ noise }: Machine): Part[] => {
    const condenses = 31 + overAmbientK + noise.between(-1, 1);
    const under = Math.max(0, subcoolingK + noise.between(-0.8, 0.8));
    return [
      ...pressureAt(condenses, "bubble", "liquid"),
      r("temperature", condenses - under, { at: "liquid" }),
      r("temperature", 31, { at: "outdoor_air" }),
    ];
  };

const splitAt =
  (kelvin: number, remark?: Part) =>
  ({ noise }: Machine): Part[] => [
    r("temperature", 24, { at: "return_air" }),
    r("temperature", 24 - kelvin * noise.near(0.05), { at: "supply_air" }),
    ...(remark !== undefined && noise.chance(0.6) ? [remark] : []),
  ];

export const soundLooks: Readonly<Record<Look, (machine: Machine) => readonly Part[]>> = {
  eyes: () => [],
  supply: supplyAt(1.01),
  control: controlAt(25),
  insulation: insulationAt(250e6, 3e9),
  winding: windingsAt([1, 1, 1]),
  bus: busAt(1.4),
  diodes: diodesAt(),
  output: outputAt(1),
  start: (machine) =>
    machine.facts.drive === "inverter" ? rampTo(0.7)(machine) : startOf(0.9, [0.2, 0.7])(machine),
  running: runningAt([0.8, 0.81, 0.79]),
  capacitor: capacitorAt(1),
  contactor: ({ noise }) => [
    r("voltage", Number((0.3 * noise.near(0.5)).toFixed(2)), { points: ["L1", "T1"] }),
  ],
  fan: () => [seen("fans_turning")],
  gas_low: lowAt(8, 6),
  gas_high: highAt(13, 6),
  air: splitAt(10.5),
};

// ---------------------------------------------------------------- one fault each

const sometimes =
  (...remarks: readonly (readonly [share: number, part: Part])[]) =>
  ({ noise }: Machine): Part[] =>
    remarks.flatMap(([share, part]) => (noise.chance(share) ? [part] : []));

export const simulatedFaults: readonly Simulated[] = [
  {
    fault: "no_fault",
    facts: line3,
    share: 10,
    looks: { eyes: sometimes([0.3, seen("runs_normally")]) },
  },
  {
    fault: "no_fault",
    facts: inverter,
    share: 5,
    looks: { eyes: sometimes([0.2, seen("runs_normally")]) },
  },
  {
    fault: "compressor_rotor_locked",
    facts: line3,
    share: 3,
    looks: {
      eyes: sometimes([0.5, seen("hums")], [0.4, seen("overload_trips")]),
      start: startOf(0.97, [3, 8], seen("overload_trips")),
      running: () => [],
      gas_low: () => [],
      gas_high: () => [],
    },
  },
  {
    fault: "compressor_rotor_locked",
    facts: inverter,
    share: 2,
    looks: {
      eyes: sometimes([0.5, seen("kicks_without_turning")], [0.5, seen("drive_faults_at_start")]),
      start: rampTo(2.6, seen("kicks_without_turning")),
      output: (machine) => [...outputAt(1)(machine), seen("drive_fine_without_motor")],
      running: () => [],
    },
  },
  {
    fault: "compressor_winding_grounded",
    facts: line3,
    share: 4,
    looks: {
      eyes: sometimes([0.6, seen("breaker_trips")], [0.2, seen("burnt_smell")]),
      insulation: insulationAt(0.005e6, 0.8e6),
      start: () => [seen("breaker_trips")],
      running: () => [],
      gas_low: () => [],
      gas_high: () => [],
    },
  },
  {
    fault: "compressor_winding_shorted",
    facts: line3,
    share: 1.5,
    looks: {
      eyes: sometimes([0.5, seen("breaker_trips")]),
      winding: windingsAt([1, 0.66, 0.98]),
      running: runningAt([1.2, 0.9, 0.88]),
    },
  },
  {
    fault: "compressor_winding_open",
    facts: line3,
    share: 2,
    looks: {
      eyes: sometimes([0.4, seen("hums_on_one_phase")], [0.4, seen("will_not_start")]),
      winding: windingsAt(["OL", "OL", 1]),
      running: runningAt([0, 1.6, 1.6]),
      start: startOf(0.85, [2, 5]),
    },
  },
  {
    fault: "compressor_insulation_degraded",
    facts: line3,
    share: 2,
    looks: { insulation: insulationAt(3e6, 70e6), eyes: sometimes([0.1, seen("acid_found")]) },
  },
  {
    fault: "compressor_overload_open",
    facts: line1,
    share: 2,
    looks: {
      eyes: sometimes([0.8, seen("shell_hot")], [0.4, seen("overload_trips")]),
      winding: windingsAt(["OL", "OL", 1]),
      running: runningAt([0]),
      start: () => [],
      gas_low: () => [],
      gas_high: () => [],
    },
  },
  {
    fault: "compressor_reversed",
    facts: line3,
    share: 0.7,
    looks: {
      eyes: sometimes(
        [0.7, seen("noisy")],
        [0.6, seen("line_work_done")],
        [0.4, seen("no_pumping")],
      ),
      running: runningAt([0.42, 0.43, 0.42]),
      gas_low: lowAt(16, 6),
      gas_high: highAt(2, 2),
    },
  },
  {
    fault: "drive_output_failed",
    facts: inverter,
    share: 3,
    looks: {
      eyes: sometimes([0.5, seen("drive_faults_at_start")]),
      diodes: ({ facts, noise }) =>
        diodesAt(noise.chance(0.65) ? { output: 0.01 } : {})({ facts, noise }),
      output: (machine) => [...outputAt(0.45)(machine), seen("drive_faults_without_motor")],
      start: () => [seen("drive_faults_at_start")],
      running: () => [],
    },
  },
  {
    fault: "drive_rectifier_failed",
    facts: inverter,
    share: 1.5,
    looks: {
      eyes: sometimes([0.4, seen("fuse_blown")]),
      bus: busAt(1.05),
      diodes: ({ facts, noise }) =>
        diodesAt({ rectifier: noise.chance(0.5) ? 0.01 : "OL" })({ facts, noise }),
      running: () => [],
    },
  },
  {
    fault: "supply_phase_lost",
    facts: line3,
    share: 2.5,
    looks: {
      eyes: sometimes([0.4, seen("phase_monitor_open")], [0.3, seen("hums_on_one_phase")]),
      supply: ({ noise }) =>
        lines([462 * noise.near(0.005), 231 * noise.near(0.03), 230 * noise.near(0.03)]),
      running: runningAt([0, 1.4, 1.42]),
      start: startOf(0.86, [2, 6]),
    },
  },
  {
    fault: "supply_voltage_unbalanced",
    facts: line3,
    share: 1.2,
    looks: {
      supply: supplyAt(1, 0.042),
      running: runningAt([1.12, 0.85, 0.7]),
      eyes: sometimes([0.2, seen("overload_trips")]),
    },
  },
  {
    fault: "supply_voltage_low",
    facts: line1,
    share: 1.5,
    looks: {
      supply: supplyAt(0.86),
      running: runningAt([1.12]),
      eyes: sometimes([0.3, seen("overload_trips")], [0.2, seen("contactor_chatters")]),
    },
  },
  {
    fault: "capacitor_failed",
    facts: line1,
    share: 5,
    looks: {
      eyes: sometimes([0.6, seen("hums")], [0.3, seen("overload_trips")]),
      capacitor: ({ facts, noise }) => capacitorAt(noise.between(0.05, 0.85))({ facts, noise }),
      start: startOf(0.95, [2, 6]),
      running: () => [],
    },
  },
  {
    fault: "contactor_failed",
    facts: line3,
    share: 3,
    looks: {
      eyes: sometimes([0.4, seen("contactor_not_pulling_in")], [0.3, seen("contactor_pitted")]),
      contactor: ({ noise }) =>
        noise.chance(0.5)
          ? [r("resistance", "OL", { subject: "contactor coil" })]
          : [r("voltage", Math.round(noise.between(8, 40)), { points: ["L1", "T1"] })],
      running: () => [],
    },
  },
  {
    fault: "control_voltage_lost",
    facts: line3,
    share: 2,
    looks: {
      eyes: sometimes([0.5, seen("unit_dead")], [0.3, seen("fuse_blown")]),
      control: controlAt(0.2),
      running: () => [],
      start: () => [],
    },
  },
  {
    fault: "connection_loose",
    facts: line3,
    share: 2,
    looks: {
      eyes: sometimes([0.7, seen("burnt_connection")]),
      supply: supplyAt(0.99, 0.02),
      running: runningAt([0.98, 0.8, 0.72]),
    },
  },
  {
    fault: "fan_motor_failed",
    facts: line3,
    share: 3,
    looks: {
      eyes: sometimes([0.6, seen("outdoor_fan_not_turning")]),
      fan: () => [seen("outdoor_fan_not_turning"), r("voltage", 461, { subject: "fan 1" })],
      gas_high: highAt(27, 6),
    },
  },
  {
    fault: "flooded_start",
    facts: line3,
    share: 1,
    looks: {
      eyes: sometimes(
        [0.6, seen("crankcase_heater_off")],
        [0.5, seen("oil_foams")],
        [0.5, seen("noisy")],
      ),
    },
  },
  {
    fault: "refrigerant_undercharge",
    facts: line3,
    share: 6,
    looks: {
      eyes: sometimes([0.3, seen("oil_stain")], [0.5, seen("not_cooling")]),
      gas_low: lowAt(-1, 15),
      gas_high: highAt(8, 0.8),
      air: splitAt(7),
      running: runningAt([0.66, 0.67, 0.66]),
    },
  },
  {
    fault: "refrigerant_overcharge",
    facts: line3,
    share: 2,
    looks: { gas_low: lowAt(10, 4), gas_high: highAt(21, 14), running: runningAt([1, 1.01, 0.99]) },
  },
  {
    fault: "condenser_airflow_low",
    facts: line3,
    share: 4,
    looks: {
      eyes: sometimes([0.6, seen("outdoor_coil_dirty")]),
      gas_low: lowAt(11, 5),
      gas_high: highAt(26, 5),
      running: runningAt([1.08, 1.09, 1.07]),
    },
  },
  {
    fault: "evaporator_airflow_low",
    facts: line3,
    share: 5,
    looks: {
      eyes: sometimes([0.5, seen("filter_dirty")], [0.4, seen("ice_on_indoor_coil")]),
      gas_low: lowAt(-4, 2),
      gas_high: highAt(10, 6),
      air: splitAt(15.5, seen("filter_dirty")),
    },
  },
  {
    fault: "liquid_line_restricted",
    facts: line3,
    share: 1.5,
    looks: {
      gas_low: lowAt(-8, 18),
      gas_high: highAt(10, 12),
      air: splitAt(6.5),
      eyes: sometimes([0.3, seen("frost_at_restriction")]),
    },
  },
  {
    fault: "supply_voltage_high",
    facts: line3,
    share: 0.8,
    looks: { supply: supplyAt(1.14), running: runningAt([0.95, 0.96, 0.94]) },
  },
  {
    fault: "start_against_pressure",
    facts: line1,
    share: 1.5,
    looks: {
      eyes: sometimes([0.5, seen("short_cycles")], [0.6, seen("pressures_unequal")]),
      start: startOf(0.95, [2, 5], seen("pressures_unequal")),
    },
  },
  {
    fault: "drive_control_failed",
    facts: inverter,
    share: 1.2,
    looks: {
      eyes: sometimes([0.6, seen("display_dead")]),
      control: () => [r("voltage", 0.3, { kind: "dc", said: "5 V supply 0.3" })],
      output: () => [seen("drive_faults_without_motor")],
      start: () => [],
      running: () => [],
    },
  },
  {
    fault: "sensor_failed",
    facts: line3,
    share: 3,
    looks: { eyes: sometimes([0.7, seen("sensor_reads_wrong")]) },
  },
  {
    fault: "communication_failed",
    facts: inverter,
    share: 2,
    looks: { eyes: sometimes([0.8, seen("communication_lost")]) },
  },
  {
    fault: "control_board_failed",
    facts: line3,
    share: 2,
    looks: {
      eyes: sometimes([0.4, seen("board_burnt")], [0.4, seen("board_suspected")]),
      running: () => [],
      start: () => [],
    },
  },
  {
    fault: "compressor_valves_leaking",
    facts: line3,
    share: 1.5,
    looks: {
      gas_low: lowAt(17, 5),
      gas_high: highAt(4, 3),
      running: runningAt([0.48, 0.49, 0.47]),
      air: splitAt(5),
    },
  },
  {
    fault: "noncondensables",
    facts: line3,
    share: 1,
    looks: {
      gas_low: lowAt(9, 5),
      gas_high: highAt(22, 12),
      running: runningAt([1.05, 1.06, 1.04]),
    },
  },
  {
    fault: "expansion_valve_underfeeding",
    facts: line3,
    share: 1.5,
    looks: { gas_low: lowAt(-6, 16), gas_high: highAt(11, 9), air: splitAt(7) },
  },
  {
    fault: "expansion_valve_overfeeding",
    facts: line3,
    share: 1,
    looks: {
      gas_low: lowAt(12, 0.5),
      gas_high: highAt(13, 5),
      eyes: sometimes([0.4, seen("frost_to_compressor")]),
    },
  },
  {
    fault: "other",
    facts: line3,
    share: 6,
    looks: { eyes: sometimes([0.5, seen("not_cooling")]) },
  },
];

/** What strikes the eye on one machine in eight and has nothing to do with the call. */
const incidentalRemarks = [
  "noisy",
  "vibrates",
  "breaker_trips",
  "shell_hot",
  "contactor_pitted",
  "filter_dirty",
  "outdoor_coil_dirty",
  "short_cycles",
  "fuse_blown",
  "water_inside",
] as const;
const incidentalRemarkShare = 0.12;

/** A second, harmless weakness that one look in twenty-five finds. */
const incidentalLooks: Simulated["looks"] = {
  supply: supplyAt(1, 0.026),
  insulation: insulationAt(30e6, 95e6),
  running: runningAt([1.13, 1.14, 1.12]),
  capacitor: capacitorAt(0.9),
  gas_low: lowAt(6, 9),
  gas_high: highAt(17, 8),
  air: splitAt(8.6),
};
const incidentalLookShare = 0.04;

/** Share of readings that never reach the bot. */
const missing = 0.2;

/** A look at the machine: what is measured there, with incidents, a fifth of it lost. */
export function lookAt(one: Simulated, look: Look, noise: Noise): Part[] {
  const strange = noise.chance(incidentalLookShare) ? incidentalLooks[look] : undefined;
  const makes = one.looks[look] ?? strange ?? soundLooks[look];
  const made = [...makes({ facts: one.facts, noise })];
  if (look === "eyes" && noise.chance(incidentalRemarkShare)) {
    const remark = incidentalRemarks[Math.floor(noise.next() * incidentalRemarks.length)];
    if (remark !== undefined) made.push(seen(remark));
  }
  return made.filter(() => !noise.chance(missing));
}
