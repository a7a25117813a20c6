import type { NextCheck, Suspect } from "../model.ts";
import { isBurner, isWaterSide } from "./application.ts";
import type { Evidence } from "./evidence.ts";
import { groupOf } from "./evidence.ts";
import type { Fault } from "./fault.ts";
import { faults } from "./faults/list.ts";
import { isMended } from "./mended.ts";
import { ownMotor } from "./own-motor.ts";
import { ofStandstill, runsSound } from "./runs-sound.ts";
import type { Scene } from "./scene.ts";
import { outcomesOf } from "./shown.ts";
import type { Step } from "./step.ts";
import { steps } from "./steps/list.ts";
import { record } from "./steps/record.ts";
import { whereIn } from "./where.ts";

/** How many are named, the proof of the leading fault apart. */
const named = 3;
/** Minutes that a unit of danger weighs. Common practice, no source. */
const minutesPerDanger = 1;
/** Chance that a proof confirms a true fault, and a false one. Common practice, no source. */
const proofShows = { true: 0.9, false: 0.12 } as const;
/** Above it the leading fault's own proofs come first, in their own order. */
const leads = 0.6;
/** Or from here on, where it is that many times as likely as the next. Common practice, no source. */
const leadsFar = { from: 0.3, times: 4 } as const;
/** Bit that a look is worth which a check lacked. Common practice, no source. */
const wantedBit = 4;
/** Suspects below it need no proof of their own. */
const worthProving = 0.04;
/** Bit that a look must be expected to tell, to be named. Common practice, no source. */
const worthAsking = 0.03;

interface Candidate {
  readonly step: Step;
  /** bit expected */
  readonly gain: number;
  /** the same for its minutes and danger */
  readonly worth: number;
  readonly ofLeader: boolean;
}

/**
 * What to look at next: the most expected information for its minutes and danger, given what is
 * known; ties go to the safer one. Where a fault leads clearly, its proof comes first.
 */
export function nextChecks(
  diagnosis: readonly Suspect[],
  evidence: readonly Evidence[],
  scene: Scene,
): NextCheck[] {
  const known = new Set(evidence.map((one) => groupOf(one.sign)));
  const signs = new Set(evidence.map((one) => one.sign));
  const fits = whereIn(scene);
  const open = (step: Step) =>
    fits(step.where) &&
    step.only?.(scene) !== false &&
    !step.fills.some((group) => known.has(group)) &&
    !(step.unless?.some((sign) => signs.has(sign)) ?? false);
  const leader = diagnosis[0];
  // gas heat is not on the list of faults: none of it explains a burner unless it does so well
  const burner = isBurner(scene) || isWaterSide(scene);
  if (burner && (leader?.probability ?? 0) < leadsFar.from) return [];
  const gainOf = gainsFrom(diagnosis, known);
  const sound = runsSound(leader, evidence);
  const renewed = leader !== undefined && isMended(leader.fault, scene) ? proofOf(leader) : [];
  const general = (burner ? steps.filter((step) => isAfter(step, signs)) : steps)
    // what was just put right is not looked at again
    .filter((step) => !renewed.some(({ check }) => check === step.check))
    .filter(
      (step) => open(step) && !(sound && step.fills.some((one) => ofStandstill.includes(one))),
    )
    .map((step) => candidate(step, isWanted(step, signs, scene) ? wantedBit : gainOf(step), false));
  const proofs = diagnosis
    .slice(0, 4)
    .filter((suspect) => !isMended(suspect.fault, scene))
    .flatMap((suspect) =>
      (suspect === leader || suspect.probability > worthProving ? proofOf(suspect) : [])
        .filter(open)
        .map((step) => candidate(step, proofGain(suspect.probability), suspect === leader)),
    );
  const sure = isSure(leader?.probability ?? 0, diagnosis[1]?.probability ?? 0);
  const ranked = [...proofs, ...general]
    .filter((one) => one.gain >= worthAsking || one.ofLeader)
    .sort((a, b) => compare(a, b, sure));
  const looks = ranked.filter(({ step }) => step.last !== true);
  const found = withLast(withProof(distinct(looks.length === 0 ? ranked : looks), proofs), {
    proofs,
    sure,
  });
  const settled = found.length === 0 && renewed.length > 0;
  const rest = found.filter((one) => one !== record);
  const calm =
    (leader?.probability ?? 0) >= leads ? [record, ...rest.slice(0, named - 1)] : [...rest, record];
  const motor = ownMotor(scene) === undefined ? (said: string) => said : ofMotor;
  const heat = isBurner(scene) && scene.facts.refrigerant === undefined;
  return (settled ? [record] : sound ? calm : found).map(({ check, why, minutes }) => ({
    check: motor(check),
    why: heat ? withoutCharge(motor(why)) : motor(why),
    minutes,
  }));
}

/** A furnace has air and no charge. */
export const withoutCharge = (said: string): string =>
  said
    .replace(
      /: with clean filters and full airflow read suction and split again before any word on charge/g,
      "",
    )
    .replace(/,? (?:before any word on charge|before charge)\b/g, "")
    .replace(/, since weak airflow hides a short charge/g, "");

/** A pump and a fan have no compressor to put a clamp on. */
const ofMotor = (said: string): string =>
  said.replace(/\bcompressor pins\b/g, "motor leads").replace(/\bcompressor\b/g, "motor");

/** The leading fault's first proof is among those named, after them if no earlier. */
function withProof(ranked: readonly Step[], proofs: readonly Candidate[]): readonly Step[] {
  const proof = proofs.find((one) => one.ofLeader && one.step.last !== true)?.step;
  if (proof === undefined || ranked.some((one) => one.check === proof.check)) return ranked;
  return [...ranked, proof];
}

