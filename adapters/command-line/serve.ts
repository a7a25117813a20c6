import { readFileSync } from "node:fs";
import { z } from "zod";
import { relearn } from "../../src/bot/memory.ts";
import { writeSetting } from "../../src/record/settings.ts";
import { platforms } from "../list.ts";
import { type Started, serve } from "../serve.ts";
import { type Command, textOption } from "./command.ts";
import { unitHabit } from "./input-shapes.ts";
import { withBot } from "./open-db.ts";

const timeZone = z.string().refine((zone) => {
  try {
    new Intl.DateTimeFormat("en", { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}, "must be an IANA time zone, like America/Chicago");

const shape = z.strictObject({
  db: z.string().min(1),
  time_zone: timeZone.optional(),
  units: unitHabit.optional(),
  board_channel: z.string().min(1).optional(),
  platforms: z.record(z.string(), z.unknown()),
});
type Config = z.infer<typeof shape>;

function readConfig(path: string): Config | string {
  let text: string;
  try {
    text = readFileSync(path, "utf8");
  } catch {
    return `There is no configuration ${path} that can be read.`;
  }
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    return `${path} is not JSON: ${error instanceof Error ? error.message : ""}.`;
  }
  const parsed = shape.safeParse(json);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  return `${path}: "${issue?.path.join(".") ?? ""}" ${issue?.message ?? "does not fit"}.`;
}

function startedFrom(config: Config): readonly Started[] | string {
  const started: Started[] = [];
  for (const [name, settings] of Object.entries(config.platforms)) {
    const platform = platforms.find((one) => one.name === name);
    if (platform === undefined) {
      return `There is no platform "${name}"; known: ${platforms.map((one) => one.name).join(", ")}.`;
    }
    started.push({ platform, config: settings });
  }
  return started.length > 0 ? started : 'No platform stands under "platforms".';
}

/** Runs the chat platforms of a configuration file. */
export const serveCommand: Command = {
  name: "serve",
  usage: "--config FILE",
  about: "runs the configured chat platforms until it is told to stop",
  options: { config: { type: "string", about: "the configuration, JSON" } },
  words: [0, 0],
  run: async (given, io) => {
    const path = textOption(given, "config");
    const config =
      path === undefined ? "Which configuration? Say --config FILE." : readConfig(path);
    const started = typeof config === "string" ? config : startedFrom(config);
    if (typeof config === "string" || typeof started === "string") {
      io.complain(typeof config === "string" ? config : String(started));
      return 2;
    }
    const stop = new Promise<void>((resolve) => {
      process.once("SIGTERM", () => resolve());
      process.once("SIGINT", () => resolve());
    });
    return withBot({ words: [], options: { db: config.db } }, io, {
      readonly: false,
      run: async (bot) => {
        for (const name of ["time_zone", "units", "board_channel"] as const) {
          const value = config[name];
          if (value !== undefined) writeSetting(bot.store, name, value);
        }
        relearn(bot.memory, bot.store);
        const problem = await serve(bot, started, { log: io.complain, stop });
        if (problem === undefined) return 0;
        io.complain(problem.problem);
        return 2;
      },
    });
  },
};
