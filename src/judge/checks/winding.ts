import type { Finding, Reading } from "../../model.ts";
import { unbalancePercent } from "../../physics/unbalance.ts";
import { digitErrorPercent } from "../../physics/winding.ts";
import type { Check } from "../check.ts";
import { forPump, isOfPump } from "../own-motor.ts";
import { bySubject, hasPoint, numbersOf, ofQuantity, setsOf, unrepeated } from "../pick.ts";
import type { Scene } from "../scene.ts";
import { gist, listed, percentWords } from "../words.ts";
import { balancedPercent, byFourWires, investigatePercent } from "./four-wires.ts";
import { isFanNote } from "./motor-currents.ts";
import { isNoWinding } from "./no-winding.ts";
import { shellWarmth } from "./shell-warmth.ts";
import { singlePhaseWinding } from "./winding-single-phase.ts";

/** A pair so far off that no hand meter explains it. Common practice, no source. */
const grossPercent = 12;
/** Share of the others below which a pair is shorted through. Common practice, no source. */
const shortedShare = 0.3;
/** One pair over the two others, and those alike: a star with one phase shorted reads 2 to 1 to 1. First principles. */
const half = { from: 1.5, to: 1.12 } as const;
/** A hand meter's last digit where small figures show none. Common practice, no source. */
const coarseDigit = 0.1;
const coarseBelow = 20;

