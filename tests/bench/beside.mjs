// Two builds beside each other: `node tests/bench/beside.mjs OTHER` plays the same jobs to this checkout and
// to OTHER, in turn and in one process, and prints the processor time of a message, said alone and in bursts.
// On a machine that others use a figure means nothing alone; the share of two that were taken together does.
// READBACK_BENCH_AT_HAND: done jobs that both know (300); READBACK_BENCH_JOBS: jobs played (60).
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { folder, quantile, siteAt, tell, visit } from "./support/store.mjs";

const atHand = Number(process.env.READBACK_BENCH_AT_HAND ?? 300);
const jobs = Number(process.env.READBACK_BENCH_JOBS ?? 60);
const start = Date.parse("2026-05-12T12:00:00Z");
const base = folder();

async function side(checkout, name) {
  const load = (file) => import(pathToFileURL(join(resolve(checkout), "dist/src", file)).href);
  const { openStore } = await load("record/store.js");
  const { openBot, receive, work } = await load("bot.js");
  const { store } = openStore(join(base, `${name}.db`));
  store.db.pragma("synchronous = OFF");
  let count = 0;
  const bot = openBot(store, () => `salt ${count++}`);
  return { bot: { ...bot, answersTogether: true, boardElsewhere: true }, receive, work, store };
}

const spent = () => {
  const { user, system } = process.cpuUsage();
  return user + system;
};

/** What is said on a job; `every` so many messages are worked on together, 2 s apart. */
function play({ bot, receive, work }, job, { texts, every }) {
  const thread = `j${job}`;
  const began = spent();
  for (const [n, text] of texts.entries()) {
    const at = new Date(start + job * 200_000 + n * (every > 1 ? 2000 : 8000)).toISOString();
    const opens = n === 0;
    const message = {
      platform: "bench",
      id: opens ? thread : `${thread}.${n}`,
      at,
      channel: `crew ${job % 20}`,
      person: opens ? "maren" : `tech${job % 100}`,
      role: opens ? "dispatcher" : "tech",
      text,
      files: [],
      ...(opens ? {} : { thread }),
    };
    receive(bot, { message });
    if (n % every !== 0 && n < texts.length - 1) continue;
    for (const { error } of work(bot, Number.POSITIVE_INFINITY, Date.parse(at)))
      if (error !== undefined) throw new Error(error);
  }
  return (spent() - began) / texts.length;
}

const openingOf = (job) => `New job: ${siteAt(job)} RTU-${1 + (job % 9)}, not cooling`;
const whole = (job) => [openingOf(job), ...visit, "done, leaving"];
const short = (job) => [openingOf(job), visit[job % visit.length], "done, leaving"];

const [other] = process.argv.slice(2);
if (other === undefined) throw new Error("Which other checkout? It must have been built.");
const sides = [await side(other, "other"), await side(".", "this")];
for (const one of sides)
  for (let job = 0; job < atHand; job++) play(one, job, { texts: short(job), every: 1 });
const said = (one) =>
  JSON.stringify(one.store.db.prepare("SELECT id, text, detail FROM outbox ORDER BY id").all());
let next = atHand;
for (const every of [1, 4]) {
  const times = sides.map(() => []);
  for (let played = 0; played < jobs; played++, next++) {
    const order = played % 2 === 0 ? [0, 1] : [1, 0];
    // a program compiles while it runs: the first third is not counted
    for (const at of order) {
      const time = play(sides[at], next, { texts: whole(next), every });
      if (played >= jobs / 3) times[at].push(time);
    }
  }
  const [before, after] = times.map((all) => all.sort((a, b) => a - b));
  const what = every === 1 ? "said alone" : `${every} at a time`;
  tell(
    [0.1, 0.5].map((share) => ({
      what: `${what}: processor a message, us, quantile ${share}: other, this, this to other`,
      value: [quantile(before, share), quantile(after, share)].map(Math.round),
      share: Number((quantile(after, share) / quantile(before, share)).toFixed(2)),
    })),
  );
}
const [first, second] = sides.map(said);
tell([{ what: "both answered the same", value: first === second }]);
for (const { store } of sides) store.db.close();