/** Where a sure leader's own looks are all taken, what remains to be done about it stands behind the others. */
function withLast(
  ranked: readonly Step[],
  { proofs, sure }: { readonly proofs: readonly Candidate[]; readonly sure: boolean },
): readonly Step[] {
  const own = proofs.filter((one) => one.ofLeader);
  const last = own.find(({ step }) => step.last === true)?.step;
  const open = own.some(({ step }) => step.last !== true);
  if (!sure || open || last === undefined || ranked.includes(last)) return ranked;
  return [...ranked, last];
}

/** A check could not judge without it, or left a doubt that it lifts. */
function isWanted(step: Step, signs: ReadonlySet<string>, scene: Scene): boolean {
  return step.wanted?.(scene) === true || isAfter(step, signs);
}

function isAfter({ after }: Step, signs: ReadonlySet<string>): boolean {
  return after?.some((sign) => signs.has(sign)) ?? false;
}

function isSure(first: number, second: number): boolean {
  return first >= leads || (first >= leadsFar.from && first >= leadsFar.times * second);
}

function candidate(step: Step, gain: number, ofLeader: boolean): Candidate {
  return {
    step,
    gain,
    worth: gain / (step.minutes + minutesPerDanger * step.danger + 1),
    ofLeader,
  };
}

/** A sure leader's proofs keep the order they are written in (the sort is stable). */
function compare(a: Candidate, b: Candidate, sure: boolean): number {
  if (sure && (a.ofLeader || b.ofLeader)) return Number(b.ofLeader) - Number(a.ofLeader);
  return b.worth - a.worth || a.step.danger - b.step.danger;
}

/** The first that are looks of their own, as many as are named. */
function distinct(ranked: readonly Candidate[]): Step[] {
  const found: Step[] = [];
  for (const { step } of ranked) {
    if (found.length === named) break;
    if (!found.some((one) => one === step || sameLook(one, step))) found.push(step);
  }
  return found;
}

function sameLook(a: Step, b: Step): boolean {
  return a.why === b.why || a.fills.some((group) => b.fills.includes(group));
}

function proofOf(suspect: Suspect): readonly Step[] {
  return faultByName.get(suspect.fault)?.proof ?? [];
}

const faultByName: ReadonlyMap<string, Fault> = new Map(faults.map((one) => [one.fault, one]));

/** Expected drop of entropy, bit, over what a step may show and is not known yet. */
function gainsFrom(
  diagnosis: readonly Suspect[],
  known: ReadonlySet<string>,
): (step: Step) => number {
  const ranks = new Map(diagnosis.map(({ fault }, rank) => [fault, rank] as const));
  // many steps ask for the same group
  const gains = new Map<string, number>();
  const gainOf = (group: string): number => {
    const had = gains.get(group);
    if (had !== undefined) return had;
    const gain = groupGain(group, diagnosis, ranks);
    gains.set(group, gain);
    return gain;
  };
  return ({ fills, also = [] }) => {
    let sum = 0;
    for (const group of fills) sum += gainOf(group);
    for (const group of also) if (!known.has(group)) sum += gainOf(group);
    return sum;
  };
}

interface Row {
  readonly probability: number;
  readonly shares: readonly number[];
}

interface Ranked extends Row {
  readonly rank: number;
}

/** Faults that the test does not touch show the same there, so they count as one. */
function groupGain(
  group: string,
  diagnosis: readonly Suspect[],
  ranks: ReadonlyMap<string, number>,
): number {
  const outcomes = outcomesOf(group);
  if (outcomes === undefined) return 0;
  const touched: Ranked[] = [];
  for (const [fault, shares] of outcomes.byFault) {
    const rank = ranks.get(fault);
    const suspect = rank === undefined ? undefined : diagnosis[rank];
    if (rank !== undefined && suspect !== undefined)
      insert(touched, { rank, probability: suspect.probability, shares });
  }
  let known = 0;
  for (const one of touched) known += one.probability;
  const rest = { probability: Math.max(0, 1 - known), shares: outcomes.usual };
  return mutualInformation([...touched, rest]);
}

/** A sum depends on its order: the likeliest first. They are few. */
function insert(rows: Ranked[], row: Ranked): void {
  let at = rows.length;
  for (let before = rows[at - 1]; before !== undefined && before.rank > row.rank; ) {
    rows[at--] = before;
    before = rows[at - 1];
  }
  rows[at] = row;
}

/** Bit that an outcome tells of the row it came from. */
function mutualInformation(rows: readonly Row[]): number {
  const columns = rows[0]?.shares.length ?? 0;
  let sum = 0;
  for (let column = 0; column < columns; column++) {
    let total = 0;
    for (const row of rows) total += row.probability * (row.shares[column] ?? 0);
    for (const row of rows) {
      const share = row.shares[column] ?? 0;
      if (share > 0 && row.probability > 0)
        sum += row.probability * share * Math.log2(share / total);
    }
  }
  return sum;
}

/** The same for a proof, which confirms or does not. */
function proofGain(probability: number): number {
  const yes = probability * proofShows.true + (1 - probability) * proofShows.false;
  return (
    entropy(yes) -
    probability * entropy(proofShows.true) -
    (1 - probability) * entropy(proofShows.false)
  );
}

function entropy(chance: number): number {
  if (chance <= 0 || chance >= 1) return 0;
  return -chance * Math.log2(chance) - (1 - chance) * Math.log2(1 - chance);
}
