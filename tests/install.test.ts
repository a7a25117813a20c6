import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { expect, test } from "vitest";
import { z } from "zod";

const LockFile = z.object({
  packages: z.record(
    z.string(),
    z.object({
      resolved: z.string().optional(),
      hasInstallScript: z.boolean().optional(),
      optional: z.boolean().optional(),
    }),
  ),
});

const resolve = createRequire(import.meta.url).resolve;
const nativeName = "@matrix-org/matrix-sdk-crypto-nodejs";

test("the chat library gets our crypto package, not the one that downloads a binary", () => {
  const fromTheSdk = createRequire(resolve("matrix-bot-sdk")).resolve(nativeName);
  expect(fromTheSdk).toBe(resolve(nativeName));
  const text = readFileSync(resolve(`${nativeName}/package.json`), "utf8");
  expect(text).toContain("Stands in for the native crypto package");
});

test("the chat libraries load without a native download", async () => {
  const { MatrixClient } = await import("matrix-bot-sdk");
  const { App } = await import("@slack/bolt");
  expect([typeof MatrixClient, typeof App]).toEqual(["function", "function"]);
});

test("the lock file names no registry host, and only the database driver runs a script at install", () => {
  const lock = LockFile.parse(JSON.parse(readFileSync("package-lock.json", "utf8")));
  const packages = Object.entries(lock.packages);
  expect(packages.filter(([, p]) => p.resolved?.startsWith("http"))).toEqual([]);
  const scripted = packages.filter(([name, p]) => name !== "" && p.hasInstallScript && !p.optional);
  expect(scripted.map(([name]) => name)).toEqual(["node_modules/better-sqlite3"]);
});