/** Windings against each other: balance, open, shorted, within what the meter can tell. */
export const winding: Check = {
  name: "winding",
  examples: [
    {
      level: "good",
      notes: ["compressor windings T1-T2 8.02 ohm, T2-T3 8.05, T1-T3 8.01"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "bad",
      notes: ["compressor windings T1-T2 OL, T2-T3 8.05, T1-T3 OL"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
    {
      level: "unknown",
      notes: ["compressor winding T1-T2 8.02 ohm"],
      equipment: { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 },
    },
  ],
  signs: [
    "winding:balanced",
    "winding:one_low",
    "winding:one_high",
    "winding:two_low",
    "winding:shorted",
    "winding:open",
    "winding:all_open",
    "winding:overload_open",
    "winding:differs",
    "fan:winding_open",
    "fan:winding_sound",
    "motor:winding_bad",
  ],
  judge: (scene) =>
    unrepeated(
      bySubject(pairsIn(scene), "compressor").flatMap(([named, pairs]) => {
        // "HP-5 outdoor fan motor: run to common OL": the tag names the unit, the words the motor
        const ofFan = pairs.every(
          (one) => !/comp|circuit|fan/i.test(one.subject ?? "") && isFanNote(scene, one),
        );
        const about = ofFan ? "fan" : named;
        const sets = setsOf(scene.notes, pairs);
        const findings = sets.flatMap((set) => judgeMotor(about, set, scene));
        const judged = reconciled(about, findings);
        return pairs.every((one) => isOfPump(scene, one)) ? forPump(judged) : forFan(about, judged);
      }),
    ),
};

function pairsIn(scene: Scene): Reading[] {
  return ofQuantity(scene.readings, "winding_resistance").filter(
    (one) => !hasPoint(one, "ground") && !isNoWinding(one, scene),
  );
}

function judgeMotor(about: string, pairs: readonly Reading[], scene: Scene): Finding[] {
  const single = singlePhaseWinding(about, pairs, scene);
  if (single !== undefined) return single;
  if (pairs.some((one) => one.over_range === true)) return [openFinding(about, pairs, scene)];
  const values = numbersOf(pairs);
  return values.length === 0 ? [] : [balanceFinding(about, pairs, scene)];
}

/** All open on a hot shell, and even later: the overload has closed, which tells that it had opened. */
function closedAgain(findings: readonly Finding[]): Finding[] | undefined {
  const has = (finding: Finding, sign: string): boolean => finding.signs?.includes(sign) === true;
  const open = findings.findIndex((one) => has(one, "winding:overload_open"));
  const even = findings.findLastIndex((one) => has(one, "winding:balanced"));
  if (open < 0 || even < open) return undefined;
  return findings.flatMap((one, index) => {
    if (index < even && has(one, "winding:overload_open")) return [];
    if (index !== even) return [one];
    const says = `${one.says}; closed again, so the internal overload had opened`;
    return [{ ...one, says, signs: [...(one.signs ?? []), "winding:overload_open"] }];
  });
}

/** Open in one place and even in another: what lies between is open, not the winding. */
function reconciled(about: string, findings: readonly Finding[]): Finding[] {
  const closed = closedAgain(findings);
  if (closed !== undefined) return closed;
  const signs = findings.flatMap((one) => one.signs ?? []);
  const open = signs.includes("winding:open") || signs.includes("winding:all_open");
  if (!open || !signs.includes("winding:balanced")) return [...findings];
  return [
    ...findings.filter((one) => one.level === "good"),
    {
      about,
      check: "winding",
      level: "watch",
      brief: "open in one place, even in another",
      says: "Open in one place and even in another: cable, plug or a joint between the two, or the meter",
      values: {},
      basis: "circuit reasoning",
      source: "circuit reasoning; common practice, no source",
      signs: ["winding:differs"],
    },
  ];
}

function forFan(about: string, findings: readonly Finding[]): Finding[] {
  if (!/fan|blower/i.test(about)) return [...findings];
  return findings.map((one) => {
    const open = one.level === "bad" || (one.signs ?? []).some((sign) => /open/.test(sign));
    return { ...one, signs: [open ? "fan:winding_open" : "fan:winding_sound"] };
  });
}

/** Some pair shows no path. */
function openFinding(about: string, pairs: readonly Reading[], scene: Scene): Finding {
  const open = pairs.filter((one) => one.over_range === true);
  const whole = numbersOf(pairs);
  if (whole.length > 0) {
    const shared = sharedPoint(open);
    return {
      about,
      check: "winding",
      level: "bad",
      brief: "a winding or its connection is open",
      says: `${openWords(open)} open and ${listed(whole, "ohm")} on the rest: ${shared === undefined ? "one lead" : `lead ${shared}`} has no path to the others, so that winding or its connection is open`,
      values: {},
      basis: "common practice",
      source: "circuit of joined windings; common practice, no source",
      signs: ["winding:open"],
    };
  }
  return allOpenFinding(about, scene);
}

function allOpenFinding(about: string, scene: Scene): Finding {
  const warmth = shellWarmth(scene, about);
  const hot = warmth === "hot";
  return {
    about,
    check: "winding",
    level: "watch",
    brief: hot
      ? "internal overload likely open, let it cool"
      : "all open, measure again at the pins",
    says: hot
      ? "All pairs open on a hot shell: the internal overload is likely open. Let it cool for hours and measure again before any verdict"
      : "All pairs open at once: rarely the windings. Measure again at the compressor pins with the meter proven on a known resistance",
    values: {},
    basis: "common practice",
    source: "service literature; common practice, no source",
    signs: [hot ? "winding:overload_open" : "winding:all_open"],
  };
}

function openWords(open: readonly Reading[]): string {
  const names = open.flatMap((one) => (one.points ? [one.points.join("-")] : []));
  return names.length > 0 ? names.join(" and ") : `${open.length} of the pairs`;
}

/** The lead that all open pairs share. */
function sharedPoint(open: readonly Reading[]): string | undefined {
  const [first, ...rest] = open.map((one) => one.points ?? []);
  if (rest.length === 0) return;
  return first?.find((point) => rest.every((other) => other.includes(point)));
}

function balanceFinding(about: string, pairs: readonly Reading[], scene: Scene): Finding {
  const values = numbersOf(pairs);
  const coarse = coarsePercent(pairs);
  const verdict =
    unnamedTwo(pairs, coarse) ??
    sharedLow(values, coarse, scene) ??
    byFourWires(values, coarse, scene.words) ??
    balanceVerdict(values, coarse, saysAll(pairs));
  const unbalance = unbalancePercent(values);
  return {
    about,
    check: "winding",
    level: verdict.level,
    brief: gist(verdict.says),
    says: `${listed(values, "ohm")}: ${verdict.says}`,
    values: unbalance === undefined ? {} : { winding_unbalance_percent: unbalance },
    basis: "2 and 5 percent",
    source:
      "maintenance literature: within 2 percent of the mean by a low-resistance meter; 5 percent to investigate by a hand meter: common practice, no source",
    signs: verdict.sign === undefined ? [] : [verdict.sign],
    ...(verdict.missing === undefined ? {} : { missing: verdict.missing }),
  };
}

type Verdict = Pick<Finding, "level" | "says" | "missing"> & { readonly sign?: string };

/** Measured so that a poor contact of the probes can't show: four wires, zeroed leads, at the pins. */
const precise =
  /\b(?:micro|milli)-?ohm|\bfour.?wire|\b4.?wire|kelvin|low.?ohm|zeroed|at the (?:pins|compressor pins|terminals)/;
/** Two pairs that agree within it are the same. Percent. Common practice, no source. */
const samePercent = 3;

/**
 * Two equal pairs and a third above them, by a meter that its leads can't deceive: in a star the
 * lead that both low pairs share has shorted turns; a poor joint would raise two pairs, not one.
 */
function sharedLow(values: readonly number[], coarse: number, scene: Scene): Verdict | undefined {
  const [low, middle, high] = [...values].sort((a, b) => a - b);
  if (low === undefined || middle === undefined || high === undefined) return undefined;
  const off = unbalancePercent(values) ?? 0;
  const same = (middle - low) / low < Math.max(samePercent, coarse) / percent;
  if (!same || off < Math.max(grossPercent, 2 * coarse) || !precise.test(scene.words))
    return undefined;
  return {
    level: "bad",
    says: `${percentWords(off, coarse)} percent from the mean, two pairs alike and low by a meter that its leads can't deceive: turns of the phase that they share may be shorted`,
    sign: "winding:two_low",
  };
}

/** "14.2 and 22": start and run of a single-phase motor as well as two pairs of three; without their pins no verdict. */
function unnamedTwo(pairs: readonly Reading[], coarse: number): Verdict | undefined {
  if (pairs.length !== 2 || pairs.some((one) => one.points !== undefined)) return undefined;
  const off = unbalancePercent(numbersOf(pairs)) ?? 0;
  if (off <= Math.max(investigatePercent, coarse)) return undefined;
  return {
    level: "unknown",
    says: "two values without their pins: a start and a run winding differ so by design",
    missing: "the pins of each value",
  };
}

const percent = 100;

function balanceVerdict(values: readonly number[], coarse: number, all: boolean): Verdict {
  const unbalance = unbalancePercent(values);
  if (unbalance === undefined)
    return all
      ? { level: "good", says: "even", sign: "winding:balanced" }
      : { level: "unknown", says: "one pair alone shows no balance", missing: "the other pairs" };
  const sorted = [...values].sort((a, b) => a - b);
  const low = sorted[0] ?? 0;
  const middle = sorted[Math.floor((sorted.length - 1) / 2 + 0.5)] ?? low;
  const high = sorted[sorted.length - 1] ?? low;
  const off = `${percentWords(unbalance, coarse)} percent from the mean`;
  if (low < shortedShare * middle)
    return { level: "bad", says: `one pair is nearly shorted, ${off}`, sign: "winding:shorted" };
  if (high > half.from * middle && middle < half.to * low)
    return {
      level: "bad",
      says: `two pairs read about half of the third, ${off}: the phase that they share may be shorted, or a coil of a delta open`,
      sign: "winding:two_low",
    };
  if (unbalance <= Math.max(balancedPercent, coarse))
    return { level: "good", says: `even, ${off}`, sign: "winding:balanced" };
  if (unbalance <= investigatePercent)
    return { level: "good", says: `${off}, fair by a hand meter`, sign: "winding:balanced" };
  const sign = middle - low >= high - middle ? "winding:one_low" : "winding:one_high";
  const cause = sign === "winding:one_low" ? "turns may be shorted" : "a joint may be poor";
  const gross = unbalance >= Math.max(grossPercent, 2 * coarse);
  return gross
    ? { level: "bad", says: `${off}, ${cause}`, sign }
    : { level: "watch", says: `${off}, measure again with zeroed leads: ${cause}`, sign };
}

/** What one of the last digits shown is worth of a middle reading, percent, in the unit typed. */
function coarsePercent(pairs: readonly Reading[]): number {
  const shown = pairs.map((one) => one.figure.number).filter((one) => Number(one) > 0);
  const decimals = Math.max(0, ...shown.map((one) => one.split(".")[1]?.length ?? 0));
  const middle = Number(
    [...shown].sort((a, b) => Number(a) - Number(b))[Math.floor(shown.length / 2)],
  );
  const digit = decimals === 0 && middle < coarseBelow ? coarseDigit : 10 ** -decimals;
  return digitErrorPercent(digit, middle) ?? 100;
}

function saysAll(pairs: readonly Reading[]): boolean {
  return pairs.some((one) => /each|all|every|even|same|pairs/i.test(one.said));
}
