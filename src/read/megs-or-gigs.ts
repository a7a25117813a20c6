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

/** "lead one 1100 meg lead two a gig lead three 1200": what would be too many gigohms goes with the megohms of its row. */
export function tooManyGigs(drafts: readonly Draft[]): void {
  const megohm = drafts.find(({ ownUnit, unit }) => ownUnit && unit?.figure === "megohm")?.unit;
  if (megohm === undefined) return;
  for (const draft of drafts) {
    if (draft.ownUnit || draft.unit?.figure !== "gigohm") continue;
    if (draft.value * draft.unit.factor > mostGigs) draft.unit = megohm;
  }
}
