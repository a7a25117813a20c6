import { describe, expect, test } from "vitest";
import { pascalPerMicron } from "../src/physics/constants.ts";
import { bleedDownS } from "../src/physics/dc-bus.ts";
import { annualizedLeakPercent, rollingLeakPercent } from "../src/physics/leak-rate.ts";
import { kvaPerHpFromLockedRotorA, startingTorqueRatio } from "../src/physics/locked-rotor.ts";
import { moistAirFromHumidity, moistAirFromWetBulb } from "../src/physics/moist-air.ts";
import { poissonTail } from "../src/physics/poisson-tail.ts";
import { vacuumDecay } from "../src/physics/vacuum-decay.ts";
import { waterBoilingCel, waterVaporPa } from "../src/physics/water-vapor.ts";

/** Both sides of each edge of a formula's range, and what a curve is said to do in figures. */

const microns = (...points: readonly (readonly [seconds: number, micron: number])[]) =>
  points.map(([afterS, micron]) => ({ afterS, absolutePa: micron * pascalPerMicron }));

describe("a standing vacuum", () => {
  /** Source: p = p1 - (p1 - p0) exp(-t/tau), exact. */
  const wet = (seconds: number): number => 1500 - 1100 * Math.exp(-seconds / 400);
  const wetPoints = microns(
    ...Array.from({ length: 21 }, (_, at) => [at * 40, wet(at * 40)] as const),
  );

  test("rises by its whole rise over its whole time, and rests where the exponential does", () => {
    const found = vacuumDecay(wetPoints);
    expect(found?.shape).toBe("wet");
    expect(found?.paPerMin).toBeCloseTo(((wet(800) - 400) * pascalPerMicron) / (800 / 60), 9);
    expect(found?.lastPa).toBeCloseTo(wet(800) * pascalPerMicron, 9);
    // the last slope stands for the middle of its gap, 20 s early: 5 % of what is left to rise
    expect((found?.restsAtPa ?? 0) / pascalPerMicron).toBeCloseTo(
      1500 + 0.05 * (1500 - wet(800)),
      -1,
    );
  });

  test("is the same whatever the order in which its readings are given", () => {
    expect(vacuumDecay([...wetPoints].reverse())).toEqual(vacuumDecay(wetPoints));
  });

  test("that is too short still tells what was seen", () => {
    expect(vacuumDecay(microns([0, 300], [240, 340]))).toEqual({
      shape: "short",
      paPerMin: expect.closeTo(10 * pascalPerMicron, 9),
      lastPa: 340 * pascalPerMicron,
    });
  });

  test("that does not rise at its end rests where it is", () => {
    const flat = vacuumDecay(microns([0, 400], [200, 700], [400, 700]));
    expect(flat).toMatchObject({ shape: "above_hold", restsAtPa: 700 * pascalPerMicron });
  });

  test("needs two moments", () => {
    expect(vacuumDecay(microns([0, 300]))).toBeUndefined();
    expect(vacuumDecay(microns([60, 300], [60, 400]))).toBeUndefined();
    expect(vacuumDecay([])).toBeUndefined();
  });
});

test("nothing bleeds down from or to no voltage", () => {
  const bus = { ohm: 10_000, farad: 1e-3 };
  expect(bleedDownS(0, 0, bus)).toBeUndefined();
  expect(bleedDownS(100, 0, bus)).toBeUndefined();
  expect(bleedDownS(100, 101, bus)).toBeUndefined();
  expect(bleedDownS(100, 100, bus)).toBe(0);
  // one time constant, R C = 10 s
  expect(bleedDownS(100 * Math.E, 100, bus)).toBeCloseTo(10, 9);
});

test("a leak rate needs a charge, and an addition that is no less than nothing", () => {
  for (const [added, charge] of [
    [1, 0],
    [1, -1],
    [-0.1, 10],
    [Number.NaN, 10],
  ] as const) {
    expect(annualizedLeakPercent(added, charge, 100)).toBeUndefined();
    expect(rollingLeakPercent(added, charge)).toBeUndefined();
  }
  expect(annualizedLeakPercent(1, 10, 0)).toBeUndefined();
  expect(annualizedLeakPercent(0, 10, 100)).toBe(0);
  expect(rollingLeakPercent(0, 10)).toBe(0);
});

test("a motor without power or with two phases has no code letter, one without a rating no torque", () => {
  const motor = { phases: 3, horsepower: 10, volts: 460 } as const;
  expect(kvaPerHpFromLockedRotorA(80, { ...motor, horsepower: 0 })).toBeUndefined();
  expect(kvaPerHpFromLockedRotorA(80, { ...motor, phases: 2 })).toBeUndefined();
  expect(startingTorqueRatio(0, 230)).toBeUndefined();
  expect(startingTorqueRatio(460, 230)).toBe(0.25);
});

test("air may be saturated, and no more; its range holds at both ends", () => {
  const ambientPa = 101_325;
  expect(moistAirFromHumidity(20, 100, ambientPa)?.dewPointCel).toBeCloseTo(20, 2);
  expect(moistAirFromHumidity(20, 100.1, ambientPa)).toBeUndefined();
  expect(moistAirFromHumidity(20, 0, ambientPa)).toBeUndefined();
  for (const [pa, known] of [
    [30_000, true],
    [29_999, false],
    [120_000, true],
    [120_001, false],
  ] as const) {
    expect(moistAirFromHumidity(20, 50, pa) !== undefined).toBe(known);
    expect(moistAirFromWetBulb(20, 14, pa) !== undefined).toBe(known);
  }
});

test("a Poisson tail is told of whole counts and of no less than nothing", () => {
  expect(poissonTail(-1, 2)).toBeUndefined();
  expect(poissonTail(1.5, 2)).toBeUndefined();
  expect(poissonTail(2, -1)).toBeUndefined();
  expect(poissonTail(2, 700.1)).toBeUndefined();
  expect(poissonTail(0, 2)).toBe(1);
  expect(poissonTail(1, 0)).toBe(0);
  // 1 - e^-2 (1 + 2)
  expect(poissonTail(2, 2)).toBeCloseTo(0.5939941503, 9);
});

test("water vapor is told at both ends of its range, and not beyond", () => {
  for (const cel of [-100, 200]) {
    const pa = waterVaporPa(cel) ?? Number.NaN;
    expect(pa).toBeGreaterThan(0);
    expect(waterBoilingCel(pa)).toBeCloseTo(cel, 3);
    expect(waterVaporPa(cel * 1.001)).toBeUndefined();
  }
  expect(waterBoilingCel((waterVaporPa(200) ?? 0) * 1.001)).toBeUndefined();
  expect(waterBoilingCel((waterVaporPa(-100) ?? 0) * 0.999)).toBeUndefined();
});
