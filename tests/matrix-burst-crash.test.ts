import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { allJobs } from "../src/bot/memory.ts";
import { openBot } from "../src/bot.ts";
import { closeStore, openStore } from "../src/record/store.ts";
import { verifyStore } from "../src/record/verify.ts";
import { copyOfBuild, type Serving, startServing } from "./support/build-copy.ts";
import { bodyOf, bram, everybody, me, south, tamsin, until } from "./support/matrix/scene.ts";
import { startStandIn } from "./support/matrix/stand-in.ts";
import { randomFrom } from "./support/random.ts";

/** How often the bot is killed while bursts come in that get one answer each. */
const kills = Number(process.env.READBACK_MATRIX_KILLS ?? 5);
const units = kills * 3;
/** Of two compressors the leads one after another: the first ones carry the day's cautions, each in an answer of its own. */
const leads = 6;

const main = copyOfBuild("matrix-crash");
const nap = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

test("killed while bursts come in, one answer a burst: every figure is filed once and read back once", async () => {
  const random = randomFrom(Number(process.env.READBACK_SEED ?? 7));
  const server = await startStandIn();
  server.room(south, everybody);
  const folder = mkdtempSync(join(tmpdir(), "matrix-burst-"));
  const db = join(folder, "store.db");
  writeFileSync(join(folder, "password"), "correct horse");
  const config = join(folder, "readback.json");
  writeFileSync(
    config,
    JSON.stringify({
      db,
      time_zone: "America/Chicago",
      people: [
        { person: "bram", role: "tech", matrix: bram },
        { person: "tamsin", role: "dispatcher", matrix: tamsin },
      ],
      platforms: {
        matrix: {
          server: server.url,
          user: me,
          password: { file: join(folder, "password") },
          keys: join(folder, "keys.db"),
          rooms: { south },
        },
      },
    }),
  );
  let child: Serving;
  const up = (): Promise<void> =>
    until("it is up", () => child.logs().includes('"joined"'), 60_000);
  /** edits apart: what people were told, once each */
  const posts = () =>
    server.world.events.filter(
      ({ sender, type, content }) =>
        sender === me && type === "m.room.message" && !("m.new_content" in content),
    );

  child = startServing(main, config);
  await up();
  for (let unit = 1; unit <= units; unit++) {
    const body = `New job: Gate ${unit}A Depot RTU-${unit}, not cooling. Bram`;
    server.say(south, tamsin, { msgtype: "m.text", body });
  }
  await until("the jobs are open", () => posts().length === units, 60_000);
  const told = new Map<string, string>();
  let talking = true;
  const talk = (async () => {
    for (let unit = 1; unit <= units; unit++) {
      for (let nth = 0; nth < leads; nth++) {
        const figure = 1000 + unit * 10 + nth;
        const [comp, lead] = [1 + Math.floor(nth / 3), 1 + (nth % 3)];
        const body = `RTU-${unit} comp ${comp} lead ${lead} to ground ${figure} megohm at 500 V`;
        told.set(server.say(south, bram, { msgtype: "m.text", body }), `lead ${lead} ${figure}`);
        await nap(random() * 40);
      }
      await nap(random() * 700);
    }
    talking = false;
  })();
  let killed = 0;
  for (; killed < kills || talking; killed++) {
    await nap(100 + random() * 1500);
    child.process.kill("SIGKILL");
    await child.ended;
    child = startServing(main, config);
    if (killed % 3 !== 1) await up();
    if (killed > kills * 3) break;
  }
  await talk;
  const times = (said: string): number =>
    posts().filter((event) => new RegExp(`${said}\\b`).test(bodyOf(event))).length;
  await until(
    "every figure is read back",
    () => [...told.values()].every((said) => times(said) > 0),
    120_000,
  );
  // the last one started may not listen to signals yet
  await up();
  child.process.kill("SIGTERM");
  expect(await child.ended).toBe(0);
  await server.stop();

  expect([...told.values()].filter((said) => times(said) !== 1)).toEqual([]);
  const answers = posts().length - units;
  expect(answers).toBeLessThan(told.size);
  const opened = openStore(db);
  if (!opened.ok) throw new Error(opened.problem);
  const bot = openBot(opened.store, () => "salt");
  const filed = allJobs(bot.memory).flatMap(({ readings }) => readings.map((one) => one.message));
  expect([...filed].sort()).toEqual([...told.keys()].sort());
  expect(verifyStore(opened.store).faults).toEqual([]);
  closeStore(opened.store);
  process.stdout.write(
    `matrix bursts: ${told.size} messages, ${killed} kills, ${answers} answers, each figure once\n`,
  );
}, 400_000);
