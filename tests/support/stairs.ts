import { describe, expect, test } from "vitest";
import { judge } from "../../src/judge/judge.ts";
import type { CaseNote, EquipmentFacts } from "../../src/model.ts";
import { caseOf } from "../case-builder.ts";

/** Where the verdict on a figure turns: each figure just before and just behind, with its source. */
export interface Stairs {
  readonly what: string;
  readonly check: string;
  /** standard, or common practice */
  readonly source: string;
  readonly equipment: EquipmentFacts;
  readonly notes: (value: number) => readonly CaseNote[];
  /** a figure, and the level with the signs that it gives the diagnosis */
  readonly steps: readonly (readonly [value: number, verdict: string])[];
}

/** Every finding of a check, in its order. */
function verdictOf({ check, equipment, notes }: Stairs, value: number): string {
  return judge(caseOf(equipment, notes(value)))
    .findings.filter((found) => found.check === check)
    .map(({ level, signs = [] }) => [level, ...signs].join(" "))
    .join(", ");
}

/** Holds each step of each to its verdict. */
export function climb(stairs: readonly Stairs[]): void {
  describe.each(stairs)("$what ($source)", (row) => {
    test.each(row.steps)("at %s: %s", (value, verdict) => {
      expect(verdictOf(row, value)).toBe(verdict);
    });
  });
}
