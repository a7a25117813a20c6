import type { EquipmentFacts, Job } from "../model.ts";
import type { Ledger, Proof } from "./claims/claim.ts";
import { claims } from "./claims/list.ts";
import { isCurrent } from "./readings.ts";

/** The job's record as claims and proofs see it: what stands alone. */
export function ledgerOf(job: Job, equipment: EquipmentFacts): Ledger {
  return {
    equipment,
    readings: job.readings.filter(isCurrent),
    said: job.statements.filter((line) => line.undone !== true && line.deleted !== true),
  };
}

/** What the claims of a job still lack, costliest first, each named once. */
export function gapsOf(job: Job, equipment: EquipmentFacts): readonly string[] {
  const ledger = ledgerOf(job, equipment);
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
export function fileOf(job: Job, equipment: EquipmentFacts): Job["file"] {
  const gaps = gapsOf(job, equipment);
  return { state: job.status === "done" && gaps.length === 0 ? "closed" : "open", gaps };
}
