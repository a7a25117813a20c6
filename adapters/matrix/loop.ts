import { lockedEvents } from "./locked.ts";
import { syncPlace, takeRound } from "./round.ts";
import { tokenSentence } from "./send.ts";
import { askSync } from "./sync.ts";
import { Trouble } from "./trouble.ts";
import type { Working } from "./working.ts";

/** A pause that `end` cuts short. */
export interface Pauses {
  readonly ended: () => boolean;
  readonly pause: (ms: number) => Promise<void>;
  readonly end: () => void;
}

export function pauses(): Pauses {
  let over = false;
  let wake = (): void => {};
  const end = new Promise<void>((resolve) => {
    wake = resolve;
  });
  return {
    ended: () => over,
    pause: async (ms) => {
      let timer: NodeJS.Timeout | undefined;
      const waited = new Promise<void>((resolve) => {
        timer = setTimeout(resolve, ms);
      });
      await Promise.race([waited, end]);
      clearTimeout(timer);
    },
    end: () => {
      over = true;
      wake();
    },
  };
}

const pollMs = 30_000;
/** While something waits for its key, the look for it is not left to the next message. */
const shortPollMs = 5000;
const longestPauseMs = 30_000;

/**
 * Asks and works until it is ended or the token is no longer good. The place moves only when all is
 * kept. `round` is called after each one.
 */
export async function syncLoop(working: Working, rest: Pauses, round: () => void): Promise<void> {
  const { door, connection } = working;
  let begun = false;
  for (let failures = 0; !rest.ended(); ) {
    const since = door.cursor(syncPlace);
    try {
      // at once at the start and after trouble, so that readiness says so as soon as it can
      const quick = !begun || failures > 0;
      const waitMs = quick ? 0 : lockedEvents(working).length > 0 ? shortPollMs : pollMs;
      const answer = await askSync(connection.ask, since, waitMs);
      if (rest.ended()) return;
      await takeRound(working, { since, answer, first: !begun, stopping: rest.ended });
      failures = 0;
      begun = true;
      door.connected(true);
      round();
    } catch (error) {
      if (rest.ended()) return;
      failures += 1;
      if (isOver(working, error)) return;
      await rest.pause(pauseFor(error, failures));
    }
  }
}

function isOver(working: Working, error: unknown): boolean {
  const { door } = working;
  const why = error instanceof Error ? error.message : String(error);
  door.connected(false);
  door.log.warn("matrix_trouble", { platform: "matrix", why });
  if (!(error instanceof Trouble) || error.kind !== "token") return false;
  door.fatal(tokenSentence(why));
  return true;
}

export function pauseFor(error: unknown, failures: number): number {
  if (error instanceof Trouble && error.kind === "limited") return error.retryMs;
  return Math.min(longestPauseMs, 250 * 2 ** Math.min(failures, 10));
}
