import type { Finding, Level, Reading } from "../../model.ts";
import { isWithin, nameplateRange } from "../../physics/supply.ts";
import {
  deratingFactor,
  unbalancePercent,
  voltageUnbalanceLimits,
} from "../../physics/unbalance.ts";
import type { Check } from "../check.ts";
import { digitPercentOf } from "../digit.ts";
import { numberOf, numbersOf, setsOf, unrepeated } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, listed, percentWords, plain } from "../words.ts";
import { isAtStart } from "./at-start.ts";
import { fuseSides } from "./fuse-sides.ts";
import { hotJoint, jointDrop } from "./joint-drop.ts";
import { highLegShare, isNeutralAdrift } from "./neutral.ts";
import { isStrayRow, strayFinding } from "./stray-volts.ts";
import { isRestored, restored, withoutSound } from "./supply-restored.ts";
import { supplySag } from "./supply-sag.ts";
import { told } from "./told.ts";
import { controlBelowV, isToGround, supplyVoltages } from "./volts.ts";

/** Share below which a line is lost: of its neighbours, to ground, of the plate. Common practice, no source. */
const lostShare = { lines: 0.75, ground: 0.4, plate: 0.65 } as const;

/** Supply voltage: a lost phase, unbalance with its derating, range about the plate, sag at start. */
export const supply: Check = {
  name: "supply",
  examples: [
    {
      level: "good",
      notes: ["480, 481 and 479 V between the lines, running"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "bad",
      notes: ["at the disconnect 480, 441 and 480 V, running"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "unknown",
      notes: ["480 V at the disconnect"],
      equipment: { drive: "line", phases: 3 },
    },
  ],
  signs: [
    "supply:sound",
    "supply:phase_lost",
    "supply:dead",
    "supply:unbalanced",
    "supply:unbalanced_slightly",
    "supply:low",
    "supply:high",
    "supply:sags",
    "supply:sags_behind_connection",
    "supply:sags_everywhere",
    "supply:holds_at_start",
    "joint:connection_loose",
  ],
  judge: (scene) => {
    const all = supplyVoltages(scene);
    const steady = all.filter((one) => !isAtStart(scene, one));
    const ofSets = (readings: readonly Reading[], judgeSet: typeof linesFindings) => {
      const all = setsOf(scene.notes, readings);
      const strays = all.filter((set) => isStrayRow(set, all, scene));
      const sets = all.filter((set) => !strays.includes(set));
      const now = sets.filter((set) => !isRestored(set, sets, scene));
      const found = [...now.flatMap((set) => judgeSet(set, scene)), ...strays.map(strayFinding)];
      const dead = sets
        .filter((set) => !now.includes(set))
        .map((set) => ({ values: numbersOf(set), was: judgeSet(set, scene) }))
        .filter((one) => one.was.length > 0);
      return dead.length === 0
        ? found
        : [...dead.map((one) => restored(one.values, one.was)), ...found.map(withoutSound)];
    };
    return unrepeated([
      ...ofSets(
        steady.filter((one) => !isToGround(one)),
        linesFindings,
      ),
      ...ofSets(steady.filter(isToGround), groundFindings),
      ...supplySag(all, scene),
      ...fuseSides(scene),
      ...jointDrop(scene),
      ...hotJoint(scene),
      ...told(scene, "supply"),
    ]);
  },
};

function linesFindings(readings: readonly Reading[], scene: Scene): Finding[] {
  const values = numbersOf(readings);
  if (values.length === 0) return [];
  const highest = Math.max(...values);
  if (highest < controlBelowV) return deadFindings(values, scene);
  const lowest = Math.min(...values);
  const placed = readings.every((one) => one.points !== undefined);
  const plateV = scene.facts.supply_V ?? highest;
  if (placed && values.length < 3 && highest < lostShare.plate * plateV)
    return [lostFinding(values)];
  if (lowest < lostShare.lines * highest && isOneSupply(readings)) return [lostFinding(values)];
  const range = rangeFinding(values, scene);
  return [
    ...unbalanceFindings(values, digitPercentOf(readings)),
    isOneOfThree(readings, scene) && range.level === "good" ? { ...range, signs: [] } : range,
  ];
}

/** One pair of legs by name: what the third has nobody knows yet. */
function isOneOfThree(readings: readonly Reading[], scene: Scene): boolean {
  return scene.facts.phases === 3 && readings.length === 1 && readings[0]?.points?.length === 2;
}

/** Three lines of one place; line and load side of a contact are two places. */
function isOneSupply(readings: readonly Reading[]): boolean {
  return (
    readings.length >= 3 ||
    readings.some((one) => numberOf(one) === 0) ||
    readings.every((one) => one.points !== undefined)
  );
}

/** The gist of each outcome for a short reply. */
const briefs: Readonly<Record<string, string>> = {
  "supply:phase_lost": "a phase is lost ahead of here",
  "supply:dead": "no supply here, look upstream",
  "supply:low": "under the plate's range",
  "supply:high": "over the plate's range",
  "supply:sound": "within the plate's range",
};

function finding(level: Level, says: string, sign: string, extra: Partial<Finding> = {}): Finding {
  return {
    about: "supply",
    check: "supply",
    level,
    brief: briefs[sign] ?? gist(says),
    says,
    values: {},
    basis: "common practice",
    signs: [sign],
    ...extra,
  };
}

/** Nothing anywhere: a lockout's proof where it was switched off, else no supply. */
function deadFindings(values: readonly number[], scene: Scene): Finding[] {
  const off = scene.done.some((one) => ["power_off", "locked", "proved_dead"].includes(one.action));
  if (off || /locked|tagged|proved|proven|test(?:ed)? dead|powered down|killed/.test(scene.words))
    return [];
  return [
    finding(
      "bad",
      `${listed(values, "V")}: no supply here. Look upstream: breaker, fuses, disconnect`,
      "supply:dead",
      {
        source: "first principles; common practice, no source",
      },
    ),
  ];
}

function lostFinding(values: readonly number[]): Finding {
  return finding(
    "bad",
    `${listed(values, "V")} between lines: a phase is lost ahead of this point, what is left of it is fed back through the load`,
    "supply:phase_lost",
    { basis: "first principles", source: "circuit reasoning; common practice, no source" },
  );
}

function groundFindings(readings: readonly Reading[], scene: Scene): Finding[] {
  const values = numbersOf(readings);
  const highest = Math.max(...values);
  if (values.length === 0) return [];
  if (highest < controlBelowV) return values.length > 1 ? deadFindings(values, scene) : [];
  const sorted = [...values].sort((a, b) => a - b);
  const lowest = sorted[0] ?? 0;
  const middle = sorted[1] ?? lowest;
  const words = `${listed(values, "V")} to ground`;
  if (values.length > 1 && lowest < lostShare.ground * highest)
    return [
      finding(
        "bad",
        `${words}: one phase is lost ahead of this point, or that phase is grounded`,
        "supply:phase_lost",
        {
          basis: "first principles",
          source: "circuit reasoning; common practice, no source",
        },
      ),
    ];
  if (isNeutralAdrift(readings))
    return [
      finding(
        "bad",
        `${listed(values, "V")} to neutral: the legs share unevenly, so the neutral is open or loose ahead of here, or one leg's joint is`,
        "joint:connection_loose",
        {
          basis: "ANSI C84.1",
          source: "ANSI C84.1 range A, utilization: 108 to 126 V a leg; circuit reasoning",
        },
      ),
    ];
  const leg = highest / middle;
  const says =
    values.length === 3 && leg > highLegShare.from && leg < highLegShare.to
      ? `${words}: a high leg of a delta supply, no fault for three-phase loads`
      : `${words}: every phase is there`;
  return [
    finding("good", says, "supply:sound", {
      brief: "every phase is there",
      source: "circuit reasoning",
    }),
  ];
}

function unbalanceFindings(values: readonly number[], digit: number): Finding[] {
  const unbalance = unbalancePercent(values);
  if (values.length !== 3 || unbalance === undefined) return [];
  const factor = deratingFactor(unbalance);
  const derate =
    factor === undefined ? "beyond the derating curve" : `derate to ${factor.toFixed(2)}`;
  const { cooling, doNotRun, fullRating } = voltageUnbalanceLimits;
  const level: Level = unbalance > doNotRun ? "bad" : unbalance > cooling ? "watch" : "good";
  const limits =
    level === "bad"
      ? "above 5 percent, do not run"
      : level === "watch"
        ? "above the usual 2 percent"
        : unbalance > fullRating
          ? "above 1 percent, below the usual 2"
          : "within 1 percent";
  const sign =
    level === "good" ? [] : [unbalance > 3 ? "supply:unbalanced" : "supply:unbalanced_slightly"];
  return [
    finding(
      level,
      `${listed(values, "V")}: ${percentWords(unbalance, digit)} percent unbalance, ${limits}, ${derate}`,
      "",
      {
        values: {
          unbalance_percent: unbalance,
          ...(factor === undefined ? {} : { derating_factor: factor }),
        },
        basis: "NEMA MG 1",
        source:
          "NEMA MG 1 14.36 and figure 14-1; 2 percent: common in cooling equipment instructions",
        signs: sign,
      },
    ),
  ];
}

function rangeFinding(values: readonly number[], scene: Scene): Finding {
  const { supply_V } = scene.facts;
  const plate = supply_V === undefined ? undefined : nameplateRange(supply_V);
  if (plate === undefined)
    return finding("unknown", `${listed(values, "V")}: no plate voltage known`, "", {
      missing: "the plate's voltage",
      signs: values.every((one) => one > controlBelowV) ? ["supply:sound"] : [],
    });
  const lowest = Math.min(...values);
  const highest = Math.max(...values);
  const band = `${plain(Math.ceil(plate.from))} to ${plain(Math.floor(plate.to))} V by the plate`;
  const about = {
    values: { off_plate_percent: offPlate([lowest, highest], supply_V ?? highest) },
    basis: "NEMA MG 1",
    source: "NEMA MG 1 12.44: 10 percent about the plate",
  };
  const uneven = (unbalancePercent(values) ?? 0) > voltageUnbalanceLimits.cooling;
  if (!isWithin(lowest, { ...plate, from: Math.floor(plate.from) }) && lowest < plate.from)
    return finding("bad", `${plain(lowest)} V is under ${band}`, "supply:low", about);
  if (highest > Math.ceil(plate.to))
    return finding("bad", `${plain(highest)} V is over ${band}`, "supply:high", about);
  return finding("good", `${listed(values, "V")} within ${band}`, "supply:sound", {
    ...about,
    signs: uneven ? [] : ["supply:sound"],
  });
}

/** The greatest deviation from the plate's voltage, percent, signed. */
function offPlate(values: readonly number[], plateV: number): number {
  const [first = 0, second = 0] = values.map((one) => (100 * (one - plateV)) / plateV);
  return Math.abs(first) > Math.abs(second) ? first : second;
}
