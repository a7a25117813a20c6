/** A person takes a job in hand in a channel, names it in passing, or lets it go. */
export interface Grip {
  readonly instant: number;
  readonly message: string;
  readonly job: number;
  /** `take`: on the way or here; `name`: counts only where nothing is held; `drop`: left */
  readonly kind: "take" | "name" | "drop";
}

/** The job in hand at a moment; later grips don't count, so a late message finds its own time's job. */
export function inHand(grips: readonly Grip[], instant: number): number | undefined {
  let job: number | undefined;
  const sorted = [...grips].sort(
    (a, b) => a.instant - b.instant || (a.message < b.message ? -1 : 1),
  );
  for (const grip of sorted) {
    if (grip.instant > instant) break;
    if (grip.kind === "take") job = grip.job;
    else if (grip.kind === "name") job ??= grip.job;
    else if (job === grip.job) job = undefined;
  }
  return job;
}
