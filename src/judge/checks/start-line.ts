import type { Finding, Level } from "../../model.ts";
import { lockedRotorAAtVolts, worstCrestA } from "../../physics/locked-rotor.ts";
import { deadLeg } from "../dead-leg.ts";
import { noteOf } from "../near.ts";
import { numberOf, numbersOf } from "../pick.ts";
import { lockedByLetterA } from "../plate-letter.ts";
import type { Scene } from "../scene.ts";
import { gist, plain } from "../words.ts";
import { isAtStart } from "./at-start.ts";
import { heldSeconds } from "./held-time.ts";
import { highestOf, type MotorCurrents } from "./motor-currents.ts";
import { startPressures } from "./start-pressures.ts";
import { controlBelowV, isToGround, lineVolts, supplyVoltages } from "./volts.ts";

/** Peak over RLA, across the line. Source: common practice, no source. */
const lineRatios = { tooLow: 3, usual: 4 } as const;
/** s; at locked-rotor current for longer the rotor does not turn. Source: common practice, no source. */
const heldS = 1.5;
/** Share of the expected locked-rotor current that counts as reaching it. Common practice, no source. */
const nearLocked = 0.75;
/** A steady current below this share of the peak shows that the motor came up. Common practice, no source. */
const cameUpShare = 0.55;
/** The same of a figure that counts as the start's too. Common practice, no source. */
const fellShare = 0.35;

/** A start across the line: an inrush that falls at once, or a rotor that does not turn. */
export function lineStart(currents: MotorCurrents, scene: Scene): Finding[] {
  const highest = highestOf(currents.start);
  if (highest === undefined) return [];
  const peakA = numberOf(highest) ?? 0;
  const expectedA = expectedLockedA(scene);
  const verdict = lineVerdict({ peakA, expectedA, rlaA: scene.facts.rla_A }, currents, scene);
  return [
    {
      about: currents.about,
      check: "start_current",
      level: verdict.level,
      brief: gist(verdict.says),
      says: [`${plain(peakA)} A at start`, rated(peakA, expectedA, scene), verdict.says].join(", "),
      values: expectedA === undefined ? {} : { expected_locked_rotor_A: expectedA },
      ...basisOf(scene),
      signs: verdict.sign === undefined ? [] : [verdict.sign, ...startPressures(currents, scene)],
      ...(verdict.missing === undefined ? {} : { missing: verdict.missing }),
    },
  ];
}

/** A letter speaks only where no locked-rotor amps stand on the plate. */
function basisOf(scene: Scene): Pick<Finding, "basis" | "source"> {
  const { lra_A } = scene.facts;
  const byLetter = lra_A !== undefined && lra_A === lockedByLetterA(scene.facts, scene.words);
  const plate = byLetter ? "code letter, NEC 430.7(B)" : "plate LRA";
  return {
    basis: lra_A === undefined ? "common practice" : plate,
    source: `${byLetter ? "NFPA 70, 430.7(B) (middle of the letter's band); " : ""}NEMA MG 1 12.35 and 14.30 (locked-rotor current, in proportion to voltage); durations: common practice, no source`,
  };
}

interface Start {
  readonly peakA: number;
  readonly expectedA: number | undefined;
  readonly rlaA: number | undefined;
}

type Verdict = Pick<Finding, "says" | "missing"> & {
  readonly level: Level;
  readonly sign?: string;
};

function lineVerdict(start: Start, currents: MotorCurrents, scene: Scene): Verdict {
  const { peakA, expectedA, rlaA } = start;
  if (expectedA === undefined && rlaA === undefined && !holds(currents, scene))
    return { level: "unknown", says: "not judged", missing: "the plate's RLA or LRA" };
  const locked = reachesLocked(start);
  if (!locked && rlaA !== undefined && peakA < lineRatios.tooLow * rlaA && !holds(currents, scene))
    return {
      level: "unknown",
      says: "low for a line start: a slow meter, a soft starter or low volts",
      missing: "an inrush reading",
      sign: "start:low",
    };
  if (expectedA !== undefined && peakA > 1.3 * expectedA && peakA <= 1.05 * worstCrestA(expectedA))
    return {
      level: "watch",
      says: "above the locked-rotor current: a crest value of the first half cycle, or another rating",
      sign: "start:above_locked",
    };
  if (!locked) return { level: "good", says: "an ordinary line start", sign: "start:line_start" };
  return lockedVerdict(currents, scene);
}

