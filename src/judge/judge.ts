import type { Case, Judgement } from "../model.ts";

/** Judges a case: what each reading means, which fault explains them, what to check next. */
export function judge(_case: Case): Judgement {
  return { findings: [], diagnosis: [], next: [], cautions: [] };
}
