import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import type { Door } from "../adapters/chat-platform.ts";
import { makeLog } from "../adapters/serve/log.ts";
import { serve } from "../adapters/serve.ts";
import { allJobs } from "../src/bot/memory.ts";
import { type Bot, openBot, tick } from "../src/bot.ts";
import { markOut, putOut, saidOf } from "../src/record/outbox.ts";
import { isCurrent } from "../src/record/readings.ts";
import { backlog } from "../src/record/sending.ts";
import { closeStore } from "../src/record/store.ts";
import { verifyStore } from "../src/record/verify.ts";
import { linesOfDay } from "./day-checks.ts";
import { chanceFrom } from "./support/mutate.ts";
import { type Paper, paperPlatform } from "./support/paper-platform.ts";
import {
  closeScene,
  freshFolder,
  joined,
  openScene,
  type Scene,
  south,
  startBot,
  until,
} from "./support/slack-crew.ts";
import { stopSignal } from "./support/stop-signal.ts";
import { botAt, bring, freshPath, workAll } from "./support/store-on-disk.ts";

/** The machine's clock jumps back and forth, by minutes and by days. */

const hour = 3600_000;
const day = 24 * hour;

/** What is recorded of the jobs, without the clocks and the numbers of entries. */
const recordOf = (bot: Bot) =>
  allJobs(bot.memory).map(({ job, status, readings, parts, files }) => ({
    job,
    status,
    parts: parts.length,
    files: files.length,
    readings: readings.map((reading) => ({
      ...{ quantity: reading.quantity, value: reading.value, said: reading.said },
      ...{ message: reading.message, current: isCurrent(reading) },
    })),
  }));

test.each([1, 2])(
  "clocks ask at most once each and the record is that of a steady clock (%i)",
  (seed) => {
    const lines = linesOfDay("day-b");
    const steady = botAt(freshPath());
    const jumping = botAt(freshPath());
    const chance = chanceFrom(seed);
    lines.forEach((line, at) => {
      bring(steady, line, at);
      workAll(steady);
      const said = Date.parse(JSON.parse(line).at);
      for (let looks = chance.upTo(3); looks > 0; looks--) {
        const now =
          said + (chance.upTo(2 * 600) - 600) * (chance.upTo(4) === 0 ? hour / 10 : 60_000);
        tick(jumping, new Date(now).toISOString(), chance.oneOf(["now", "script"]));
      }
      bring(jumping, line, at);
      workAll(jumping);
    });
    expect(recordOf(jumping)).toEqual(recordOf(steady));
    const asked = saidOf(jumping.store, "clock").map(({ id }) => id);
    expect(asked.length).toBeGreaterThan(0);
    expect(new Set(asked).size).toBe(asked.length);
    expect(verifyStore(jumping.store).faults).toEqual([]);
    // what was asked is known after a restart too: the same moment asks nothing again
    const last = new Date(Date.parse("2026-05-20T00:00:00Z")).toISOString();
    tick(jumping, last);
    const again = openBot(jumping.store, () => "salt");
    expect(tick(again, last)).toEqual([]);
    expect(tick(again, "2026-05-11T00:00:00Z")).toEqual([]);
    closeStore(steady.store);
    closeStore(jumping.store);
  },
);

interface Served {
  readonly bot: Bot;
  readonly paper: Paper;
  /** sets the clock, ms from now */
  readonly jump: (ms: number) => void;
  readonly end: () => Promise<void>;
}

/** A running program on a clock that can be set; `prepare`: what it finds in its store. */
async function served(
  prepare: (bot: Bot) => void = () => {},
  more: Parameters<typeof paperPlatform>[0] = { boardChannel: "board", boardEveryMs: 200 },
): Promise<Served> {
  const bot = botAt(join(freshFolder(), "a.db"));
  prepare(bot);
  const paper = paperPlatform(more);
  let started = false;
  const begin = paper.platform.start;
  const platform = {
    ...paper.platform,
    start: async (door: Door) => {
      started = true;
      return begin(door);
    },
  };
  let offsetMs = 0;
  const { stop, end } = stopSignal();
  const log = makeLog(
    () => {},
    () => [],
    Date.now,
  );
  const ended = serve(bot, {
    platforms: [platform],
    log,
    stop,
    now: () => Date.now() + offsetMs,
  });
  await until("it has started", () => started);
  return {
    bot,
    paper,
    jump: (ms) => {
      offsetMs = ms;
    },
    end: async () => {
      end();
      await ended;
      closeStore(bot.store);
    },
  };
}

