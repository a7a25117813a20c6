import type { Bot } from "../src/bot.ts";
import type { ChatPlatform } from "./chat-platform.ts";
import { type BoardLoop, boardLoop, boardNow } from "./serve/board-loop.ts";
import { type DigestPost, dayDigest } from "./serve/day-digest.ts";
import { doorFor, type Inside, tellerFor } from "./serve/door.ts";
import { type Health, startHealth } from "./serve/health.ts";
import { type LastRun, lastRun } from "./serve/last-run.ts";
import type { Log } from "./serve/log.ts";
import { makePump, type Pump, sentenceOf } from "./serve/pump.ts";
import { type Sender, startSender } from "./serve/sender.ts";
import { storeTrouble } from "./serve/store-trouble.ts";

export interface ServeOptions {
  readonly platforms: readonly ChatPlatform[];
  readonly log: Log;
  /** resolves when it is time to end */
  readonly stop?: Promise<void>;
  /** where the record's digest is posted at each day's end */
  readonly digest?: DigestPost;
  /** a port on this machine for health and readiness */
  readonly healthPort?: number;
  /** ms; absent: the machine's clock */
  readonly now?: () => number;
}

/** Clocks and boards are looked at this often; clocks promise five seconds. */
const tickEveryMs = 1000;
/** A platform may hang: whoever stops the program does not wait for ever. */
const patienceMs = 10_000;

interface Running {
  readonly platform: ChatPlatform;
  readonly sender: Sender;
  readonly board: BoardLoop | undefined;
  connected: boolean;
  /** nothing is sent before the platform knows who and where it is */
  started: boolean;
}

interface Service {
  readonly options: ServeOptions;
  readonly running: readonly Running[];
  readonly inside: Inside;
  readonly pump: Pump;
  readonly last: LastRun;
  /** resolves with the sentence of whatever makes going on useless */
  readonly failed: Promise<string>;
}

/**
 * Runs platforms on one bot until the first of them ends, `stop` does, or one cannot go on: then it
 * gives the sentence that says why. What goes wrong in work or sending is caught, logged once in a
 * sentence, and tried again; the message stays in the store.
 */
export async function serve(given: Bot, options: ServeOptions): Promise<string | undefined> {
  // boards are edited at their platform's pace, not with every message
  const bot: Bot = { ...given, boardElsewhere: true };
  const service = openService(bot, options);
  const { running, pump, failed } = service;
  const health = await healthOf(service, bot);
  const starts = running.map((one) => start(service, one));
  refreshBoards(service, bot);
  // what an earlier run kept and did not finish
  pump.wake();
  const digest = options.digest === undefined ? undefined : dayDigest(bot, options.digest);
  const timer = setInterval(() => {
    refreshBoards(service, bot);
    endOfDay(service, digest);
    pump.wake();
  }, tickEveryMs);
  const never = new Promise<void>(() => {});
  const leaves = running.flatMap(({ platform }) => platform.ended ?? []);
  const problem = await Promise.race([failed, ...leaves, options.stop ?? never]);
  clearInterval(timer);
  if (leaves.length > 0 && problem === undefined) await lastAnswers(service);
  pump.end();
  await inTime(Promise.all([stopAll(running), ...starts]), options.log);
  await health?.stop();
  endWell(service, bot);
  options.log.info("stopped");
  return typeof problem === "string" ? problem : undefined;
}

function openService(bot: Bot, options: ServeOptions): Service {
  const { log } = options;
  const now = options.now ?? Date.now;
  const running: Running[] = [];
  const byName = (name: string) => running.find(({ platform }) => platform.name === name);
  let fail: (sentence: string) => void = () => {};
  const failed = new Promise<string>((resolve) => {
    fail = resolve;
  });
  const last = lastRun(bot.store, now);
  const pump = makePump({ bot, log, now, after: (idle) => sendAll(running, idle) });
  const inside: Inside = {
    bot,
    log,
    now,
    wake: pump.wake,
    ordered: pump.ordered,
    connected: (name, is) => {
      const one = byName(name);
      if (one === undefined || one.connected === is) return;
      one.connected = is;
      log.info(is ? "connected" : "disconnected", { platform: name });
    },
    fatal: (sentence) => fail(sentence),
    boardGone: (name) => byName(name)?.board?.gone(),
    board: () => boardNow(bot, now()),
    trouble: storeTrouble(log, now),
  };
  for (const platform of options.platforms) running.push(runningFor(inside, platform, last));
  return { options, running, inside, pump, last, failed };
}

