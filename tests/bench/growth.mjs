// Start-up, time of a message and memory with 100, 10,000 and 1,000,000 readings in the store; a
// day's export from the largest. Each size runs in a process of its own.
import { execFileSync } from "node:child_process";
import { statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { exportRecord } from "../../dist/src/bot/export-record.js";
import { allJobs } from "../../dist/src/bot/memory.js";
import { relaxSync } from "../../dist/src/record/store.js";
import { boardText } from "../../dist/src/show/board.js";
import { exportFiles } from "../../dist/src/show/exports/export-files.js";
import { dayMs, history, measured } from "./support/history.mjs";
import {
  botOn,
  close,
  crewAt,
  folder,
  numerically,
  quantile,
  say,
  tell,
  visit,
} from "./support/store.mjs";

const self = fileURLToPath(import.meta.url);
const [command, path, given] = process.argv.slice(2);

if (command === "start") {
  const cpu = process.cpuUsage();
  const began = performance.now();
  const bot = botOn(path);
  const wall = performance.now() - began;
  const { user, system } = process.cpuUsage(cpu);
  console.log(
    JSON.stringify({ wall, cpu: (user + system) / 1000, jobs: allJobs(bot.memory).length }),
  );
  close(bot);
} else if (command === "messages") {
  const bot = botOn(path);
  relaxSync(bot.store);
  const end = Number(given);
  const times = [];
  const cpus = [];
  for (let round = 0; round < 24; round++) {
    const at = (n) => new Date(end + round * 3600_000 + n * 60_000).toISOString();
    const thread = `n${round}`;
    // one unit with the same past in every store
    say(bot, {
      id: thread,
      at: at(0),
      role: "dispatcher",
      person: "maren",
      text: `New job: ${measured.site} ${measured.unit}, warm`,
    });
    for (const [n, text] of visit.entries()) {
      const cpu = process.cpuUsage();
      const began = performance.now();
      say(bot, { id: `${thread}.${n}`, at: at(n + 1), person: crewAt(round), thread, text });
      // the first rounds warm the program up, and meet what rests
      if (round < 8) continue;
      times.push(performance.now() - began);
      const { user, system } = process.cpuUsage(cpu);
      cpus.push((user + system) / 1000);
    }
    say(bot, {
      id: `${thread}.x`,
      at: at(40),
      role: "dispatcher",
      person: "maren",
      deletes: thread,
    });
  }
  times.sort(numerically);
  globalThis.gc?.();
  console.log(
    JSON.stringify({
      p50: quantile(times, 0.5),
      p99: quantile(times, 0.99),
      cpu: cpus.reduce((sum, one) => sum + one, 0) / cpus.length,
      memory: process.memoryUsage().rss / 2 ** 20,
      heap: process.memoryUsage().heapUsed / 2 ** 20,
    }),
  );
  close(bot);
} else if (command === "export") {
  const bot = botOn(path);
  const day = new Date(Number(given) - dayMs).toISOString().slice(0, 10);
  const began = performance.now();
  const record = exportRecord(bot, { kind: "day", day });
  const files = [];
  for await (const file of exportFiles(record)) files.push(file.name);
  console.log(
    JSON.stringify({
      wall: performance.now() - began,
      jobs: record.jobs.length,
      files: files.length,
    }),
  );
  close(bot);
} else if (command === "board") {
  const bot = botOn(path);
  const jobs = allJobs(bot.memory);
  const now = new Date(Number(given)).toISOString();
  const times = [];
  for (let n = 0; n < 200; n++) {
    const began = performance.now();
    boardText(jobs, now, {});
    times.push(performance.now() - began);
  }
  times.sort(numerically);
  console.log(
    JSON.stringify({
      p50: quantile(times, 0.5),
      open: jobs.filter(({ status }) => status !== "done").length,
    }),
  );
  close(bot);
} else {
  const sizes = [100, 10_000, Number(process.env.READBACK_BENCH_READINGS ?? 1_000_000)];
  const run = (...args) =>
    JSON.parse(
      execFileSync(process.execPath, ["--expose-gc", self, ...args.map(String)], {
        encoding: "utf8",
      }),
    );
  const rows = [];
  const base = folder();
  const found = [];
  for (const size of sizes) {
    const file = join(base, `${size}.db`);
    const { end } = history(file, size, 0);
    const starts = [run("start", file), run("start", file), run("start", file)].sort(
      (a, b) => a.wall - b.wall,
    );
    const start = starts[0];
    // the day's export first: what is measured next writes into the store
    const exported = size === sizes.at(-1) ? run("export", file, end) : undefined;
    const messages = run("messages", file, end + dayMs);
    found.push({ size, ...messages });
    rows.push(
      {
        what: `start-up with ${size} readings (${start.jobs} jobs at hand)`,
        value: Math.round(start.wall),
        unit: "ms",
        target: size >= 1_000_000 ? "< 500" : undefined,
      },
      { what: `the same by processor time`, value: Math.round(start.cpu), unit: "ms" },
      {
        what: `a message with ${size} readings in the store, p50`,
        value: Number(messages.p50.toFixed(2)),
        unit: "ms",
      },
      { what: `p99`, value: Number(messages.p99.toFixed(2)), unit: "ms" },
      { what: `mean processor time`, value: Number(messages.cpu.toFixed(2)), unit: "ms" },
      {
        what: `memory (heap / all)`,
        value: `${Math.round(messages.heap)} / ${Math.round(messages.memory)}`,
        unit: "MB",
      },
      { what: `size of the store`, value: Math.round(statSync(file).size / 2 ** 20), unit: "MB" },
    );
    if (exported !== undefined)
      rows.push({
        what: `a day's export (${exported.jobs} jobs, ${exported.files} files) out of ${size} readings`,
        value: Math.round(exported.wall),
        unit: "ms",
      });
  }
  const growth = (name) => Number((found.at(-1)[name] / found[0][name]).toFixed(2));
  rows.push(
    {
      what: `growth of a message's p50 from ${sizes[0]} to ${sizes.at(-1)} readings`,
      value: growth("p50"),
      unit: "x",
      target: "<= 1.3",
    },
    { what: `growth of its p99`, value: growth("p99"), unit: "x", target: "<= 1.3" },
    { what: `growth of its processor time`, value: growth("cpu"), unit: "x", target: "<= 1.3" },
    { what: `growth of memory`, value: growth("memory"), unit: "x", target: "<= 1.3" },
  );
  const busy = join(base, "open.db");
  const { end } = history(busy, 200 * visit.length, 200);
  const board = run("board", busy, end);
  rows.push({
    what: `the board with ${board.open} open jobs, p50`,
    value: Number(board.p50.toFixed(2)),
    unit: "ms",
  });
  tell(rows);
}
