import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { closeSync, openSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { until } from "./server.ts";

/** The program itself, as a process of its own. */
export interface BotProcess {
  readonly folder: string;
  readonly log: () => readonly string[];
  /** resolves when it is connected */
  readonly start: () => Promise<void>;
  /** does not wait for anything */
  readonly launch: () => void;
  readonly kill: (signal: "SIGKILL" | "SIGTERM") => Promise<number | null>;
  /** its exit status, once it ended by itself */
  readonly ended: () => Promise<number | null>;
  readonly check: () => string;
}

const program = "dist/program/main.js";

/** Compiles what is started: the tests would otherwise run against an older state. */
export function build(): void {
  execFileSync("node_modules/.bin/tsc", ["-p", "tsconfig.build.json"], { stdio: "ignore" });
}

export function botProcess(folder: string, config: object): BotProcess {
  const file = join(folder, "bot.json");
  const out = join(folder, "bot.log");
  writeFileSync(file, JSON.stringify(config));
  writeFileSync(out, "");
  let child: ChildProcess | undefined;
  const log = (): readonly string[] => readFileSync(out, "utf8").split("\n");
  const launch = (): ChildProcess => {
    const fd = openSync(out, "a");
    const made = spawn("node", [program, "serve", "--config", file], {
      stdio: ["ignore", fd, fd],
    });
    closeSync(fd);
    child = made;
    return made;
  };
  return {
    folder,
    log,
    launch: () => void launch(),
    start: async () => {
      const from = log().length;
      const child = launch();
      let over = false;
      child.once("exit", () => {
        over = true;
      });
      await until(
        () =>
          over ||
          log()
            .slice(from - 1)
            .some((line) => line.includes('"event":"connected"')),
        120_000,
        "the bot",
      );
      if (over) throw new Error(`the bot ended: ${log().slice(-5).join("\n")}`);
    },
    kill: async (signal) => {
      const mine = child;
      if (mine === undefined || mine.exitCode !== null || mine.signalCode !== null)
        return mine?.exitCode ?? null;
      const gone = new Promise<number | null>((resolve) => mine.once("exit", resolve));
      mine.kill(signal);
      return gone;
    },
    ended: async () => {
      await until(() => child?.exitCode !== null, 120_000, "the bot's end");
      return child?.exitCode ?? null;
    },
    check: () =>
      execFileSync("node", [program, "serve", "--config", file, "--check"], { encoding: "utf8" }),
  };
}
