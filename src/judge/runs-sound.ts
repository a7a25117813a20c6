import type { Suspect } from "../model.ts";
import type { Evidence } from "./evidence.ts";
import { groupOf } from "./evidence.ts";

/** What only a running machine shows, and shows rightly. */
const running: readonly string[] = [
  "current:usual",
  "ramp:usual",
  "start:line_start",
  "superheat:usual",
  "subcooling:usual",
  "split:usual",
  "well:runs_normally",
];

/** Remarks after which a machine that runs now is looked into further. */
const troubles: readonly string[] = [
  "starting",
  "protection",
  "dead",
  "contacts",
  "dimming",
  "burning",
  "shared",
  "in_vain",
];

/** Probability from which no fault leads far enough. Common practice, no source. */
const leads = 0.3;

/** It runs, nothing found is amiss and nobody tells of trouble: what is left is to keep the figures. */
export function runsSound(leader: Suspect | undefined, evidence: readonly Evidence[]): boolean {
  if (leader?.fault !== "no_fault" || leader.probability < leads) return false;
  return (
    evidence.some((one) => running.includes(one.sign)) &&
    !evidence.some((one) => troubles.includes(groupOf(one.sign)))
  );
}

/** Groups that only a machine that stands still leaves to ask. */
export const ofStandstill: readonly string[] = ["control", "start", "ramp", "communication", "bus"];
