import { moveCursor, readCursor } from "../../src/record/inbox.ts";
import type { Store } from "../../src/record/store.ts";

/** How the run before this one ended, and how this one is going. */
export interface LastRun {
  /**
   * Whether an answer to a message of that time (ms) may have gone out without the store knowing:
   * after a power cut, or from a copy that was put back, the last commits may be missing.
   */
  readonly mayBeForgotten: (saidAtMs: number) => boolean;
  readonly beat: () => void;
  readonly endedWell: () => void;
}

const key = { platform: "serve", conversation: "alive" } as const;
const well = "ended well";
const beatMs = 15_000;
/** Longer than a system keeps writes to itself: what was said later than that was never answered. */
const forgottenMs = 2 * 60_000;
/** An answer that took longer than this to send is not thought of. */
const waitedMs = 10 * 60_000;

export function lastRun(store: Store, now: () => number): LastRun {
  const before = readCursor(store, key.platform, key.conversation);
  const alive = before === undefined || before === well ? undefined : Number(before);
  const started = now();
  let beatAt = 0;
  return {
    mayBeForgotten: (saidAtMs) =>
      alive !== undefined &&
      saidAtMs < Math.min(started, alive + forgottenMs) &&
      saidAtMs > alive - waitedMs,
    beat: () => {
      // a clock that was set back does not stop the beat
      if (Math.abs(now() - beatAt) < beatMs) return;
      beatAt = now();
      moveCursor(store, { ...key, value: String(beatAt) });
    },
    endedWell: () => moveCursor(store, { ...key, value: well }),
  };
}
