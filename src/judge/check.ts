import type { EquipmentFacts, Finding, Level, Limits, SiteFacts } from "../model.ts";
import type { CheckName } from "../vocabulary.ts";
import type { Scene } from "./scene.ts";

/**
 * One way of judging readings. A check is a pure function of the scene: it takes what it needs,
 * computes by a formula of `physics`, compares with thresholds that stand at the top of its own
 * file with their sources, and returns findings. It returns `[]` where the scene holds nothing for
 * it, and a finding of level `unknown` with `missing` where something was measured but cannot be
 * judged: never a number out of a missing reading.
 */
export interface Check {
  /** the name in findings, next checks, fixtures and replies */
  readonly name: CheckName;
  /** every sign ("group:outcome", see `sign.ts`) that its findings can carry */
  readonly signs: readonly string[];
  /** what it says of typical notes, one a level it can give; a test runs each */
  readonly examples: readonly CheckExample[];
  readonly judge: (scene: Scene) => readonly Finding[];
}

/** Notes and what is known of the machine, and the gravest level that the check then gives. */
export interface CheckExample {
  readonly level: Level;
  readonly notes: readonly string[];
  readonly equipment?: EquipmentFacts;
  readonly site?: SiteFacts;
  /** the company's own */
  readonly limits?: Limits;
}
