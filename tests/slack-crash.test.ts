import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { z } from "zod";
import { allJobs } from "../src/bot/memory.ts";
import { openBot } from "../src/bot.ts";
import { closeStore, openStore } from "../src/record/store.ts";
import { verifyStore } from "../src/record/verify.ts";
import { copyOfBuild, startServing } from "./support/build-copy.ts";
import { randomFrom } from "./support/random.ts";
import {
  channels,
  freePort,
  freshFolder,
  people,
  slackSettings,
  south,
  until,
} from "./support/slack-crew.ts";
import { startSlackStandIn } from "./support/slack-stand-in.ts";

/** How often the bot is killed on each transport, and how many messages come in meanwhile. */
const kills = Number(process.env.READBACK_SLACK_KILLS ?? 5);
const messages = kills * 30;
/** Other seeds kill at other points. */
const seed = Number(process.env.READBACK_SEED ?? 11);
const units = 12;
/** How many times as long as usual is waited for, where the machine has other work to do. */
const patience = Number(process.env.READBACK_PATIENCE ?? 1);

const main = copyOfBuild("slack-crash");

const metadata = z.object({ event_payload: z.object({ key: z.string() }) });

test.each(["http", "socket"] as const)(
  "killed at random over %s, one answer in seven lost: every message has one answer in the room",
  async (transport) => {
    const random = randomFrom(transport === "http" ? seed : seed + 1);
    const port = await freePort();
    const standIn = await startSlackStandIn({
      channels,
      retriesMs: [20, 500, 1500],
      ...(transport === "http" ? { eventsUrl: `http://127.0.0.1:${port}/slack/events` } : {}),
    });
    standIn.delivery.chaos.duplicate = 0.1;
    standIn.delivery.chaos.shuffleMs = 30;
    standIn.fault = (method) =>
      method === "chat.postMessage" && random() < 0.15
        ? { kind: "cut", afterStoring: random() < 0.5 }
        : undefined;
    const folder = freshFolder();
    const config = join(folder, "readback.json");
    const db = join(folder, "crew.db");
    const slack = slackSettings(folder, standIn, { transport, port });
    writeFileSync(
      config,
      JSON.stringify({
        db,
        time_zone: "America/Chicago",
        one_answer_a_burst: false,
        people,
        platforms: { slack },
      }),
    );

    let child = startServing(main, config);
    await until("the first start", () => child.logs().includes('"caught_up"'), 15_000 * patience);
    for (let unit = 1; unit <= units; unit++) {
      standIn.say(
        "U0MAREN",
        south,
        `New job: Gate ${unit}A Depot RTU-${unit}, not cooling. Sorrel`,
      );
    }
    await until("the jobs are open", () => standIn.bot(south).length === units, 15_000 * patience);
    const said = new Map<string, number>();
    let talking = true;
    const talk = (async () => {
      for (let i = 1; i <= messages; i++) {
        const { ts } = standIn.say(
          "U0SORREL",
          south,
          `RTU-${(i % units) + 1} comp 1 lead 2 to ground ${i} megohm at 500 V`,
        );
        said.set(ts, i);
        await new Promise((resolve) => setTimeout(resolve, 10 + random() * 60));
      }
      talking = false;
    })();
    let killed = 0;
    for (; killed < kills || talking; killed++) {
      await new Promise((resolve) => setTimeout(resolve, 20 + random() * 900));
      child.process.kill("SIGKILL");
      await child.ended;
      child = startServing(main, config);
      await until(
        "it is up again",
        () => child.logs().includes('"caught_up"'),
        40_000 * patience,
      ).catch((error: unknown) => {
        throw new Error(`${String(error)}
${child.logs().slice(-3000)}`);
      });
      if (killed > kills * 3) break;
    }
    await talk;
    const keys = (): readonly string[] =>
      standIn.bot(south).flatMap((post) => {
        const parsed = metadata.safeParse(post.metadata);
        return parsed.success ? [parsed.data.event_payload.key] : [];
      });
    await until(
      "every message is answered",
      () => new Set(keys()).size >= messages + units,
      90_000 * patience,
    ).catch((error: unknown) => {
      const missing = [...said].filter(([ts]) => !keys().some((key) => key.includes(ts)));
      throw new Error(
        `${String(error)}; ${missing.length} missing, first ${JSON.stringify(missing.slice(0, 5))} ${child.logs().slice(-3000)}`,
      );
    });
    await until("nothing is on its way", () => standIn.delivery.open() === 0, 30_000 * patience);
    child.process.kill("SIGTERM");
    expect(await child.ended).toBe(0);
    await standIn.stop();

    expect(keys().length).toBe(messages + units);
    expect(new Set(keys()).size).toBe(messages + units);
    expect(standIn.violations).toEqual([]);
    const opened = openStore(db);
    if (!opened.ok) throw new Error(opened.problem);
    const bot = openBot(opened.store, () => "salt");
    const values = allJobs(bot.memory).flatMap(({ readings }) =>
      readings.map(({ value }) => Number(value) / 1e6),
    );
    expect([...values].sort((a, b) => a - b)).toEqual([...said.values()]);
    expect(verifyStore(opened.store).faults).toEqual([]);
    closeStore(opened.store);
    process.stdout.write(
      `slack over ${transport}: ${messages + units} messages, ${killed} kills, ${keys().length} answers\n`,
    );
  },
  400_000 * patience,
);