function runningFor(inside: Inside, platform: ChatPlatform, { mayBeForgotten }: LastRun): Running {
  const { bot, log, now } = inside;
  const { boardChannel } = platform;
  const tell = tellerFor(inside, platform.name);
  return {
    platform,
    sender: startSender({ bot, platform, log, now, tell, mayBeForgotten }),
    board:
      boardChannel === undefined ? undefined : boardLoop(bot, { ...platform, boardChannel }, now),
    connected: false,
    started: false,
  };
}

function sendAll(running: readonly Running[], idle: boolean): void {
  for (const { sender, platform, started } of running) {
    if (!started) continue;
    sender.kick();
    if (!idle && platform.rest !== undefined) void sender.idle().then(platform.rest);
  }
}

async function start({ inside, options, pump }: Service, one: Running): Promise<void> {
  const { platform } = one;
  try {
    const says = await platform.start(doorFor(inside, platform));
    one.started = true;
    pump.wake();
    if (says !== "") options.log.info("joined", { platform: platform.name, says });
  } catch (error) {
    inside.fatal(`${platform.name} could not be started: ${sentenceOf(error, "the store")}`);
  }
}

async function healthOf(service: Service, bot: Bot): Promise<Health | undefined> {
  const { options, running, pump, inside } = service;
  if (options.healthPort === undefined) return undefined;
  return startHealth(options.healthPort, {
    store: bot.store,
    platforms: () => Object.fromEntries(running.map((one) => [one.platform.name, one.connected])),
    lastWork: () => {
      const problem = pump.last().problem ?? inside.trouble.problem();
      return { at: pump.last().at, ...(problem === undefined ? {} : { problem }) };
    },
  });
}

function refreshBoards({ running, options, last }: Service, bot: Bot): void {
  try {
    last.beat();
    for (const { board } of running) board?.refresh();
  } catch (error) {
    options.log.error("board_failed", { says: sentenceOf(error, bot.store.path) });
  }
}

function endOfDay(
  { options, inside }: Service,
  digest: ((nowMs: number) => boolean) | undefined,
): void {
  try {
    if (digest?.(inside.now()) === true) options.log.info("digest_put");
  } catch (error) {
    options.log.error("digest_failed", { says: sentenceOf(error, inside.bot.store.path) });
  }
}

/** A person who leaves still gets the answers to what was said. */
async function lastAnswers({ running, pump }: Service): Promise<void> {
  pump.now();
  const theirs = running.filter(({ platform }) => platform.ended !== undefined);
  await Promise.all(theirs.map(({ sender }) => sender.idle()));
}

/** What is under way comes to its end; nothing is begun. */
async function stopAll(running: readonly Running[]): Promise<void> {
  await Promise.all(
    running.map(async ({ sender, platform }) => {
      await sender.stop();
      await platform.stop();
    }),
  );
}

function endWell({ last, options }: Service, bot: Bot): void {
  try {
    last.endedWell();
  } catch (error) {
    options.log.warn("end_not_noted", { says: sentenceOf(error, bot.store.path) });
  }
}

async function inTime(work: Promise<unknown>, log: Log): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<void>((resolve) => {
    timer = setTimeout(() => {
      log.warn("stopped_late", { after_ms: patienceMs });
      resolve();
    }, patienceMs);
  });
  const done = work.catch((error: unknown) => log.error("stop_failed", { why: String(error) }));
  await Promise.race([done, late]);
  clearTimeout(timer);
}
