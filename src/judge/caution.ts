import type { Caution } from "../model.ts";
import type { Scene } from "./scene.ts";

/**
 * A caution as data: when it fits and what it says (at most 140 letters, our words). The list is
 * walked as a whole; `judge.ts` keeps the two most serious.
 */
export interface CautionRule {
  /** the id that the JSON speaks; several rules may share a group's id */
  readonly id: string;
  readonly severity: Caution["severity"];
  readonly says: string;
  readonly source: string;
  /**
   * Undefined where it does not fit; else how near the danger is: 3 it is true of the machine now,
   * 2 the next action runs into it, 1 the words touch it.
   */
  readonly fits: (scene: Scene) => 1 | 2 | 3 | undefined;
}
