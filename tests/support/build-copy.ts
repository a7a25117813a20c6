import { type ChildProcess, spawn } from "node:child_process";
import { cpSync, existsSync, rmSync, writeFileSync } from "node:fs";
import { afterAll, expect } from "vitest";

/**
 * A copy of the build for tests that start the program, so that building again meanwhile changes
 * nothing for them: gives the command line's file. It goes when the test file is through.
 */
export function copyOfBuild(name: string): string {
  const copy = `node_modules/.cache/readback-${name}-${process.pid}`;
  const main = "program/main.js";
  expect(existsSync(`dist/${main}`), "the build is missing: npm run build").toBe(true);
  cpSync("dist", copy, { recursive: true });
  writeFileSync(`${copy}/package.json`, '{"type":"module"}');
  // removing some 1,300 files takes long on a machine that has other work to do
  afterAll(() => rmSync(copy, { recursive: true, force: true }), 120_000);
  return `${copy}/${main}`;
}

/** The program serving chat platforms in a process of its own. */
export interface Serving {
  readonly process: ChildProcess;
  /** what it logged so far */
  readonly logs: () => string;
  /** its exit status; null where a signal ended it */
  readonly ended: Promise<number | null>;
}

export function startServing(main: string, config: string): Serving {
  const child = spawn(process.execPath, [main, "serve", "--config", config], {
    stdio: ["ignore", "ignore", "pipe"],
  });
  let logs = "";
  child.stderr.on("data", (chunk: Buffer) => {
    logs += chunk.toString();
  });
  const ended = new Promise<number | null>((resolve) =>
    child.once("exit", (code) => resolve(code)),
  );
  return { process: child, logs: () => logs, ended };
}
