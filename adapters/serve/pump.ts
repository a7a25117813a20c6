import { type Bot, tick, type WorkResult, work } from "../../src/bot.ts";
import { storeProblem } from "../../src/record/store.ts";
import { isoWithOffset } from "../local-time.ts";
import type { Log } from "./log.ts";
import { officeWork } from "./office.ts";

/** Works on what was kept, soon after it was kept, one piece of work at a time. */
export interface Pump {
  /** something may wait: it is worked on in this turn's end, together with what else arrives in it */
  readonly wake: () => void;
  /** works until nothing is left */
  readonly now: () => void;
  /** when work was last tried, and what stood in its way */
  readonly last: () => { readonly at: number; readonly problem?: string };
  /** among what waits there is an order of the office */
  readonly ordered: () => void;
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
  // an order may wait from the run before
  let ordered = true;
  let ended = false;
  const run = (): boolean => {
    scheduled = false;
    if (ended) return false;
    let done = 0;
    let left = false;
    try {
      done = clocks(bot, log, now());
      if (ordered) done += officeWork(bot);
      ordered = false;
      const worked = works(bot, log, now);
      done += worked.done;
      left = worked.left;
      last = { at: now() };
    } catch (error) {
      const problem = sentenceOf(error, bot.store.path);
      if (last.problem !== problem) log.error("work_failed", { says: problem });
      last = { at: now(), problem };
    }
    after(done === 0);
    if (left) wake();
    return left;
  };
  const wake = (): void => {
    if (scheduled) return;
    scheduled = true;
    setImmediate(run);
  };
  return {
    wake,
    now: () => {
      while (run()) {
        // another turn
      }
    },
    last: () => last,
    ordered: () => {
      ordered = true;
    },
    end: () => {
      ended = true;
    },
  };
}

export const sentenceOf = (error: unknown, path: string): string =>
  storeProblem(error, path) ?? (error instanceof Error ? error.message : String(error));

function clocks(bot: Bot, log: Log, nowMs: number): number {
  const rung = tick(bot, isoWithOffset(new Date(nowMs)), "now");
  for (const clock of rung) log.info("clock", { id: clock.id, job: clock.job });
  return rung.length;
}

/** Longer than this a turn does not work: what arrives meanwhile wants to be kept and acknowledged. */
const turnMs = 40;

/** Works on what waits, for one turn; says how much was done and whether something is left. */
function works(
  bot: Bot,
  log: Log,
  now: () => number,
): { readonly done: number; readonly left: boolean } {
  const end = performance.now() + turnMs;
  for (let done = 0; ; done++) {
    if (performance.now() > end) return { done, left: true };
    const [result] = work(bot, 1, now());
    if (result === undefined) return { done, left: false };
    tellOf(result, log);
  }
}

function tellOf({ message, job, replies, error }: WorkResult, log: Log): void {
  const { platform, id } = message;
  log.info("worked", { platform, id, job, replies: replies.length });
  if (error === undefined) return;
  const [first] = error.split("\n");
  log.error("operator", { platform, id, says: `A message was kept aside: ${first}` });
}
