// Messages kept, worked on and answered durably, one by one, on a job of 20 readings; beside a loop of
// as many bare one-row commits as one message costs, on the same disk at the same `synchronous`. A program
// that has just started compiles as it goes: its first messages are measured too, and named so.
import { join } from "node:path";
import { relaxSync } from "../../dist/src/record/store.js";
import {
  botOn,
  close,
  crewAt,
  folder,
  opened,
  say,
  siteAt,
  tell,
  visit,
} from "./support/store.mjs";

const start = Date.parse("2026-05-12T12:00:00Z");
const at = (n) => new Date(start + n * 30_000).toISOString();
const jobs = Number(process.env.READBACK_BENCH_JOBS ?? 25);
/** jobs worked on between the first that are measured and the last */
const between = Number(process.env.READBACK_BENCH_BETWEEN ?? 100);

function loop(bot, from, count) {
  let said = 0;
  for (let job = from; job < from + count; job++) {
    const thread = `j${job}`;
    say(bot, {
      id: thread,
      at: at(job * 40),
      role: "dispatcher",
      person: "maren",
      text: `New job: ${siteAt(job)} RTU-${job % 7}, not cooling`,
    });
    for (const [n, text] of visit.entries()) {
      say(bot, {
        id: `${thread}.${n}`,
        at: at(job * 40 + n + 1),
        person: crewAt(job),
        thread,
        text,
      });
      said++;
    }
    // what is done does not stay on the board
    say(bot, {
      id: `${thread}.done`,
      at: at(job * 40 + 30),
      person: crewAt(job),
      thread,
      text: "done, leaving",
    });
    said += 2;
  }
  return said;
}

/** Seconds of wall and processor for a piece of work, with what it gives. */
function timed(work) {
  const cpu = process.cpuUsage();
  const began = performance.now();
  const result = work();
  const wall = (performance.now() - began) / 1000;
  const { user, system } = process.cpuUsage(cpu);
  return { result, wall, cpu: (user + system) / 1e6 };
}

function bare(path, relaxed, commits) {
  const store = opened(path);
  if (relaxed) relaxSync(store);
  store.db.exec("CREATE TABLE bare (id INTEGER PRIMARY KEY, text TEXT)");
  const insert = store.db.prepare("INSERT INTO bare (text) VALUES (?)");
  const text = "x".repeat(200);
  const { wall } = timed(() => {
    for (let n = 0; n < commits; n++) insert.run(text);
  });
  store.db.close();
  return commits / wall;
}

const rows = [];
for (const relaxed of [false, true]) {
  const base = folder();
  const bot = botOn(join(base, "a.db"));
  if (relaxed) relaxSync(bot.store);
  loop(bot, 0, 5);
  const first = timed(() => loop(bot, 5, jobs));
  const before = 5 + jobs + between;
  loop(bot, 5 + jobs, between);
  const { result: said, wall, cpu } = timed(() => loop(bot, before, jobs));
  // one to keep a message before it is acknowledged, one for all that follows from it
  const commits = 2;
  close(bot);
  const barePerSecond = bare(join(base, "bare.db"), relaxed, 2000);
  const perSecond = said / wall;
  const name = relaxed ? "as served (synchronous NORMAL)" : "fully synced (synchronous FULL)";
  rows.push(
    {
      what: `durable messages a second, ${name}`,
      value: Math.round(perSecond),
      unit: "1/s",
      target: relaxed ? undefined : ">= 400",
    },
    { what: `the same by processor time`, value: Math.round(said / cpu), unit: "1/s" },
    {
      what: `the first after a start, ${name}`,
      value: Math.round(first.result / first.wall),
      unit: "1/s",
    },
    {
      what: `the first by processor time`,
      value: Math.round(first.result / first.cpu),
      unit: "1/s",
    },
    { what: `commits a message`, value: commits, unit: "" },
    {
      what: `bare one-row commits a second / ${commits}, ${name}`,
      value: Math.round(barePerSecond / commits),
      unit: "1/s",
    },
    {
      what: `messages to bare commits`,
      value: Number((perSecond / (barePerSecond / commits)).toFixed(2)),
      unit: "x",
      target: relaxed ? undefined : ">= 0.6",
    },
  );
}
tell(rows);
