import type { Unanswered } from "./diagnosis.ts";

/** How long nothing may come before the rest is given up, and the most for all. */
const quietMs = 150_000;
const mostMs = 600_000;

/**
 * Waits until nothing is missing, as long as some of it still comes: a busy machine is slow, not
 * stuck. `tell` says why the rest is missing.
 */
export async function untilNoneMissing(
  what: string,
  missing: () => Promise<readonly Unanswered[]> | readonly Unanswered[],
  tell: (missing: readonly Unanswered[]) => Promise<string>,
): Promise<void> {
  const began = Date.now();
  let least = Number.POSITIVE_INFINITY;
  let changed = began;
  for (;;) {
    const left = await Promise.resolve(missing()).catch(() => undefined);
    if (left?.length === 0) return;
    const now = Date.now();
    if (left !== undefined && left.length < least) {
      least = left.length;
      changed = now;
    }
    if (now - changed > quietMs || now - began > mostMs) {
      const since = Math.round((now - changed) / 1000);
      throw new Error(`${what}: nothing came for ${since} s. ${await tell(left ?? [])}`);
    }
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}
