import type { Draft } from "./draft.ts";
import { fits } from "./kinds.ts";

/** A place whose word says what is measured there, and beside it another quantity, by its name or its unit. */
function apart({ named, hint, place, unit }: Draft, other: Draft): boolean {
  if (named !== undefined || unit !== undefined || place === undefined) return false;
  if (hint !== "pressure" && hint !== "temperature") return false;
  if (other.named !== undefined) return other.named !== hint;
  return hint === "pressure" && other.unit !== undefined && !fits(hint, other.unit.dimension);
}

/** "head 377, now 19.5 amps", "supply 60, now 5 sc": each of its own, whatever stands between. */
export function ofItsPlace(left: Draft, right: Draft): boolean {
  return apart(left, right) || apart(right, left);
}
