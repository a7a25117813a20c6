import { relearn } from "../../src/bot/memory.ts";
import type { Bot } from "../../src/bot.ts";
import { writeSetting } from "../../src/record/settings.ts";
import { relaxSync } from "../../src/record/store.ts";
import type { Config } from "../serve/config.ts";
import { makeLog } from "../serve/log.ts";
import { knownSecrets } from "../serve/secret.ts";
import { type Command, type Exit, type Io, textOption } from "./command.ts";
import { withBot } from "./open-db.ts";

/** Runs the chat platforms of a configuration file. */
export const serveCommand: Command = {
  name: "serve",
  usage: "--config FILE [--check]",
  about: "runs the configured chat platforms until it is told to stop",
  options: {
    config: { type: "string", about: "the configuration, JSON" },
    check: { type: "boolean", about: "only looks whether tokens and permissions are right" },
  },
  words: [0, 0],
  run: async (given, io) => {
    const path = textOption(given, "config");
    if (path === undefined) {
      io.complain("Which configuration? Say --config FILE.");
      return 2;
    }
    // the chat platforms' libraries are loaded by no other command: they take longer than its work
    const { readConfig } = await import("../serve/config.ts");
    const read = readConfig(path);
    if (!read.ok) {
      for (const problem of read.problems) io.complain(problem);
      return 2;
    }
    const { config } = read;
    // times of day are the company's, wherever the machine stands
    if (config.time_zone !== undefined) process.env.TZ = config.time_zone;
    if (given.options.check === true) return check(config, io);
    return withBot({ words: [], options: { db: config.db } }, io, {
      readonly: false,
      run: (bot) => run(bot, config, io),
    });
  },
};

async function check(config: Config, io: Io): Promise<Exit> {
  let good = true;
  for (const platform of config.platforms) {
    for (const { ok, says } of await platform.check()) {
      if (!ok) good = false;
      if (ok) io.line(says);
      else io.complain(says);
    }
  }
  return good ? 0 : 1;
}

/** A platform no longer takes the program's token: starting it again would not help. */
const exitToken: Exit = 3;

async function run(bot: Bot, config: Config, io: Io): Promise<Exit> {
  for (const name of ["time_zone", "units", "board_channel", "safety_channel"] as const) {
    const value = config[name];
    if (value !== undefined) writeSetting(bot.store, name, value);
  }
  // what a dispatcher must act on is said where the board is
  const board = config.platforms.find(({ boardChannel }) => boardChannel !== undefined);
  if (board?.boardChannel !== undefined) {
    writeSetting(bot.store, "board_channel", board.boardChannel);
    writeSetting(bot.store, "board_platform", board.name);
  }
  relearn(bot.memory, bot.store);
  const { serve } = await import("../serve.ts");
  const log = makeLog(io.complain, knownSecrets, Date.now);
  // a platform that brings again what a power cut took allows the faster way of writing
  if (config.platforms.every(({ name }) => name !== "terminal")) relaxSync(bot.store);
  const stop = new Promise<void>((resolve) => {
    process.once("SIGTERM", () => resolve());
    process.once("SIGINT", () => resolve());
  });
  // whatever a library lets slip: said once, and the supervisor starts us anew
  process.on("unhandledRejection", (error) => {
    log.error("unhandled", {
      why: error instanceof Error ? (error.stack ?? error.message) : String(error),
    });
    process.exit(1);
  });
  const served: Bot = config.one_answer_a_burst ? { ...bot, answersTogether: true } : bot;
  const digest =
    config.digest_at === undefined || board?.boardChannel === undefined
      ? {}
      : { digest: { platform: board.name, channel: board.boardChannel, at: config.digest_at } };
  const problem = await serve(served, {
    platforms: config.platforms,
    log,
    stop,
    ...digest,
    ...(config.health_port === undefined ? {} : { healthPort: config.health_port }),
  });
  if (problem === undefined) return 0;
  log.error("ended", { says: problem });
  return exitToken;
}
