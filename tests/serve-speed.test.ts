import { join } from "node:path";
import { expect, test } from "vitest";
import { makeLog } from "../adapters/serve/log.ts";
import { serve } from "../adapters/serve.ts";
import { allJobs } from "../src/bot/memory.ts";
import { openBot } from "../src/bot.ts";
import { backlog } from "../src/record/sending.ts";
import { closeStore, openStore, relaxSync } from "../src/record/store.ts";
import { watchMachine } from "./support/busy-machine.ts";
import { paperPlatform } from "./support/paper-platform.ts";
import { freshFolder, until } from "./support/slack-crew.ts";
import { stopSignal } from "./support/stop-signal.ts";

const perSecond = 50;
const seconds = 6;
const crew = 25;

/** From the moment a message arrives to the moment its answer is handed to the platform, in ms. */
async function round(): Promise<readonly number[]> {
  const opened = openStore(join(freshFolder(), "speed.db"));
  if (!opened.ok) throw new Error(opened.problem);
  relaxSync(opened.store);
  let count = 0;
  const bot = openBot(opened.store, () => `salt ${count++}`);
  const paper = paperPlatform({ boardChannel: "board" });
  const { stop, end } = stopSignal();
  const log = makeLog(
    () => {},
    () => [],
    Date.now,
  );
  const ended = serve(bot, { platforms: [paper.platform], log, stop });
  await until("started", () => paper.sent.length >= 0);
  const arrived = new Map<string, number>();
  const say = (nth: number, text: string): void => {
    const id = `m${nth}`;
    arrived.set(id, performance.now());
    paper.door().deliver({
      message: {
        platform: "paper",
        id,
        at: new Date().toISOString(),
        channel: `channel ${nth % crew}`,
        person: `person ${nth % crew}`,
        role: "tech",
        text,
        files: [],
      },
      cursor: { platform: "paper", conversation: `channel ${nth % crew}`, value: id },
    });
  };
  for (let i = 0; i < crew; i++) say(i, `New job: Gate ${i}A Depot RTU-${i + 1}, warm`);
  await until("the jobs are open", () => allJobs(bot.memory).length === crew);
  const settled = (): boolean => {
    const { new: waiting, unsent } = backlog(bot.store);
    return waiting === 0 && unsent === 0;
  };
  // what a burst of openings leaves to do is no part of a steady stream
  await until("the openings are answered", settled);
  const start = performance.now();
  for (let i = crew; i < crew + perSecond * seconds; i++) {
    const due = start + ((i - crew) * 1000) / perSecond;
    await until("it is time", () => performance.now() >= due);
    say(
      i,
      `RTU-${(i % crew) + 1} comp 1 lead ${(i % 3) + 1} to ground ${80 + (i % 40)} megohm at 500 V`,
    );
  }
  const answers = () => paper.sent.filter(({ part }) => part.of === "reply");
  // what was overtaken by its author's next reading is answered with that one
  await until("all are answered", settled);
  expect(answers().length).toBeGreaterThan(arrived.size / 2);
  expect(paper.sent.some(({ part }) => part.of === "board")).toBe(true);
  end();
  await ended;
  closeStore(opened.store);
  return answers()
    .slice(crew)
    .map(({ part, at }) => at - (arrived.get(part.key.split(":")[2] ?? "") ?? 0))
    .sort((a, b) => a - b);
}

/** Where others take the processors for so long, nothing can be said about our own times: alone it is 3.9 at most. */
const busyMs = 4.2;

/** The plain work of `watchMachine` where 20 ms were first held; a machine that does it slower gets its time in proportion. */
const quickPace = 1.2;

/** Processor time of one message, with the waiting of the test itself, which is most of it. */
const mostProcessor = 15;

test("at 50 messages a second, board up, the store on disk, 99 of 100 answers are handed over within 20 ms", async () => {
  // unjudged: a server runs for weeks, and most of it is compiled within its first thousand messages
  for (let warm = 0; warm < 3; warm++) await round();
  const judged: number[] = [];
  for (let tries = 0; tries < 8 && !judged.some((share) => share < 1); tries++) {
    const watch = watchMachine();
    const cpu = process.cpuUsage();
    const times = await round();
    const { user, system } = process.cpuUsage(cpu);
    const { late, pace } = await watch.stop();
    const at = (share: number): number => times[Math.floor(times.length * share)] ?? 0;
    const each = (user + system) / 1000 / times.length;
    const slower = Math.max(1, pace / quickPace);
    process.stdout.write(
      `received to handed over: p50 ${at(0.5).toFixed(1)} ms, p99 ${at(0.99).toFixed(1)} ms, worst ${(times.at(-1) ?? 0).toFixed(1)} ms of ${times.length}; ${each.toFixed(1)} ms of processor each; naps of others' making late by ${late.toFixed(1)} ms, plain work ${pace.toFixed(2)} ms\n`,
    );
    if (late < busyMs)
      judged.push(Math.max(at(0.99) / (20 * slower), each / (mostProcessor * slower)));
  }
  if (judged.length === 0) {
    process.stderr.write("NOT JUDGED: the machine was too busy to measure answer times\n");
    expect((process.env.READBACK_REQUIRE ?? "").split(",")).not.toContain("quiet-machine");
    return;
  }
  expect(Math.min(...judged)).toBeLessThan(1);
}, 180_000);
