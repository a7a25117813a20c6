import type { Draft } from "./draft.ts";

const span =
  "(?:an?|one|two|three|four|half an|\\d+(?:\\.\\d+)?) ?(?:h|hrs?|hours?|m|mins?|minutes?)";
const pumped = new RegExp(
  `\\b(?:pump(?:'s|s| has| is| was)?(?: been)? (?:on|running|ran|going)|(?:pulled|pulling|pumped|evacuated|evacuating)(?: (?:a|the|on|down|it|vac|vacuum))*)(?: for| about| over)*(?: the last| like| about)? ${span}\\b[^.;]{0,14}\\b(?:isolated|valved|valving|blanked|closed|shut|off|iso)\\b`,
);
const again = /\b(?:later|after|since|ago|and (?:then|now)|held|holds|holding|rose|up to|now)\b/;

/**
 * "Pump's been on an hour, valved off at 450": the hour is the pump's, and 450 is where the stand begins.
 * Taken for the length of a stand it would make a hold of none.
 */
export function pumpTime(drafts: readonly Draft[], plain: string): void {
  const timed = drafts.filter(mayStand);
  const told = timed.length === 0 ? null : pumped.exec(plain);
  if (told === null || again.test(plain.slice(told.index + told[0].length))) return;
  for (const draft of timed) {
    draft.after = undefined;
    draft.lasting = undefined;
  }
}

/** A vacuum with a time of its own, as far as it is known. */
function mayStand({ quantity, series, after, lasting }: Draft): boolean {
  const vacuum = quantity === undefined || quantity === "vacuum";
  return vacuum && series === undefined && (after ?? lasting) !== undefined;
}
