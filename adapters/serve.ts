import { type Bot, receive, tick, work } from "../src/bot.ts";
import { storeProblem } from "../src/record/store.ts";
import { isoWithOffset } from "./local-time.ts";
import type { ConfigProblem, Host, Platform, Running } from "./platform.ts";

export interface Started {
  readonly platform: Platform;
  readonly config: unknown;
}

const tickEveryMs = 5000;

/**
 * Runs platforms on one bot until the first of them ends or `stop` does. The one place where an
 * error of any kind is caught: it is logged once, in a sentence, and the message stays in the store.
 */
export async function serve(
  bot: Bot,
  started: readonly Started[],
  options: { readonly log: (line: string) => void; readonly stop?: Promise<void> },
): Promise<ConfigProblem | undefined> {
  const running: Running[] = [];
  const { log } = options;
  const now = (): string => isoWithOffset(new Date());
  let scheduled = false;
  // one piece of work and sending at a time, each after the one before it
  let busy: Promise<void> = Promise.resolve();
  const schedule = (): Promise<void> => {
    if (scheduled) return busy;
    scheduled = true;
    busy = busy.then(pump);
    return busy;
  };
  const pump = async (): Promise<void> => {
    // what arrives at once is worked on at once
    await new Promise((resolve) => setImmediate(resolve));
    scheduled = false;
    guarded(() => {
      for (const result of work(bot)) {
        if (result.error !== undefined)
          log(`A message was kept aside: ${result.error.split("\n")[0]}`);
      }
    });
    await deliverAll();
  };
  const deliverAll = async (): Promise<void> => {
    for (const platform of running) {
      try {
        await platform.deliver();
      } catch (error) {
        log(sentence(error));
      }
    }
  };
  const guarded = (step: () => void): void => {
    try {
      step();
    } catch (error) {
      log(sentence(error));
    }
  };
  const sentence = (error: unknown): string =>
    storeProblem(error, bot.store.path) ?? (error instanceof Error ? error.message : String(error));
  const host: Host = {
    bot,
    now,
    log,
    accept: (arrival) => {
      receive(bot, arrival);
      void schedule();
    },
  };
  const stopAll = async (): Promise<void> => {
    for (const platform of running.reverse()) await platform.stop();
  };
  for (const { platform, config } of started) {
    const result = await platform.start(host, config);
    if ("problem" in result) {
      await stopAll();
      return result;
    }
    running.push(result);
  }
  // what an earlier run kept and did not finish
  await schedule();
  const timer = setInterval(() => {
    guarded(() => void tick(bot, now()));
    void schedule();
  }, tickEveryMs);
  await Promise.race([...running.map(({ ended }) => ended), options.stop ?? new Promise(() => {})]);
  clearInterval(timer);
  await schedule();
  await stopAll();
  return undefined;
}
