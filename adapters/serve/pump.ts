import { type Bot, tick, work } from "../../src/bot.ts";
import { storeProblem } from "../../src/record/store.ts";
import { isoWithOffset } from "../local-time.ts";
import type { Log } from "./log.ts";
import { officeWork } from "./office.ts";

/** Works on what was kept, soon after it was kept, one piece of work at a time. */
export interface Pump {
  /** something may wait: it is worked on in this turn's end, together with what else arrives in it */
  readonly wake: () => void;
  readonly now: () => void;
  /** when work was last tried, and what stood in its way */
  readonly last: () => { readonly at: number; readonly problem?: string };
  readonly end: () => void;
}

export interface PumpOptions {
  readonly bot: Bot;
  readonly log: Log;
  readonly now: () => number;
  /** after each turn, whether it went well or not; `idle`: there was nothing to work on */
  readonly after: (idle: boolean) => void;
}

export function makePump({ bot, log, now, after }: PumpOptions): Pump {
  let last: { readonly at: number; readonly problem?: string } = { at: now() };
  let scheduled = false;
  let ended = false;
  const run = (): void => {
    scheduled = false;
    if (ended) return;
    let done = 0;
    try {
      done = clocks(bot, log, now()) + officeWork(bot) + works(bot, log);
      last = { at: now() };
    } catch (error) {
      const problem = sentenceOf(error, bot.store.path);
      if (last.problem !== problem) log.error("work_failed", { says: problem });
      last = { at: now(), problem };
    }
    after(done === 0);
  };
  return {
    wake: () => {
      if (scheduled) return;
      scheduled = true;
      setImmediate(run);
    },
    now: run,
    last: () => last,
    end: () => {
      ended = true;
    },
  };
}

export const sentenceOf = (error: unknown, path: string): string =>
  storeProblem(error, path) ?? (error instanceof Error ? error.message : String(error));

function clocks(bot: Bot, log: Log, nowMs: number): number {
  const rung = tick(bot, isoWithOffset(new Date(nowMs)));
  for (const clock of rung) log.info("clock", { id: clock.id, job: clock.job });
  return rung.length;
}

function works(bot: Bot, log: Log): number {
  const worked = work(bot);
  for (const { message, job, replies, error } of worked) {
    const { platform, id } = message;
    log.info("worked", { platform, id, job, replies: replies.length });
    if (error === undefined) continue;
    const [first] = error.split("\n");
    log.error("operator", { platform, id, says: `A message was kept aside: ${first}` });
  }
  return worked.length;
}
