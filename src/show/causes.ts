import type { Judgement, Suspect } from "../model.ts";
import { likelihood } from "./wording.ts";

/**
 * Causes worth naming to people, likeliest first: those that something measured or seen speaks
 * for. "No fault" is one only where it leads clearly, "something else" never.
 */
export function namedCauses(judgement: Judgement): readonly Suspect[] {
  return judgement.diagnosis.filter(
    (suspect, index) =>
      suspect.for.length > 0 &&
      likelihood(suspect) !== "ruled out" &&
      suspect.fault !== "other" &&
      (suspect.fault !== "no_fault" || (index === 0 && likelihood(suspect) === "likely")),
  );
}
