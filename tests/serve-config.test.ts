import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { z } from "zod";
import { readConfig } from "../adapters/serve/config.ts";
import { makeLog } from "../adapters/serve/log.ts";
import { scopes } from "../adapters/slack/check.ts";
import { openStore } from "../src/record/store.ts";
import {
  boardRoom,
  channels,
  closeScene,
  freePort,
  freshFolder,
  joined,
  openScene,
  people,
  secretFile,
  slackSettings,
  south,
  startBot,
  until,
} from "./support/slack-crew.ts";
import { type SlackStandIn, slackIds, startSlackStandIn } from "./support/slack-stand-in.ts";

const main = "dist/program/main.js";
const folder = mkdtempSync(join(tmpdir(), "readback-config-"));
let count = 0;

function written(config: unknown): string {
  const path = join(folder, `config-${count++}.json`);
  writeFileSync(path, JSON.stringify(config));
  return path;
}

function problemsOf(config: unknown): readonly string[] {
  const read = readConfig(written(config));
  return read.ok ? [] : read.problems;
}

interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

function start(args: readonly string[], env: Record<string, string> = {}) {
  const child = spawn(process.execPath, [main, ...args], { env: { ...process.env, ...env } });
  let out = "";
  let err = "";
  child.stdout.on("data", (chunk: Buffer) => {
    out += chunk.toString();
  });
  child.stderr.on("data", (chunk: Buffer) => {
    err += chunk.toString();
  });
  const ended = new Promise<Ran>((resolve) =>
    child.once("exit", (code) => resolve({ code, out, err })),
  );
  return { child, ended, err: () => err };
}

const token = secretFile(folder, "bot-token", slackIds.botToken);
const good = { bot_token: token, socket: { app_token: token }, channels: { southside: south } };
const withSlack = (slack: unknown, more: Record<string, unknown> = {}) => ({
  db: "x.db",
  people,
  platforms: { slack },
  ...more,
});

describe("every mistake of a configuration is named with its place and a remedy", () => {
  test.each([
    [
      "a token written out",
      withSlack({ ...good, bot_token: "xoxb-oops" }),
      /"platforms\.slack\.bot_token".*never written out/,
    ],
    [
      "a secret's variable that is not set",
      withSlack({ ...good, bot_token: { env: "READBACK_NOT_SET" } }),
      /bot_token".*READBACK_NOT_SET is not set/,
    ],
    [
      "a secret's file that is missing",
      withSlack({ ...good, bot_token: { file: "/no/such/file" } }),
      /bot_token".*\/no\/such\/file is missing/,
    ],
    [
      "neither socket nor http",
      withSlack({ bot_token: token, channels: good.channels }),
      /give one of "socket"/,
    ],
    [
      "a channel by its name",
      withSlack({ ...good, channels: { southside: "#southside" } }),
      /channels\.southside".*C024BE7LH/,
    ],
    ["a channel twice", withSlack({ ...good, channels: { a: south, b: south } }), /two names/],
    [
      "a board in an unknown channel",
      withSlack({ ...good, board: "attic" }),
      /"platforms\.slack\.board".*southside/,
    ],
    ["a misspelt field", withSlack({ ...good, chanels: {} }), /"chanels".*spelling/],
    [
      "a missing field",
      withSlack({ bot_token: token, socket: { app_token: token } }),
      /channels": is missing/,
    ],
    ["http without TLS", withSlack({ ...good, api_url: "http://chat.example/api/" }), /https/],
    ["a person twice", withSlack(good, { people: [...people, people[0]] }), /sorrel stands twice/],
    [
      "a display name for an id",
      withSlack(good, { people: [{ person: "bram", role: "tech", slack: "@bram" }] }),
      /U024BE7LH/,
    ],
    [
      "an unknown role",
      withSlack(good, { people: [{ person: "bram", role: "boss" }] }),
      /"people\.0\.role".*tech, dispatcher, office/,
    ],
    [
      "a time zone that is none",
      withSlack(good, { time_zone: "Mars/Olympus" }),
      /"time_zone".*America\/Chicago/,
    ],
    ["a port that is none", withSlack(good, { health_port: 70_000 }), /health_port/],
    ["an hour that is none", withSlack(good, { digest_at: "6 pm" }), /"digest_at".*18:00/],
    [
      "a digest without a board to post it beside",
      withSlack(good, { digest_at: "18:00" }),
      /digest_at: the digest is posted where the board is/,
    ],
  ])("%s", (_, config, says) => {
    const problems = problemsOf(config);
    expect(problems.join("\n")).toMatch(says);
    for (const problem of problems) expect(problem).toMatch(/\.$/);
    expect(problems.join("\n")).not.toContain("xoxb-oops");
  });

  test("all mistakes are named at once", () => {
    expect(problemsOf({ db: "", platforms: { slack: good }, units: "stone" }).length).toBe(2);
  });

  test("a right one has none", () => {
    expect(problemsOf(withSlack(good))).toEqual([]);
  });
});

