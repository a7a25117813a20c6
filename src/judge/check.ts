import type { Finding } from "../model.ts";
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
  readonly judge: (scene: Scene) => readonly Finding[];
}
