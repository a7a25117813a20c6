/** A person takes a job in hand in a channel, names it in passing, or lets it go. */
export interface Grip {
  readonly instant: number;
  readonly message: string;
  readonly job: number;
  /** `take`: on the way or here; `name`: counts only where nothing is held; `drop`: left */
  readonly kind: "take" | "name" | "drop";
}

/** A job that nobody spoke of for so long is in nobody's hand any more; our choice, no source. */
export const holdsForMs = 16 * 3600_000;

/** The job in hand at a moment; later grips don't count, so a late message finds its own time's job. */
export function inHand(grips: readonly Grip[], instant: number): number | undefined {
  let job: number | undefined;
  let since = Number.NEGATIVE_INFINITY;
  const sorted = [...grips].sort(
    (a, b) => a.instant - b.instant || (a.message < b.message ? -1 : 1),
  );
  for (const grip of sorted) {
    if (grip.instant > instant) break;
    if (grip.instant - since > holdsForMs) job = undefined;
    since = grip.instant;
    if (grip.kind === "take") job = grip.job;
    else if (grip.kind === "name") job ??= grip.job;
    else if (job === grip.job) job = undefined;
  }
  return instant - since > holdsForMs ? undefined : job;
}