describe("the program", () => {
  const stands: SlackStandIn[] = [];
  afterAll(async () => {
    for (const one of stands) await one.stop();
  });

  async function configured(more: Record<string, unknown> = {}) {
    const standIn = await startSlackStandIn({ channels });
    stands.push(standIn);
    const place = freshFolder();
    const slack = slackSettings(place, standIn, { transport: "socket" });
    const db = join(place, "crew.db");
    return { standIn, db, place, path: written({ db, people, platforms: { slack }, ...more }) };
  }

  test("says in one line what it joined, answers for its health, and ends cleanly on SIGTERM", async () => {
    const health = await freePort();
    const { standIn, path, db, place } = await configured({ health_port: health });
    const run = start(["serve", "--config", path]);
    await until("it joined", () => run.err().includes('"joined"'));
    const line =
      run
        .err()
        .split("\n")
        .find((one) => one.includes('"joined"')) ?? "";
    expect(JSON.parse(line).says).toBe(
      "Slack: holds a socket to Slack; channels southside, northside, dispatch, ops; 4 people",
    );
    await until(
      "it is ready",
      async () => (await fetch(`http://127.0.0.1:${health}/ready`)).status === 200,
    );
    expect((await fetch(`http://127.0.0.1:${health}/live`)).status).toBe(200);
    standIn.say("U0MAREN", south, "New job: Gull Wharf OU-3, not cooling marzipan. Sorrel");
    await until("it is answered", () => standIn.bot(south).length === 1);

    standIn.say("U0SORREL", south, "OU-3 no access, gate is locked");
    await until("the dispatcher is told in a post of its own", () =>
      standIn.bot(boardRoom).some(({ text, blocks }) => blocks === undefined && /OU-3/.test(text)),
    );
    await until(
      "the board is one post",
      () => standIn.bot(boardRoom).filter(({ blocks }) => blocks !== undefined).length === 1,
    );
    expect(standIn.bot(boardRoom)).toHaveLength(2);

    const copy = join(place, "copy.db");
    expect(await start(["backup", copy, "--db", db]).ended).toMatchObject({
      code: 0,
      out: `${copy}\n`,
    });
    expect((await start(["backup", copy, "--db", db]).ended).code).toBe(1);
    const opened = openStore(copy, { readonly: true });
    expect(opened.ok && opened.store.db.prepare("SELECT count(*) FROM entry").pluck().get()).toBe(
      2,
    );
    if (opened.ok) opened.store.db.close();
    expect((await start(["verify", copy]).ended).code).toBe(0);

    for (const peer of [...standIn.delivery.peers()]) peer.cut();
    standIn.fault = (method) =>
      method === "apps.connections.open" ? { kind: "cut", afterStoring: false } : undefined;
    await until(
      "it is not ready",
      async () => (await fetch(`http://127.0.0.1:${health}/ready`)).status === 503,
    );
    const state = z
      .object({ troubles: z.array(z.string()) })
      .parse(await (await fetch(`http://127.0.0.1:${health}/ready`)).json());
    expect(state.troubles).toEqual(["slack is not connected"]);

    run.child.kill("SIGTERM");
    const { code, err } = await run.ended;
    expect(code).toBe(0);
    expect(err).not.toMatch(/marzipan|xoxb|xapp/);
    for (const one of err.trim().split("\n")) expect(() => JSON.parse(one)).not.toThrow();
    const id = `slack:${slackIds.team}:${south}`;
    expect(
      err
        .split("\n")
        .filter((one) => one.includes(id.slice(6)))
        .map((one) => JSON.parse(one).event),
    ).toEqual(expect.arrayContaining(["received", "worked", "sent"]));
  });

  test("SIGTERM in the middle of sending: what was being sent stands once after the next start", async () => {
    const { standIn, path } = await configured();
    standIn.fault = (method) =>
      method === "chat.postMessage" ? { kind: "slow", ms: 400 } : undefined;
    const run = start(["serve", "--config", path]);
    await until("it joined", () => run.err().includes('"joined"'));
    standIn.say("U0MAREN", south, "New job: Gull Wharf OU-3, not cooling. Sorrel");
    await until("it is kept", () => run.err().includes('"worked"'));
    run.child.kill("SIGTERM");
    expect((await run.ended).code).toBe(0);
    const again = start(["serve", "--config", path]);
    await until("it joined", () => again.err().includes('"caught_up"'));
    again.child.kill("SIGTERM");
    expect((await again.ended).code).toBe(0);
    expect(standIn.bot(south)).toHaveLength(1);
  });

  test("--check looks without sending, and says what is wrong", async () => {
    const { standIn, path } = await configured();
    const well = await start(["serve", "--config", path, "--check"]).ended;
    expect([well.code, well.err]).toEqual([0, ""]);
    expect(well.out).toContain("the bot is in southside");
    expect(well.out).toContain("the clock agrees with the server's");
    const { path: other, standIn: second } = await configured();
    second.rooms.channels.delete("C0NORTH");
    second.rooms.channels.set("C0OPS", {
      id: "C0OPS",
      name: "ops",
      botIsMember: false,
      pins: new Set(),
      messages: [],
    });
    const ill = await start(["serve", "--config", other, "--check"]).ended;
    expect(ill.code).toBe(1);
    expect(ill.err).toMatch(/northside.*check its id/);
    expect(ill.err).toMatch(/not in ops .*invite it/);
    const methods = [...standIn.calls, ...second.calls].map(({ method }) => method);
    expect(methods.filter((name) => /^chat|pins|files/.test(name))).toEqual([]);
  });

  test("a token that Slack does not take ends it with a status of its own", async () => {
    const { standIn, path } = await configured();
    standIn.fault = (method) =>
      method === "auth.test" ? { kind: "error", error: "invalid_auth" } : undefined;
    const { code, err } = await start(["serve", "--config", path]).ended;
    expect(code).toBe(3);
    expect(err).toContain("Install the app again");
  });
});

