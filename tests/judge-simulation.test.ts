import { describe, expect, it } from "vitest";
import { faults } from "../src/judge/faults/list.ts";
import { judge } from "../src/judge/judge.ts";
import type { Step } from "../src/judge/step.ts";
import { steps } from "../src/judge/steps/list.ts";
import type { CaseNote, Judgement } from "../src/model.ts";
import { caseOf, note } from "./case-builder.ts";
import {
  type Look,
  lookAt,
  type Noise,
  noiseFrom,
  type Simulated,
  simulatedFaults,
} from "./simulated-faults.ts";

/** The sign groups that each look fills. */
const lookOfGroup: Readonly<Record<string, Look>> = {
  supply: "supply",
  control: "control",
  insulation: "insulation",
  winding: "winding",
  bus: "bus",
  bridge: "diodes",
  rectifier: "diodes",
  output: "output",
  unplugged: "output",
  start: "start",
  ramp: "start",
  current: "running",
  capacitor: "capacitor",
  contactor: "contactor",
  fan: "fan",
  superheat: "gas_low",
  suction: "gas_low",
  subcooling: "gas_high",
  head: "gas_high",
  split: "air",
};

function pick(noise: Noise): Simulated {
  const total = simulatedFaults.reduce((sum, one) => sum + one.share, 0);
  let left = noise.next() * total;
  for (const one of simulatedFaults) {
    left -= one.share;
    if (left <= 0) return one;
  }
  return simulatedFaults[0] ?? Object.create(null);
}

const looksOf = (one: Simulated): Look[] =>
  one.facts.drive === "inverter"
    ? [
        "supply",
        "control",
        "insulation",
        "winding",
        "bus",
        "diodes",
        "output",
        "start",
        "running",
        "fan",
      ]
    : [
        "supply",
        "control",
        "insulation",
        "winding",
        "start",
        "running",
        ...(one.facts.phases === 1 ? (["capacitor"] as const) : []),
        "contactor",
        "fan",
        "gas_low",
        "gas_high",
        "air",
      ];

const topOf = (judged: Judgement) => judged.diagnosis[0];

// ---------------------------------------------------------------- calibration

interface Guess {
  readonly probability: number;
  readonly right: boolean;
}

/** Expected calibration error of the first suspect over ten bins. */
function calibrationError(guesses: readonly Guess[]): number {
  const bins = Array.from({ length: 10 }, (_, at) =>
    guesses.filter((one) => Math.min(9, Math.floor(one.probability * 10)) === at),
  );
  return bins.reduce((sum, bin) => {
    if (bin.length === 0) return sum;
    const said = bin.reduce((all, one) => all + one.probability, 0) / bin.length;
    const was = bin.filter((one) => one.right).length / bin.length;
    return sum + (bin.length / guesses.length) * Math.abs(said - was);
  }, 0);
}

function guess(seed: number): Guess | undefined {
  const noise = noiseFrom(seed);
  const machine = pick(noise);
  const looks = looksOf(machine).filter(() => noise.chance(0.55));
  const notes = (["eyes", ...looks] as const).map((look) => note("", lookAt(machine, look, noise)));
  const top = topOf(judge(caseOf(machine.facts, notes)));
  if (top === undefined) return;
  return { probability: top.probability, right: top.fault === machine.fault };
}

// ---------------------------------------------------------------- minutes to the fault

/** A verdict is reached at this probability. */
const reached = 0.6;
/** The usual order of work: look, supply, insulation, windings, drive, start, gas, air, the rest. */
const usualOrder: readonly (readonly [Look, minutes: number])[] = [
  ["supply", 4],
  ["insulation", 10],
  ["winding", 8],
  ["bus", 4],
  ["diodes", 15],
  ["output", 12],
  ["start", 5],
  ["running", 4],
  ["gas_low", 5],
  ["gas_high", 5],
  ["air", 4],
  ["control", 4],
  ["capacitor", 5],
  ["contactor", 6],
  ["fan", 5],
];

const allSteps: readonly Step[] = [...steps, ...faults.flatMap((one) => one.proof)];

function isReached(judged: Judgement, machine: Simulated): boolean {
  const top = topOf(judged);
  return top !== undefined && top.fault === machine.fault && top.probability >= reached;
}

/** Minutes until the true fault leads, or all looks are used up. */
function minutesBy(
  machine: Simulated,
  seed: number,
  choose: (
    judged: Judgement,
    left: readonly Look[],
  ) => { look?: Look; minutes: number } | undefined,
): number {
  const noise = noiseFrom(seed);
  const seen = new Map<Look, CaseNote>();
  for (const look of ["eyes", ...looksOf(machine)] as const)
    seen.set(look, note("", lookAt(machine, look, noise)));
  let left: readonly Look[] = looksOf(machine);
  let notes: CaseNote[] = [seen.get("eyes") ?? note("")];
  let minutes = 0;
  while (left.length > 0) {
    const judged = judge(caseOf(machine.facts, notes));
    if (isReached(judged, machine)) break;
    const chosen = choose(judged, left);
    if (chosen === undefined) break;
    minutes += chosen.minutes;
    const { look } = chosen;
    if (look === undefined) continue;
    left = left.filter((one) => one !== look);
    notes = [...notes, seen.get(look) ?? note("")];
  }
  return minutes;
}

function byOrder(_judged: Judgement, left: readonly Look[]) {
  const next = usualOrder.find(([look]) => left.includes(look));
  return next === undefined ? undefined : { look: next[0], minutes: next[1] };
}

/** As the bot says; where it asks for nothing that is left, the usual order goes on. */
function asTold(judged: Judgement, left: readonly Look[]) {
  for (const next of judged.next) {
    const step = allSteps.find((one) => one.why === next.why);
    const look = step?.fills.map((group) => lookOfGroup[group]).find((one) => one !== undefined);
    if (look !== undefined && left.includes(look)) return { look, minutes: next.minutes };
  }
  return byOrder(judged, left);
}

describe("simulated faults", () => {
  it("are believed as often as they are true", () => {
    const guesses = Array.from({ length: 1500 }, (_, seed) => guess(seed + 1)).filter(
      (one) => one !== undefined,
    );
    const error = calibrationError(guesses);
    const right = guesses.filter((one) => one.right).length / guesses.length;
    console.log(
      `calibration error ${error.toFixed(3)}, first suspect right ${(100 * right).toFixed(0)} %`,
    );
    if (process.env.BINS)
      for (let at = 0; at < 10; at++) {
        const bin = guesses.filter((one) => Math.min(9, Math.floor(one.probability * 10)) === at);
        console.log(
          at,
          bin.length,
          (bin.filter((one) => one.right).length / bin.length).toFixed(2),
        );
      }
    expect(error).toBeLessThanOrEqual(0.08);
  });

  it("are found in at least 15 percent less time than by the usual order", () => {
    const seeds = Array.from({ length: 400 }, (_, seed) => seed + 5001).filter((seed) => {
      const { fault } = pick(noiseFrom(seed));
      return fault !== "no_fault" && fault !== "other";
    });
    const times = seeds.map((seed) => {
      const machine = pick(noiseFrom(seed));
      return [minutesBy(machine, seed, asTold), minutesBy(machine, seed, byOrder)] as const;
    });
    const told = times.reduce((sum, [one]) => sum + one, 0) / times.length;
    const order = times.reduce((sum, [, one]) => sum + one, 0) / times.length;
    console.log(`${told.toFixed(1)} minutes as told, ${order.toFixed(1)} by the usual order`);
    expect(told).toBeLessThanOrEqual(0.85 * order);
  });
});
