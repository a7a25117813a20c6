import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { playOfficeDay } from "./support/office-day.ts";
import { run } from "./support/run.ts";

/** Of the machine's time, not of the clock: others may be at work beside it. Several times what it takes. */
const mostCpuS = 30;
/** 278 to 293 measured. */
const mostMb = 320;

const program = "dist/program/main.js";
/** Tells at its end what the program took: microseconds of processor, kilobytes at most. */
const tells =
  "data:text/javascript,process.on('exit',()=>console.log(JSON.stringify(process.resourceUsage())))";

interface Usage {
  readonly userCPUTime: number;
  readonly systemCPUTime: number;
  readonly maxRSS: number;
}

test("a day of 200 jobs and 10,000 readings is written whole, every file, and verifies", async () => {
  const folder = mkdtempSync(join(tmpdir(), "big-day-"));
  const db = join(folder, "day.db");
  const readings = playOfficeDay({ path: db, played: 10, times: 20, messages: 19 });
  expect(readings).toBeGreaterThanOrEqual(10_000);
  const out = join(folder, "out");
  const args = ["export", "--day", "2026-05-12", "--db", db, "--out", out];
  const said = execFileSync(process.execPath, ["--import", tells, program, ...args], {
    encoding: "utf8",
  });
  const usage: Usage = JSON.parse(said.trim().split("\n").at(-1) ?? "");
  const seconds = (usage.userCPUTime + usage.systemCPUTime) / 1e6;
  const mb = usage.maxRSS / 1000;
  process.stderr.write(
    `200 jobs, ${readings} readings, all files: ${seconds.toFixed(1)} s of CPU, ${mb.toFixed(0)} MB\n`,
  );
  expect(readdirSync(out).map((name) => name.replace(/^.*\./, ""))).toEqual(
    expect.arrayContaining(["csv", "xlsx", "pdf", "json"]),
  );
  expect(seconds).toBeLessThan(mostCpuS);
  expect(mb).toBeLessThan(mostMb);
  const proof = await run(["verify", join(out, "2026-05-12.json")]);
  expect(proof.out.join("")).toMatch(/^Intact: \d+ entries of 200 jobs\./);
}, 180_000);
