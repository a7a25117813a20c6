import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import {
  capacitanceErrorPercent,
  capacitanceUnderLoadF,
  toleranceLimitsF,
} from "../src/physics/capacitor.ts";
import {
  conductorA,
  disconnectA,
  inputPowerW,
  maximumContinuousA,
  ratedLoadA,
  shortCircuitDeviceA,
} from "../src/physics/compressor-ratings.ts";
import { bleedDownS, busEnergyJ, idleBusV, loadedBusV } from "../src/physics/dc-bus.ts";
import { fullLoadA } from "../src/physics/full-load-current.ts";
import {
  absorptionBand,
  at20CelFromAt40Cel,
  dischargeTimeS,
  halvingFactor,
  leakageA,
  minimumInsulationOhm,
  minimumPolarizationIndex,
  parallelOhm,
  testVoltageRangeV,
  thermosettingFactor,
  trendBand,
  type WindingKind,
} from "../src/physics/insulation.ts";
import {
  codeLetterFromKvaPerHp,
  kvaPerHpFromLockedRotorA,
  kvaPerHpOfLetter,
  lockedOnTwoLinesA,
  lockedRotorA,
  lockedRotorAAtVolts,
  runningOnTwoLinesA,
  startingTorqueRatio,
  worstCrestA,
} from "../src/physics/locked-rotor.ts";
import { isWithin, nameplateRange, systemRanges } from "../src/physics/supply.ts";
import {
  deratingFactor,
  explainedCurrentUnbalance,
  extraHeatPercent,
  unbalancePercent,
  voltageUnbalanceFactorPercent,
} from "../src/physics/unbalance.ts";
import {
  digitErrorPercent,
  runToStartOhm,
  windingCelFromOhm,
  windingOhmAt,
} from "../src/physics/winding.ts";

type Row = Readonly<Record<string, string>>;
type Answer = number | string | undefined;

const num = (row: Row, column: string): number => Number(row[column]);
const list = (row: Row, column: string): number[] => (row[column] ?? "").split(" ").map(Number);

function end<T>(range: { from: T; to?: T } | undefined, row: Row): T | undefined {
  return row.end === "to" ? range?.to : range?.from;
}

function kindOf(row: Row): WindingKind {
  return row.kind === "form_wound" || row.kind === "old_or_field" ? row.kind : "random_wound";
}

function divisorOf(row: Row): 1.4 | 1.44 | 1.56 {
  return row.divisor === "1.4" ? 1.4 : row.divisor === "1.44" ? 1.44 : 1.56;
}

function at40Cel(row: Row): Answer {
  const cel = num(row, "windingCel");
  const factor = row.rule === "halving" ? halvingFactor(cel) : thermosettingFactor(cel);
  return factor === undefined ? undefined : factor * num(row, "readOhm");
}

function lockedByLetter(row: Row): Answer {
  const kva = end(kvaPerHpOfLetter(row.letter ?? ""), row);
  const motor = {
    phases: num(row, "phases"),
    horsepower: num(row, "horsepower"),
    volts: num(row, "volts"),
  };
  return kva === undefined ? undefined : lockedRotorA(kva, motor);
}

function unbalanceFactor(row: Row): Answer {
  const [a, b, c] = list(row, "values");
  return a === undefined || b === undefined || c === undefined
    ? undefined
    : voltageUnbalanceFactorPercent([a, b, c]);
}

function sized(row: Row): Answer {
  const ratedA = num(row, "ratedA");
  if (row.what === "conductor") return conductorA(ratedA);
  if (row.what === "disconnect") return disconnectA(ratedA);
  const device = shortCircuitDeviceA(ratedA);
  return row.what === "device" ? device.usual : device.most;
}

function systemRange(row: Row): Answer {
  const system = systemRanges[row.system ?? ""];
  const range = Object.entries(system ?? {}).find(([name]) => name === row.row)?.[1];
  if (range === undefined) return undefined;
  return isWithin(num(row, "volts"), range) ? "within" : "outside";
}

