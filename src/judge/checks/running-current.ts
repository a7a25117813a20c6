import type { Finding, Level, Reading } from "../../model.ts";
import {
  currentUnbalanceLimit,
  explainedCurrentUnbalance,
  unbalancePercent,
  voltageUnbalanceLimits,
} from "../../physics/unbalance.ts";
import type { Check } from "../check.ts";
import { digitPercentOf } from "../digit.ts";
import { ownBasis } from "../own-limit.ts";
import { numbersOf, setsOf, unrepeated } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, listed, percentPlain, percentWords, plain } from "../words.ts";
import type { MotorCurrents } from "./motor-currents.ts";
import { compressorCurrents, isDriveOutput } from "./motor-currents.ts";
import { pumpMotor } from "./pump-motor.ts";
import { told } from "./told.ts";
import { isToGround, supplyVoltages } from "./volts.ts";

/** Share of the highest line below which a line is dead. Source: first principles (5 percent). */
const deadShare = 0.06;
/** Over RLA: above the first look, above the second the motor is overloaded. Common practice, no source. */
const overRla = { watch: 1.1, bad: 1.28 } as const;
/** Under RLA a line-start compressor is hardly loaded. Common practice, no source. */
const lightShare = 0.55;
/** Under it nothing works there, whatever the drive. Common practice, no source. */
const nothingShare = 0.03;

