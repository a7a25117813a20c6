/** A person takes a job in hand in a channel, names it in passing, or lets it go. */
export interface Grip {
  readonly instant: number;
  readonly message: string;
  readonly job: number;
  /**
   * `take`: on the way or here; `name`: counts only where nothing is held, or only what is done;
   * `done`: held until another is named; `drop`: left
   */
  readonly kind: "take" | "name" | "done" | "drop";
  readonly site?: string;
  /** work was told of it: so a next one is turned to behind what is done */
  readonly works?: true;
  /** he was sent there himself: so another unit of the same site is turned to by telling of it */
  readonly sent?: true;
}

/** A job that nobody spoke of for so long is in nobody's hand any more; our choice, no source. */
export const holdsForMs = 16 * 3600_000;

/** The job in hand at a moment; later grips don't count, so a late message finds its own time's job. */
export function inHand(grips: readonly Grip[], instant: number): number | undefined {
  let job: number | undefined;
  let since = Number.NEGATIVE_INFINITY;
  let site: string | undefined;
  let isDone = false;
  const sorted = [...grips].sort(
    (a, b) => a.instant - b.instant || (a.message < b.message ? -1 : 1),
  );
  for (const grip of sorted) {
    if (grip.instant > instant) break;
    if (grip.instant - since > holdsForMs) job = undefined;
    since = grip.instant;
    const beside = grip.sent === true && grip.site !== undefined && grip.site === site;
    const turns = grip.works === true && (isDone || beside);
    const takes = grip.kind === "take" || job === undefined || turns;
    if (grip.kind === "drop") {
      if (job === grip.job) job = undefined;
    } else if (grip.job !== job && takes) {
      job = grip.job;
      isDone = grip.kind === "done";
    } else if (grip.job === job) {
      isDone = grip.kind === "done" || (isDone && grip.kind !== "take");
    }
    if (job === grip.job) site = grip.site;
  }
  return instant - since > holdsForMs ? undefined : job;
}