/** One entry for each file of fixtures/physics that this side owns. */
const formulas: Readonly<Record<string, (row: Row) => Answer>> = {
  "insulation-halving-factor": (row) => halvingFactor(num(row, "windingCel")),
  "insulation-thermosetting-factor": (row) => thermosettingFactor(num(row, "windingCel")),
  "insulation-at-40-cel": at40Cel,
  "insulation-minimum": (row) => minimumInsulationOhm(kindOf(row), num(row, "ratedV")),
  "insulation-test-voltage": (row) => end(testVoltageRangeV(num(row, "ratedV")), row),
  "polarization-index-minimum": (row) => minimumPolarizationIndex(row.windingClass ?? ""),
  "absorption-band": (row) => absorptionBand(num(row, "ratio")),
  "parallel-resistance": (row) => parallelOhm(list(row, "ohms")),
  "leakage-current": (row) => leakageA(num(row, "testV"), num(row, "ohm")),
  "insulation-at-20-cel": (row) => at20CelFromAt40Cel(num(row, "at40CelOhm")),
  "insulation-discharge-time": (row) => dischargeTimeS(num(row, "testedForS")),
  "insulation-trend-band": (row) => trendBand(num(row, "ratio")),
  unbalance: (row) => unbalancePercent(list(row, "values")),
  "voltage-unbalance-factor": unbalanceFactor,
  "derating-factor": (row) => deratingFactor(num(row, "unbalancePercent")),
  "extra-heat": (row) => extraHeatPercent(num(row, "unbalancePercent")),
  "explained-current-unbalance": (row) =>
    end(explainedCurrentUnbalance(num(row, "unbalancePercent")), row),
  "locked-rotor-current": lockedByLetter,
  "code-letter": (row) => codeLetterFromKvaPerHp(num(row, "kvaPerHp")),
  "kva-per-hp": (row) =>
    kvaPerHpFromLockedRotorA(num(row, "amps"), {
      phases: num(row, "phases"),
      horsepower: num(row, "horsepower"),
      volts: num(row, "volts"),
    }),
  "locked-rotor-at-volts": (row) =>
    lockedRotorAAtVolts(num(row, "ratedA"), num(row, "ratedV"), num(row, "actualV")),
  "starting-torque": (row) => startingTorqueRatio(num(row, "ratedV"), num(row, "actualV")),
  "worst-crest": (row) => worstCrestA(num(row, "lockedA")),
  "locked-on-two-lines": (row) => lockedOnTwoLinesA(num(row, "lockedA")),
  "running-on-two-lines": (row) => runningOnTwoLinesA(num(row, "beforeA")),
  "rated-load-from-maximum": (row) => ratedLoadA(num(row, "maximumA"), divisorOf(row)),
  "maximum-from-rated-load": (row) => maximumContinuousA(num(row, "ratedA"), divisorOf(row)),
  "article-440-sizes": sized,
  "input-power": (row) =>
    inputPowerW(num(row, "volts"), num(row, "amps"), {
      phases: row.phases === "3" ? 3 : 1,
      factor: num(row, "factor"),
    }),
  "full-load-current": (row) =>
    fullLoadA(num(row, "horsepower"), num(row, "volts"), row.phases === "3" ? 3 : 1),
  "winding-at-temperature": (row) =>
    windingOhmAt(num(row, "ohm"), num(row, "fromCel"), num(row, "toCel")),
  "winding-temperature": (row) =>
    windingCelFromOhm(num(row, "hotOhm"), num(row, "coldOhm"), num(row, "coldCel")),
  "run-to-start": (row) => runToStartOhm(num(row, "commonRunOhm"), num(row, "commonStartOhm")),
  "digit-error": (row) => digitErrorPercent(num(row, "resolutionOhm"), num(row, "ohm")),
  "capacitance-under-load": (row) =>
    capacitanceUnderLoadF(num(row, "amps"), num(row, "volts"), num(row, "hertz")),
  "capacitance-error": (row) => capacitanceErrorPercent(num(row, "measuredF"), num(row, "ratedF")),
  "capacitor-limits": (row) => {
    const limits = toleranceLimitsF(num(row, "ratedF"), num(row, "percent"));
    return row.end === "low" ? limits.low : limits.high;
  },
  "idle-bus": (row) => idleBusV(num(row, "lineV")),
  "loaded-bus": (row) => loadedBusV(num(row, "lineV")),
  "bleed-down": (row) =>
    bleedDownS(num(row, "fromV"), num(row, "toV"), {
      ohm: num(row, "ohm"),
      farad: num(row, "farad"),
    }),
  "bus-energy": (row) => busEnergyJ(num(row, "farad"), num(row, "volts")),
  "nameplate-range": (row) => end(nameplateRange(num(row, "lowV"), num(row, "highV")), row),
  "system-range": systemRange,
};

const folder = new URL("../fixtures/physics/", import.meta.url);

function rowsOf(name: string): Row[] {
  return parse(readFileSync(new URL(`${name}.csv`, folder), "utf8"), { columns: true });
}

function check(row: Row, answer: Answer): void {
  const where = JSON.stringify(row);
  expect(row.source, where).not.toBe("");
  if (row.expected === "none") {
    expect(answer, where).toBeUndefined();
    return;
  }
  if (row.tolerance === "") {
    expect(answer, where).toBe(row.expected);
    return;
  }
  expect(typeof answer, where).toBe("number");
  const off = Math.abs(Number(answer) - Number(row.expected));
  expect(off, where).toBeLessThanOrEqual(Number(row.tolerance) + 1e-12);
}

describe("electrical formulas against their sources", () => {
  const names = Object.keys(formulas);
  for (const name of names)
    it(`${name} meets each row's figure within its tolerance`, () => {
      for (const row of rowsOf(name)) check(row, formulas[name]?.(row));
    });

  it("covers at least 25 formulas with at least 120 checks", () => {
    const checks = names.reduce((sum, name) => sum + rowsOf(name).length, 0);
    expect(names.length).toBeGreaterThanOrEqual(25);
    expect(checks).toBeGreaterThanOrEqual(120);
  });
});