/** Steady current against the plate, lines against each other, and a dead line. */
export const runningCurrent: Check = {
  name: "running_current",
  examples: [
    {
      level: "good",
      notes: ["running amps 15.1 15.0 15.2"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "bad",
      notes: ["running amps 0, 31 and 30"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "unknown",
      notes: ["compressor running at 15 A"],
      equipment: { drive: "line", phases: 3 },
    },
  ],
  signs: [
    "current:usual",
    "current:high",
    "current:light",
    "current:line_dead",
    "current:input_dead",
    "current:unbalanced_by_supply",
    "current:unbalanced_by_motor",
    "current:unbalanced",
    "current:none",
    "output:balanced",
    "output:unbalanced",
    "driven:seized",
    "rolled:stays_with_line",
    "rolled:goes_with_lead",
  ],
  judge: (scene) => [
    ...pumpMotor(scene),
    ...told(scene, "running_current"),
    ...compressorCurrents(scene).flatMap((currents) => {
      const output = currents.running.filter((one) => isDriveOutput(scene, one));
      const lines = currents.running.filter((one) => !isDriveOutput(scene, one));
      const { about } = currents;
      return unrepeated([
        ...setsOf(scene.notes, output).flatMap((set) => outputFinding(about, set)),
        ...setsOf(scene.notes, lines).flatMap((set) =>
          linesFinding({ ...currents, running: set }, scene),
        ),
      ]);
    }),
  ],
};

function linesFinding(currents: MotorCurrents, scene: Scene): Finding[] {
  const values = steadyAmps(currents.running);
  if (values.length === 0) return [];
  const unbalance = unbalancePercent(values);
  const verdict = linesVerdict(values, unbalance, {
    scene,
    digit: digitPercentOf(currents.running),
  });
  const shown = values.length === 3 && unbalance !== undefined && unbalance < 60;
  return [
    {
      about: currents.about,
      check: "running_current",
      level: verdict.level,
      brief: gist(verdict.says),
      says: `${listed(values, "A")}${ratedWords(values, scene)}: ${verdict.says}`,
      values: shown ? { unbalance_percent: unbalance } : {},
      basis: verdict.basis,
      source:
        "NEMA MG 1 14.36 (current unbalance 6 to 10 times that of the voltage); NFPA 70 440.2 (RLA, MOC); bands: common practice, no source",
      signs: verdict.sign === undefined ? [] : [verdict.sign],
      ...(verdict.missing === undefined ? {} : { missing: verdict.missing }),
    },
  ];
}

/** The last value of a ramp, else each as it is. */
function steadyAmps(readings: readonly Reading[]): number[] {
  return numbersOf(readings);
}

type Verdict = Pick<Finding, "says" | "missing" | "basis"> & {
  readonly level: Level;
  readonly sign?: string;
};

/** The scene, and what a last digit is worth of the currents, percent. */
interface Read {
  readonly scene: Scene;
  readonly digit: number;
}

function linesVerdict(
  values: readonly number[],
  unbalance: number | undefined,
  { scene, digit }: Read,
): Verdict {
  const highest = Math.max(...values);
  const lowest = Math.min(...values);
  if (highest === 0)
    return {
      level: "watch",
      says: "nothing flows",
      basis: "common practice",
      sign: "current:none",
    };
  if (values.length >= 2 && lowest <= deadShare * highest && isDriveInput(scene))
    return {
      level: "bad",
      says: "one line into the drive carries nothing: a lost phase, its fuse or lug, or an open leg of the rectifier; the motor behind it says nothing here",
      basis: "rectifier theory",
      sign: "current:input_dead",
    };
  if (values.length >= 2 && lowest <= deadShare * highest)
    return {
      level: "bad",
      says: "one line carries nothing: a lost phase, an open contact or an open winding, not plain unbalance",
      basis: "first principles",
      sign: "current:line_dead",
    };
  const own = scene.limits.current_unbalance?.most;
  if (
    values.length === 3 &&
    unbalance !== undefined &&
    unbalance > (own ?? currentUnbalanceLimit)
  ) {
    const found = unbalanceVerdict(percentWords(unbalance, digit), unbalance, scene);
    return own === undefined || found.level === "good"
      ? found
      : { ...found, ...ownWords(found, own) };
  }
  return loadVerdict(highest, scene);
}

/** The clamp was on what goes into the drive, in words. */
function isDriveInput(scene: Scene): boolean {
  if (scene.facts.drive !== "inverter") return false;
  return inputWords.test(scene.words) || scene.readings.some(isOfLine);
}

const inputWords =
  /\b(?:line|input|supply|incoming) (?:side )?(?:amps?|currents?)|\bamps? (?:going )?in\b|\binto the (?:outdoor|unit|drive|inverter|rectifier)\b|\binput phase\b/;

/** Lines are lettered A to C or numbered, what leaves the drive is U, V and W. */
function isOfLine({ quantity, points }: Reading): boolean {
  return (
    quantity === "current" && points?.some((one) => /^(?:L[123]|phase [ABC])$/.test(one)) === true
  );
}

function unbalanceVerdict(percent: string, unbalance: number, scene: Scene): Verdict {
  const off = `${percent} percent unbalance`;
  const volts = voltageUnbalance(scene);
  const inVolts = volts === undefined ? "" : String(Number(volts.toFixed(1)));
  if (scene.facts.drive === "inverter" && (volts ?? 0) > voltageUnbalanceLimits.cooling)
    return {
      level: "watch",
      says: `${off}, which a rectifier makes of ${inVolts} percent in the supply: put the supply right, and judge the motor by its output currents`,
      basis: "rectifier theory",
      sign: "current:unbalanced_by_supply",
    };
  if (scene.facts.drive === "inverter")
    return {
      level: "good",
      says: `${off}, which a rectifier makes of a small supply unbalance: judge the motor by its output currents`,
      basis: "rectifier theory",
    };
  if (volts === undefined)
    return {
      level: "watch",
      says: `${off}: measure the three voltages`,
      basis: "common practice",
      sign: "current:unbalanced",
    };
  const explained = explainedCurrentUnbalance(volts);
  return unbalance <= 1.3 * explained.to
    ? {
        level: "watch",
        says: `${off}, explained by ${inVolts} percent in the voltage`,
        basis: "NEMA MG 1",
        sign: "current:unbalanced_by_supply",
      }
    : {
        level: "watch",
        says: `${off}, more than ${inVolts} percent in the voltage explains: a winding or a connection`,
        basis: "NEMA MG 1",
        sign: "current:unbalanced_by_motor",
      };
}

function ownWords({ says }: Verdict, own: number): Pick<Verdict, "says" | "basis"> {
  return {
    says: `${says}; over the company's own limit of ${percentPlain(own)} percent`,
    basis: ownBasis,
  };
}

function voltageUnbalance(scene: Scene): number | undefined {
  const lines = numbersOf(supplyVoltages(scene).filter((one) => !isToGround(one)));
  return lines.length === 3 ? unbalancePercent(lines) : undefined;
}

function loadVerdict(highest: number, scene: Scene): Verdict {
  const { rla_A, moc_A, drive } = scene.facts;
  const most = moc_A ?? rla_A;
  if (most === undefined)
    return {
      level: "unknown",
      says: "no rating known",
      basis: "plate",
      missing: "the plate's RLA",
    };
  const ratio = highest / most;
  const limit = moc_A === undefined ? overRla.watch : 1;
  if (ratio > overRla.bad)
    return { level: "bad", says: "overloaded", basis: "plate", sign: "current:high" };
  if (ratio > limit)
    return { level: "watch", says: "above its plate", basis: "plate", sign: "current:high" };
  if (ratio < nothingShare)
    return { level: "watch", says: "hardly anything flows", basis: "plate", sign: "current:none" };
  if (ratio < lightShare && drive !== "inverter")
    return {
      level: "watch",
      says: "lightly loaded: little gas, leaking valves or running backward",
      basis: "common practice",
      sign: "current:light",
    };
  return { level: "good", says: "within its plate", basis: "plate", sign: "current:usual" };
}

function ratedWords(values: readonly number[], scene: Scene): string {
  const { moc_A, rla_A } = scene.facts;
  if (Math.max(...values) === 0) return "";
  if (moc_A !== undefined) return `, MOC ${plain(moc_A)}`;
  return rla_A === undefined ? "" : `, RLA ${plain(rla_A)}`;
}

function outputFinding(about: string, readings: readonly Reading[]): Finding[] {
  const values = numbersOf(readings);
  const unbalance = unbalancePercent(values);
  if (values.length !== 3 || unbalance === undefined) return [];
  const even = unbalance <= currentUnbalanceLimit;
  return [
    {
      about,
      check: "running_current",
      level: even ? "good" : "bad",
      brief: even ? "even output" : "uneven output",
      says: `${listed(values, "A")} out of the drive: ${even ? "even" : `${percentWords(unbalance, digitPercentOf(readings))} percent unbalance, which no supply explains`}`,
      values: { unbalance_percent: unbalance },
      basis: "common practice",
      source:
        "power-electronics literature: a drive's output currents are nearly equal whatever the supply does",
      signs: [even ? "output:balanced" : "output:unbalanced"],
    },
  ];
}