test("a store that fails shows in readiness, and mends itself", async () => {
  const scene = await openScene({ board: false });
  await scene.bot.stop();
  const healthPort = await freePort();
  scene.bot = startBot(scene.folder, scene.settings, { healthPort });
  await joined(scene);
  const { db } = scene.bot.bot.store;
  db.exec("CREATE TEMP TRIGGER full BEFORE UPDATE ON inbox BEGIN SELECT RAISE(ABORT, 'full'); END");
  scene.standIn.say("U0MAREN", south, "New job: Gull Wharf OU-3, not cooling. Sorrel");
  const status = async () => (await fetch(`http://127.0.0.1:${healthPort}/ready`)).status;
  await until("it is said", () =>
    scene.bot.logs.some(({ event, level }) => event === "work_failed" || level === "error"),
  );
  db.exec("DROP TRIGGER full");
  await until("ready again", async () => (await status()) === 200);
  await scene.bot.stop();
  await scene.standIn.stop();
});

test("a store that takes nothing shows in readiness and in the room; what was said meanwhile is read later", async () => {
  const scene = await openScene({ board: false, retriesMs: [] });
  await scene.bot.stop();
  const healthPort = await freePort();
  scene.bot = startBot(scene.folder, scene.settings, { healthPort });
  await joined(scene);
  const { db } = scene.bot.bot.store;
  db.exec("CREATE TEMP TRIGGER full BEFORE INSERT ON inbox BEGIN SELECT RAISE(ABORT, 'full'); END");
  scene.standIn.say("U0MAREN", south, "New job: Gull Wharf OU-3, not cooling. Sorrel");
  const status = async () => (await fetch(`http://127.0.0.1:${healthPort}/ready`)).status;
  await until("it is not ready", async () => (await status()) === 503);
  const posts = () => scene.standIn.bot(south).map(({ text }) => text);
  await until("the room hears of it", () => posts().some((text) => text.includes("not kept")));
  await until("Slack has given up", () => scene.standIn.delivery.open() === 0);
  db.exec("DROP TRIGGER full");
  scene.standIn.say("U0SORREL", south, "OU-3 comp 1 lead 2 to ground 84 megohm at 500 V");
  await until("what was missed is answered", () =>
    posts().some((text) => text.includes("Gull Wharf")),
  );
  await until("ready again", async () => (await status()) === 200);
  expect(posts().filter((text) => text.includes("not kept"))).toHaveLength(1);
  expect(await closeScene(scene)).toEqual([]);
});

test("a secret is blotted out of the log however it is written there", () => {
  const lines: string[] = [];
  const secret = 'pass "word" / ä';
  const log = makeLog(
    (line) => lines.push(line),
    () => [secret],
    Date.now,
  );
  log.warn("trouble", { why: `GET /x?key=${encodeURIComponent(secret)} with ${secret}` });
  expect(lines[0]).not.toContain("word");
  expect(lines[0]?.match(/\[secret\]/g)).toHaveLength(2);
});

describe("the examples", () => {
  test("the example configuration is right, but for its secrets", () => {
    const example = JSON.parse(readFileSync("adapters/examples/readback.json", "utf8"));
    const { slack } = example.platforms;
    expect(problemsOf(example).every((problem) => problem.includes("token"))).toBe(true);
    expect(
      problemsOf({
        ...example,
        platforms: { slack: { ...slack, bot_token: token, socket: { app_token: token } } },
      }),
    ).toEqual([]);
  });

  test("the app's manifest asks for what the check looks for, and for no more", () => {
    const manifest = JSON.parse(readFileSync("adapters/examples/slack-manifest.json", "utf8"));
    expect(manifest.oauth_config.scopes.bot).toEqual([...scopes]);
  });
});
