import type { Draft } from "./draft.ts";
import { unitCalled } from "./kinds.ts";

/** Ohm: no lead that is read in gigohms beside others in megohms has more. Common practice, no source. */
const mostGigs = 1e10;

/** "lead 3 970" behind 1.1 gig and 980 meg has one meaning; "lead 3 1.2" has two, and one is a bad lead. */
export function megsOrGigs(draft: Draft, units: readonly string[]): string | undefined {
  const possible = units.filter((one) => {
    const factor = unitCalled(one)?.factor ?? 0;
    return factor <= 1e6 || draft.value * factor <= mostGigs;
  });
  return possible.length === 1 ? possible[0] : undefined;
}