const say = ({ paper }: Served, id: string, text: string): void => {
  paper.door().deliver({
    message: {
      platform: "paper",
      id,
      at: new Date().toISOString(),
      channel: "south",
      person: "maren",
      role: "dispatcher",
      text,
      files: [],
    },
  });
};
const answersTo = ({ paper }: Served, id: string) =>
  paper.sent.filter(({ part }) => part.key === `reply:paper:${id}:0`);
const boards = ({ paper }: Served) => paper.sent.filter(({ part }) => part.of === "board");

describe("the running program", () => {
  test("answers each message once, and keeps its board, whatever the clock does", async () => {
    const made = await served();
    await until("it is there", () => boards(made).length > 0);
    const jumps = [0, -day, 3 * day, -5 * day, 0];
    for (const [at, ms] of jumps.entries()) {
      made.jump(ms);
      const before = boards(made).length;
      say(made, `m${at}`, `New job: Gate ${at}A Depot RTU-${at + 1}, warm`);
      await until(`${at} is answered`, () => answersTo(made, `m${at}`).length > 0);
      // the board shows the new job within its own time
      await until(`the board after ${at}`, () => boards(made).length > before);
    }
    await until("nothing waits", () => backlog(made.bot.store).unsent === 0);
    for (const at of jumps.keys()) expect(answersTo(made, `m${at}`)).toHaveLength(1);
    expect(allJobs(made.bot.memory)).toHaveLength(jumps.length);
    await made.end();
  });

  test("sends at once what an earlier run put off by a clock that ran days ahead", async () => {
    const made = await served(({ store }) => {
      putOut(store, {
        id: "late",
        platform: "paper",
        channel: "south",
        kind: "alert",
        text: "late",
        files: [],
      });
      markOut(store, "late", {
        state: "pending",
        not_before: new Date(Date.now() + 2 * day).toISOString(),
      });
    });
    await until("it is out", () => made.paper.sent.some(({ part }) => part.key === "late"));
    await made.end();
  });

  test("looks at once for what it tried to send just before its clock was set back", async () => {
    let jump: (ms: number) => void = () => {};
    let tries = 0;
    const looked: number[] = [];
    const made = await served(() => {}, {
      settleMs: 50,
      send: async () => {
        tries += 1;
        jump(-2 * day);
        return tries === 1 ? { kind: "unclear", why: "cut" } : { kind: "sent", remote: "r" };
      },
      find: async (_part, since) => {
        looked.push(since);
        return { kind: "found", remote: "r" };
      },
    });
    jump = made.jump;
    say(made, "m0", "New job: Gate 1A Depot RTU-1, warm");
    await until("it is looked for", () => looked.length > 0);
    expect(looked[0]).toBeLessThanOrEqual(Date.now() - day);
    await until("nothing waits", () => backlog(made.bot.store).unsent === 0);
    await made.end();
  });
});

describe("on Slack, with a clock two hours ahead", () => {
  const scenes: Scene[] = [];
  afterEach(async () => {
    for (const one of scenes.splice(0)) expect(await closeScene(one)).toEqual([]);
  });

  test("an answer whose fate is unclear stands in the room once", async () => {
    const made = await openScene({ board: false });
    scenes.push(made);
    await made.bot.stop();
    // over the socket and in history the times are Slack's own
    made.bot = startBot(made.folder, made.settings, { now: () => Date.now() + 2 * hour });
    await joined(made);
    const left = [{ kind: "cut", afterStoring: true } as const];
    made.standIn.fault = (name) => (name === "chat.postMessage" ? left.shift() : undefined);
    made.standIn.say("U0MAREN", south, "New job: Gull Wharf OU-3, not cooling. Sorrel");
    await until("nothing waits", () => {
      const { unsent, new: waiting } = backlog(made.bot.bot.store);
      return left.length === 0 && unsent + waiting === 0;
    });
    expect(made.standIn.bot(south)).toHaveLength(1);
  });
});
