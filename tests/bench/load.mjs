// 500 technicians, each one message every 2 seconds, on one process as it is served: none may be
// lost. READBACK_BENCH_MINUTES: how long (10 in the figures). What waits is measured from the moment
// at which the message was due, so that a process that cannot keep up shows it.
import { join } from "node:path";
import { makeLog } from "../../dist/adapters/serve/log.js";
import { serve } from "../../dist/adapters/serve.js";
import { closeStore, relaxSync } from "../../dist/src/record/store.js";
import { verifyStore } from "../../dist/src/record/verify.js";
import { botOn, folder, numerically, quantile, siteAt, tell, visit } from "./support/store.mjs";

const technicians = Number(process.env.READBACK_BENCH_TECHNICIANS ?? 500);
const minutes = Number(process.env.READBACK_BENCH_MINUTES ?? 10);
const everyMs = 2000;

const bot = botOn(join(folder(), "load.db"));
relaxSync(bot.store);
let door;
const due = new Map();
const waits = [];
/** As long as a program compiles what it runs, by what was seen. */
const warmMs = 60_000;
const waitsWarm = [];
const platform = {
  name: "bench",
  longest: 4000,
  boardEveryMs: 3000,
  boardChannel: "board",
  start: async (given) => {
    door = given;
    return "";
  },
  send: async (part) => {
    const answered = part.key.split(":")[2] ?? "";
    const was = due.get(answered);
    if (part.of === "reply" && was !== undefined) {
      waits.push(performance.now() - was);
      if (was - began > warmMs) waitsWarm.push(performance.now() - was);
    }
    return { kind: "sent", remote: part.key };
  },
  find: async () => ({ kind: "absent" }),
  stop: async () => {},
  check: async () => [],
};
let end;
const stop = new Promise((resolve) => {
  end = resolve;
});
const ended = serve(
  { ...bot, answersTogether: true },
  {
    platforms: [platform],
    log: makeLog(
      () => {},
      () => [],
      Date.now,
    ),
    stop,
  },
);
await new Promise((resolve) => setTimeout(resolve, 100));

let sent = 0;
function deliver(n, turn, when) {
  const id = `t${n}.${turn}`;
  const thread = `t${n}.${turn - (turn % 22)}`;
  const inJob = turn % 22;
  const text =
    inJob === 0
      ? `New job: ${siteAt(n)} RTU-${1 + (n % 9)}${"abc"[Math.floor(n / 200)] ?? ""}, not cooling`
      : inJob === 21
        ? "done, leaving"
        : (visit[inJob - 1] ?? "");
  due.set(id, when);
  door.deliver({
    message: {
      platform: "bench",
      id,
      at: new Date().toISOString(),
      channel: `crew ${n % 20}`,
      person: `tech${n}`,
      role: inJob === 0 ? "dispatcher" : "tech",
      text,
      files: [],
      ...(inJob === 0 ? {} : { thread }),
    },
  });
  sent++;
}

const cpu = process.cpuUsage();
const began = performance.now();
const turns = Math.round((minutes * 60_000) / everyMs);
for (let turn = 0; turn < turns; turn++) {
  for (let n = 0; n < technicians; n++) {
    const when = began + turn * everyMs + (n * everyMs) / technicians;
    const left = when - performance.now();
    if (left > 1) await new Promise((resolve) => setTimeout(resolve, left));
    else if (n % 8 === 0) await new Promise((resolve) => setImmediate(resolve));
    deliver(n, turn, when);
  }
}
const open = () =>
  bot.store.db.prepare("SELECT count(*) FROM inbox WHERE state = 'new'").pluck().get();
const over = performance.now();
while (open() > 0 && performance.now() - over < 600_000)
  await new Promise((resolve) => setTimeout(resolve, 50));
const drained = performance.now() - over;
await new Promise((resolve) => setTimeout(resolve, 200));
const { user, system } = process.cpuUsage(cpu);
end();
await ended;
const kept = bot.store.db.prepare("SELECT count(*) FROM inbox").pluck().get();
const parked = bot.store.db
  .prepare("SELECT count(*) FROM inbox WHERE state IN ('failed', 'new')")
  .pluck()
  .get();
const verdict = verifyStore(bot.store);
closeStore(bot.store);
waits.sort(numerically);
waitsWarm.sort(numerically);
tell([
  {
    what: `${technicians} technicians, a message every 2 s, ${minutes} min: sent`,
    value: sent,
    unit: "",
  },
  {
    what: "lost or left undone",
    value: sent - kept + parked + verdict.faults.length,
    unit: "",
    target: "0",
  },
  { what: "from due to answered, p50", value: Math.round(quantile(waits, 0.5)), unit: "ms" },
  { what: "p99", value: Math.round(quantile(waits, 0.99)), unit: "ms", target: "< 1000" },
  ...(waitsWarm.length === 0
    ? []
    : [
        {
          what: "p99 without the first minute",
          value: Math.round(quantile(waitsWarm, 0.99)),
          unit: "ms",
          target: "< 1000",
        },
      ]),
  {
    what: "processor a message",
    value: Number(((user + system) / 1000 / sent).toFixed(2)),
    unit: "ms",
  },
  { what: "still to do when the last had come", value: Math.round(drained), unit: "ms" },
  { what: "memory at the end", value: Math.round(process.memoryUsage().rss / 2 ** 20), unit: "MB" },
]);
process.exitCode = 0;
