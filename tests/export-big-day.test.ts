import { mkdtempSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { playOfficeDay } from "./support/office-day.ts";
import { run } from "./support/run.ts";

/** Of the machine's time, not of the clock: others may be at work beside it. Several times what it takes. */
const mostCpuS = 30;

test("a day of 200 jobs and 10,000 readings is written whole, every file, and verifies", async () => {
  const folder = mkdtempSync(join(tmpdir(), "big-day-"));
  const db = join(folder, "day.db");
  const readings = playOfficeDay({ path: db, played: 10, times: 20, messages: 19 });
  expect(readings).toBeGreaterThanOrEqual(10_000);
  const before = process.cpuUsage();
  const out = join(folder, "out");
  const ran = await run(["export", "--day", "2026-05-12", "--db", db, "--out", out]);
  const { user, system } = process.cpuUsage(before);
  const seconds = (user + system) / 1e6;
  process.stderr.write(
    `200 jobs, ${readings} readings, all files: ${seconds.toFixed(1)} s of CPU\n`,
  );
  expect(ran.exit).toBe(0);
  expect(readdirSync(out).map((name) => name.replace(/^.*\./, ""))).toEqual(
    expect.arrayContaining(["csv", "xlsx", "pdf", "json"]),
  );
  expect(seconds).toBeLessThan(mostCpuS);
  const proof = await run(["verify", join(out, "2026-05-12.json")]);
  expect(proof.out.join("")).toMatch(/^Intact: \d+ entries of 200 jobs\./);
}, 180_000);
