import type { Finding, Level } from "../../model.ts";
import { numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, plain } from "../words.ts";
import { highestOf, type MotorCurrents } from "./motor-currents.ts";

/** Peak over rated or maximum current, inverter. Source: drive literature: 1 to 1.5. */
const inverterRatios = { usual: 1, tolerated: 1.5 } as const;

type Verdict = Pick<Finding, "says" | "missing"> & {
  readonly level: Level;
  readonly sign?: string;
};

/** A start by an inverter: a ramp without a jump, or a current at the drive's limit. */
export function inverterStart(currents: MotorCurrents, scene: Scene): Finding[] {
  const { moc_A, rla_A } = scene.facts;
  const ratedA = moc_A ?? rla_A;
  const ramps = currents.running.filter((one) => one.series !== undefined);
  const highest = highestOf([...currents.start, ...ramps]);
  if (highest === undefined) return [];
  const peakA = Math.max(numberOf(highest) ?? 0, ...(highest.series ?? []));
  const verdict = inverterVerdict(peakA, ratedA);
  const name = moc_A === undefined ? "RLA" : "maximum operating current";
  const against = ratedA === undefined ? "" : `, ${plain(peakA / ratedA)} times ${name}`;
  return [
    {
      about: currents.about,
      check: "start_current",
      level: verdict.level,
      brief: gist(verdict.says),
      says: `${plain(peakA)} A at start${against}: ${verdict.says}`,
      values: {},
      basis: "drive literature",
      source:
        "drive literature: an inverter ramps and stays at 1 to 1.5 times the running maximum; the rest common practice, no source",
      signs: verdict.sign === undefined ? [] : [verdict.sign],
      ...(verdict.missing === undefined ? {} : { missing: verdict.missing }),
    },
  ];
}

function inverterVerdict(peakA: number, ratedA: number | undefined): Verdict {
  if (ratedA === undefined)
    return { level: "unknown", says: "not judged", missing: "RLA or maximum operating current" };
  const ratio = peakA / ratedA;
  if (ratio <= inverterRatios.usual)
    return { level: "good", says: "the ramp of an inverter, no jump", sign: "ramp:usual" };
  if (ratio <= inverterRatios.tolerated)
    return {
      level: "watch",
      says: "high for a ramp: what mode was the meter in?",
      sign: "ramp:high",
    };
  return {
    level: "bad",
    says: "far above any ramp: the motor is stuck or shorted, or the drive is",
    sign: "ramp:limit",
  };
}