function reachesLocked({ peakA, expectedA, rlaA }: Start): boolean {
  if (expectedA !== undefined) return peakA >= nearLocked * expectedA;
  return rlaA === undefined || peakA >= lineRatios.usual * rlaA;
}

/** At locked-rotor current: for how long decides. */
function lockedVerdict(currents: MotorCurrents, scene: Scene): Verdict {
  if (deadLeg.test(scene.words))
    return {
      level: "bad",
      says: "two legs carry it and the third none: a phase is missing at the motor, which proves no seized rotor",
      sign: "current:line_dead",
    };
  const brief = currents.start.some((one) => (heldSeconds(one, scene) ?? heldS) < heldS);
  if (holds(currents, scene) || (!brief && stallsThere(currents, scene))) {
    if (cameUp(currents))
      return {
        level: "watch",
        says: "held there once and came up another time: it is not seized, look at what differed",
        sign: "start:locked_once",
      };
    return {
      level: "bad",
      says: `held ${forWords(currents, scene)}: the rotor does not turn`,
      sign: "start:held_locked",
    };
  }
  if (cameUp(currents) || brief)
    return {
      level: "good",
      says: "down again at once: an ordinary line start",
      sign: "start:line_start",
    };
  if (stalls(scene))
    return {
      level: "bad",
      says: "and it does not come up: the rotor does not turn",
      sign: "start:held_locked",
    };
  return {
    level: "unknown",
    says: "that is locked-rotor current; for how long decides",
    missing: "how long it held",
    sign: "start:at_locked_unknown",
  };
}

function holds(currents: MotorCurrents, scene: Scene): boolean {
  return currents.start.some((one) => (heldSeconds(one, scene) ?? 0) >= heldS);
}

function forWords(currents: MotorCurrents, scene: Scene): string {
  const longest = Math.max(...currents.start.flatMap((one) => heldSeconds(one, scene) ?? []));
  return Number.isFinite(longest) ? `for ${plain(longest)} s` : "until it tripped";
}

/** Steady current followed, well below the peak. */
function cameUp(currents: MotorCurrents): boolean {
  const amps = numbersOf(currents.start);
  const peakA = Math.max(...amps);
  const steady = numbersOf(currents.running).some((one) => one > 0 && one < cameUpShare * peakA);
  // "118 A falling to 18": said in the breath of the start
  return steady || amps.some((one) => one > 0 && one < fellShare * peakA);
}

/** Remarks that say that it did not get going. */
const stalling: readonly string[] = [
  "hums",
  "will_not_start",
  "kicks_without_turning",
  "starts_then_trips",
  "overload_trips",
  "hums_on_one_phase",
];

function stalls(scene: Scene): boolean {
  return scene.seen.some((one) => stalling.includes(one.observation));
}

/** The same note tells the current and that it did not get going. */
function stallsThere(currents: MotorCurrents, scene: Scene): boolean {
  return currents.start.some((one) =>
    noteOf(scene, one)?.statements.some(
      (other) =>
        other.kind === "observation" &&
        other.denied !== true &&
        stalling.includes(other.observation),
    ),
  );
}

/** LRA at the voltage measured, A. */
function expectedLockedA(scene: Scene): number | undefined {
  const { lra_A, supply_V } = scene.facts;
  if (lra_A === undefined) return;
  const volts = triedVolts(scene) ?? lineVolts(scene);
  if (volts === undefined || supply_V === undefined) return lra_A;
  return lockedRotorAAtVolts(lra_A, supply_V, volts);
}

/** What stood at the terminals while it tried, where that was read: the lowest, as near to the motor as any. */
function triedVolts(scene: Scene): number | undefined {
  const tried = supplyVoltages(scene).filter((one) => isAtStart(scene, one) && !isToGround(one));
  const volts = numbersOf(tried).filter((one) => one >= controlBelowV);
  return volts.length === 0 ? undefined : Math.min(...volts);
}

function rated(peakA: number, expectedA: number | undefined, scene: Scene): string {
  if (expectedA !== undefined) return `locked rotor is ${plain(expectedA)} A here`;
  const { rla_A } = scene.facts;
  return rla_A === undefined ? "no rating known" : `${plain(peakA / rla_A)} times RLA`;
}
