import { type Bot, tick, work } from "../src/bot.ts";
import { storeProblem } from "../src/record/store.ts";
import type { ChatPlatform } from "./chat-platform.ts";
import { isoWithOffset } from "./local-time.ts";
import { type BoardLoop, boardLoop, boardNow } from "./serve/board-loop.ts";
import { doorFor, type Inside } from "./serve/door.ts";
import { startHealth } from "./serve/health.ts";
import type { Log } from "./serve/log.ts";
import { type Sender, startSender } from "./serve/sender.ts";

export interface ServeOptions {
  readonly platforms: readonly ChatPlatform[];
  readonly log: Log;
  /** resolves when it is time to end */
  readonly stop?: Promise<void>;
  /** a port on this machine for health and readiness */
  readonly healthPort?: number;
}

/** Clocks are looked at this often; they promise five seconds. */
const tickEveryMs = 1000;

interface Running {
  readonly platform: ChatPlatform;
  readonly sender: Sender;
  readonly board: BoardLoop | undefined;
  connected: boolean;
}

/**
 * Runs platforms on one bot until the first of them ends, `stop` does, or one cannot go on: then it
 * gives the sentence that says why. The one place where an error of any kind is caught: it is logged
 * once, in a sentence, and the message stays in the store.
 */
export async function serve(bot: Bot, options: ServeOptions): Promise<string | undefined> {
  const { log } = options;
  const now = Date.now;
  const running: Running[] = [];
  let lastWork: { at: number; problem?: string } = { at: now() };
  let scheduled = false;
  let ended = false;
  let fail: (sentence: string) => void = () => {};
  const failed = new Promise<string>((resolve) => {
    fail = resolve;
  });
  const guarded = (step: () => void): void => {
    try {
      step();
      lastWork = { at: now() };
    } catch (error) {
      const why =
        storeProblem(error, bot.store.path) ??
        (error instanceof Error ? error.message : String(error));
      if (lastWork.problem !== why) log.error("work_failed", { says: why });
      lastWork = { at: now(), problem: why };
    }
  };
  const pump = (): void => {
    scheduled = false;
    if (ended) return;
    guarded(() => {
      for (const result of work(bot)) {
        const { platform, id } = result.message;
        log.info("worked", { platform, id, job: result.job, replies: result.replies.length });
        if (result.error === undefined) continue;
        log.error("operator", {
          platform,
          id,
          says: `A message was kept aside: ${result.error.split("\n")[0]}`,
        });
      }
    });
    for (const one of running) {
      one.sender.kick();
      void one.sender.idle().then(() => {
        if (!ended) one.platform.rest?.();
      });
    }
  };
  // what arrives at once is worked on at once
  const wake = (): void => {
    if (scheduled) return;
    scheduled = true;
    setImmediate(pump);
  };
  const inside: Inside = {
    bot,
    log,
    now,
    wake,
    connected: (name, is) => {
      const one = running.find(({ platform }) => platform.name === name);
      if (one === undefined || one.connected === is) return;
      one.connected = is;
      log.info(is ? "connected" : "disconnected", { platform: name });
    },
    fatal: fail,
    boardGone: (name) => running.find(({ platform }) => platform.name === name)?.board?.gone(),
    board: () => boardNow(bot, now()),
  };
  for (const platform of options.platforms) running.push(runningFor(inside, platform));
  const health =
    options.healthPort === undefined
      ? undefined
      : await startHealth(options.healthPort, {
          store: bot.store,
          platforms: () => Object.fromEntries(running.map((r) => [r.platform.name, r.connected])),
          now,
          lastWork: () => lastWork,
        });
  const starts = running.map(({ platform }) =>
    platform.start(doorFor(inside, platform)).then(
      (says) => {
        if (says !== "") log.info("joined", { platform: platform.name, says });
      },
      (error: unknown) =>
        fail(
          `${platform.name} could not be started: ${error instanceof Error ? error.message : String(error)}`,
        ),
    ),
  );
  // what an earlier run kept and did not finish
  wake();
  const timer = setInterval(() => {
    guarded(() => {
      const rung = tick(bot, isoWithOffset(new Date(now())));
      for (const clock of rung) log.info("clock", { id: clock.id, job: clock.job });
      for (const { board } of running) board?.refresh();
    });
    wake();
  }, tickEveryMs);
  const ends = options.platforms.flatMap(({ ended: left }) => (left === undefined ? [] : [left]));
  const never = new Promise<void>(() => {});
  const problem = await Promise.race([failed, ...ends, options.stop ?? never]);
  clearInterval(timer);
  // a person who leaves still gets the answers to what was said
  if (ends.length > 0 && problem === undefined) {
    pump();
    await Promise.all(running.filter((r) => r.platform.ended).map(({ sender }) => sender.idle()));
  }
  ended = true;
  await stopAll(running, log);
  await Promise.race([
    Promise.all(starts),
    new Promise((resolve) => setTimeout(resolve, 3000).unref()),
  ]);
  await health?.stop();
  log.info("stopped");
  return typeof problem === "string" ? problem : undefined;
}

function runningFor(inside: Inside, platform: ChatPlatform): Running {
  const { bot, log, now } = inside;
  const { boardChannel } = platform;
  return {
    platform,
    sender: startSender({ bot, platform, log, now, tell: doorFor(inside, platform).tell }),
    board:
      boardChannel === undefined ? undefined : boardLoop(bot, { ...platform, boardChannel }, now),
    connected: false,
  };
}

/** A platform may hang: whoever stops the program does not wait for ever. */
const patienceMs = 10_000;

async function stopAll(running: readonly Running[], log: Log): Promise<void> {
  const late = new Promise<"late">((resolve) =>
    setTimeout(() => resolve("late"), patienceMs).unref(),
  );
  const done = Promise.all(
    running.map(async ({ sender, platform }) => {
      await sender.stop();
      await platform.stop();
    }),
  ).catch((error: unknown) => log.error("stop_failed", { why: String(error) }));
  if ((await Promise.race([done, late])) === "late") log.warn("stopped_late");
}
