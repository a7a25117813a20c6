import type { EquipmentFacts, Job } from "../model.ts";
import type { Ledger, Proof } from "./claims/claim.ts";
import { claims } from "./claims/list.ts";
import { isCurrent } from "./readings.ts";
import type { PersonFacts } from "./registry.ts";

/** The job's record as claims and proofs see it: what stands alone. */
export function ledgerOf(
  job: Job,
  equipment: EquipmentFacts,
  people: readonly PersonFacts[] = [],
): Ledger {
  return {
    equipment,
    readings: job.readings.filter(isCurrent),
    said: job.statements.filter((line) => line.undone !== true && line.deleted !== true),
    words: job.timeline.map(({ says }) => says.toLowerCase()),
    uncertified: uncertifiedIn(job, people),
  };
}

/** Who weighed refrigerant without a certificate on file; nobody where the office keeps none at all. */
function uncertifiedIn(job: Job, people: readonly PersonFacts[]): readonly string[] {
  if (people.every(({ certificate }) => certificate === undefined)) return [];
  const hands = job.readings.filter((one) => isCurrent(one) && one.action !== undefined);
  return [...new Set(hands.map(({ who }) => who))].filter((who) => {
    const known = people.find(({ name, nickname, handles = [] }) =>
      [name, nickname, ...handles].some((one) => one?.toLowerCase() === who.toLowerCase()),
    );
    return known?.certificate === undefined;
  });
}

/** What the claims of a job still lack, costliest first, each named once. */
export function gapsOf(
  job: Job,
  equipment: EquipmentFacts,
  people: readonly PersonFacts[] = [],
): readonly string[] {
  const ledger = ledgerOf(job, equipment, people);
  const lacking = new Map<string, Proof>();
  for (const { made, proofs } of claims) {
    const since = made(ledger);
    if (since === undefined) continue;
    for (const proof of proofs) {
      if (!proof.held(ledger, since)) lacking.set(proof.gap, proof);
    }
  }
  const bypasses = job.machine.bypasses.map(({ what }) => `${what} bypass off`);
  const proofs = [...lacking.values()].sort((a, b) => b.cost - a.cost).map(({ gap }) => gap);
  return [...bypasses, ...proofs];
}

/** The file closes by proofs, not by the technician's word. */
export function fileOf(
  job: Job,
  equipment: EquipmentFacts,
  people: readonly PersonFacts[] = [],
): Job["file"] {
  const gaps = gapsOf(job, equipment, people);
  return { state: job.status === "done" && gaps.length === 0 ? "closed" : "open", gaps };
}
