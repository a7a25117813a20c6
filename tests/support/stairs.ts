import { describe, expect, test } from "vitest";
import { judge } from "../../src/judge/judge.ts";
import type { CaseNote, EquipmentFacts, Finding } from "../../src/model.ts";
import { caseOf } from "../case-builder.ts";
import { judgedNotes } from "./judged-notes.ts";

/** Where the verdict on a figure turns: each figure just before and just behind, with its source. */
interface Steps {
  readonly what: string;
  readonly check: string;
  /** standard, or common practice */
  readonly source: string;
  /** a figure, and the level with the signs that it gives the diagnosis */
  readonly steps: readonly (readonly [value: number, verdict: string])[];
}

/** Told in readings. */
export interface Stairs extends Steps {
  readonly equipment: EquipmentFacts;
  readonly notes: (value: number) => readonly CaseNote[];
}

/** Told in the words of whole notes. */
export interface SaidStairs extends Steps {
  readonly equipment: EquipmentFacts | ((value: number) => EquipmentFacts);
  readonly says: (value: number) => string | readonly string[];
}

/** Every finding of a check, in its order. */
function verdictOf(findings: readonly Finding[], check: string): string {
  return findings
    .filter((found) => found.check === check)
    .map(({ level, signs = [] }) => [level, ...signs].join(" "))
    .join(", ");
}

function hold<S extends Steps>(
  stairs: readonly S[],
  findings: (row: S, value: number) => readonly Finding[],
): void {
  describe.each(stairs)("$what ($source)", (row) => {
    test.each(row.steps)("at %s: %s", (value, verdict) => {
      expect(verdictOf(findings(row, value), row.check)).toBe(verdict);
    });
  });
}

/** Holds each step of each to its verdict. */
export function climb(stairs: readonly Stairs[]): void {
  hold(stairs, ({ equipment, notes }, value) => judge(caseOf(equipment, notes(value))).findings);
}

/** The same of notes that are read first. */
export function climbSaid(stairs: readonly SaidStairs[]): void {
  hold(stairs, ({ equipment, says }, value) => {
    const facts = typeof equipment === "function" ? equipment(value) : equipment;
    const said = says(value);
    return judgedNotes(facts, typeof said === "string" ? [said] : said).findings;
  });
}
