import type { Finding, Reading } from "../../model.ts";
import { runToStartOhm } from "../../physics/winding.ts";
import { hasPoint, numberOf } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { plain } from "../words.ts";
import { shellWarmth } from "./shell-warmth.ts";

/** How far run to start may lie from the sum. Common practice, no source. */
const sumShare = 0.12;
const sumOhm = 0.35;
/** Ohm: below it a winding is shorted through. Common practice, no source. */
const shortedOhm = 0.1;

type Warmth = ReturnType<typeof shellWarmth>;

interface Pins {
  readonly commonRun: Reading | undefined;
  readonly commonStart: Reading | undefined;
  readonly runStart: Reading | undefined;
}

/** C, S and R of a single-phase motor; undefined where the points are not those. */
export function singlePhaseWinding(
  about: string,
  pairs: readonly Reading[],
  scene: Scene,
): Finding[] | undefined {
  const pins =
    scene.facts.phases === 1 && scene.facts.drive !== "inverter" && pairs.every(isUnnamed)
      ? bySize(pairs)
      : byName(pairs);
  const said = [pins.commonRun, pins.commonStart, pins.runStart].filter((one) => one !== undefined);
  if (said.length === 0) return;
  const verdict = verdictOf(pins, said, shellWarmth(scene, about));
  return [
    {
      about,
      check: "winding",
      level: verdict.level,
      brief: verdict.brief,
      says: verdict.says,
      values: {},
      basis: "sum rule",
      source:
        "series circuit: run to start equals common-run plus common-start; service literature",
      signs: verdict.sign === undefined ? [] : [verdict.sign],
      ...(verdict.missing === undefined ? {} : { missing: verdict.missing }),
    },
  ];
}

function byName(pairs: readonly Reading[]): Pins {
  return {
    commonRun: between(pairs, "C", "R"),
    commonStart: between(pairs, "C", "S"),
    runStart: between(pairs, "R", "S"),
  };
}

/** Three pairs without names: common to run is the least, run to start the most. */
function bySize(pairs: readonly Reading[]): Pins {
  const sorted = [...pairs].sort((a, b) => (ohm(a) ?? Infinity) - (ohm(b) ?? Infinity));
  const [commonRun, commonStart, runStart] = sorted.length === 3 ? sorted : [];
  return { commonRun, commonStart, runStart };
}

function isUnnamed(reading: Reading): boolean {
  return reading.points === undefined;
}

type Verdict = Pick<Finding, "level" | "says" | "missing"> & {
  readonly brief: string;
  readonly sign?: string;
};

function verdictOf(pins: Pins, said: readonly Reading[], warmth: Warmth): Verdict {
  if (said.some(isOpen)) return openVerdict(pins, warmth);
  const { commonRun, commonStart, runStart } = pins;
  const run = ohm(commonRun);
  const start = ohm(commonStart);
  const whole = ohm(runStart);
  if ([run, start, whole].some((one) => one !== undefined && one < shortedOhm))
    return {
      level: "bad",
      brief: "a winding is shorted",
      says: "a winding reads nearly 0 ohm: shorted",
      sign: "winding:shorted",
    };
  if (run === undefined || start === undefined || whole === undefined)
    return {
      level: "unknown",
      brief: "not all three pairs",
      says: "not all three pairs are known",
      missing: "C-R, C-S and R-S",
    };
  const sum = runToStartOhm(run, start);
  const figures = `C-R ${plain(run)}, C-S ${plain(start)}, R-S ${plain(whole)} ohm`;
  const off = whole - sum;
  if (Math.abs(off) <= Math.max(sumOhm, sumShare * sum))
    return {
      level: "good",
      brief: "the pairs add up",
      says: `${figures}: they add up`,
      sign: "winding:balanced",
    };
  // the two smaller make up the largest, only under other names
  const [least = 0, middle = 0, most = 0] = [run, start, whole].sort((a, b) => a - b);
  if (Math.abs(most - least - middle) <= Math.max(sumOhm, sumShare * most) && most !== whole)
    return {
      level: "watch",
      brief: "the pairs add up under other names",
      says: `${figures}: they add up, but run to start is always the largest, so the pins are named wrongly: the one that the largest pair leaves out is common`,
      sign: "winding:balanced",
    };
  return off < 0
    ? {
        level: "bad",
        brief: "R-S is short of the sum",
        says: `${figures}: R-S is short of the sum`,
        sign: "winding:one_low",
      }
    : {
        level: "watch",
        brief: "R-S is over the sum",
        says: `${figures}: R-S is over the sum, measure again`,
        sign: "winding:one_high",
      };
}

function openVerdict(pins: Pins, warmth: Warmth): Verdict {
  const bothCommon = isOpen(pins.commonRun) && isOpen(pins.commonStart);
  if (bothCommon && !isOpen(pins.runStart)) {
    return warmth === "cold"
      ? {
          level: "bad",
          brief: "common lead or overload open, shell cold",
          says: "Both common pairs open on a cold shell: the overload should have closed by now, so it or the common lead is open",
          sign: "winding:open",
        }
      : {
          level: "watch",
          brief: "internal overload open, let it cool",
          says: "Both common pairs open: the internal overload is open. Let it cool for hours and measure again",
          sign: "winding:overload_open",
        };
  }
  if (isOpen(pins.commonRun) && isOpen(pins.commonStart) && isOpen(pins.runStart))
    return {
      level: "watch",
      brief: "all open, measure again at the pins",
      says: "All pairs open at once: measure again at the pins with a proven meter",
      sign: warmth === "hot" ? "winding:overload_open" : "winding:all_open",
    };
  const which = isOpen(pins.commonStart) ? "start" : "run";
  return {
    level: "bad",
    brief: `the ${which} winding is open`,
    says: `The ${which} winding has no path`,
    sign: "winding:open",
  };
}

function between(pairs: readonly Reading[], a: string, b: string): Reading | undefined {
  return pairs.find((one) => hasPoint(one, a) && hasPoint(one, b));
}

function isOpen(reading: Reading | undefined): boolean {
  return reading?.over_range === true;
}

function ohm(reading: Reading | undefined): number | undefined {
  return reading === undefined ? undefined : numberOf(reading);
}
