import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { ChatPlatform } from "../../adapters/chat-platform.ts";
import { type Log, makeLog } from "../../adapters/serve/log.ts";
import type { Person } from "../../adapters/serve/people.ts";
import { serve } from "../../adapters/serve.ts";
import { slack } from "../../adapters/slack/main.ts";
import { type Bot, openBot } from "../../src/bot.ts";
import { closeStore, openStore } from "../../src/record/store.ts";
import { type SlackStandIn, slackIds, startSlackStandIn } from "./slack-stand-in.ts";
import { stopSignal } from "./stop-signal.ts";

export const south = "C0SOUTH";
export const north = "C0NORTH";
export const boardRoom = "C0BOARD";
export const opsRoom = "C0OPS";

export const channels = [
  { id: south, name: "southside" },
  { id: north, name: "northside" },
  { id: boardRoom, name: "dispatch" },
  { id: opsRoom, name: "ops" },
];

export const people = [
  { person: "sorrel", role: "tech", slack: "U0SORREL" },
  { person: "bram", role: "tech", slack: "U0BRAM" },
  { person: "maren", role: "dispatcher", slack: "U0MAREN" },
  { person: "ibsen", role: "office", slack: "U0IBSEN" },
] as const;

export function freshFolder(): string {
  return mkdtempSync(join(tmpdir(), "readback-slack-"));
}

/** A secret as a file, as the configuration wants it. */
export function secretFile(folder: string, name: string, value: string): { readonly file: string } {
  const file = join(folder, name);
  writeFileSync(file, `${value}\n`, { mode: 0o600 });
  return { file };
}

export type Transport = "http" | "socket";

export interface SettingsOptions {
  readonly transport: Transport;
  readonly port?: number;
  readonly board?: boolean;
  readonly boardSeconds?: number;
}

/** What stands under "slack" in a configuration that points at the stand-in. */
export function slackSettings(
  folder: string,
  standIn: Pick<SlackStandIn, "apiUrl">,
  { transport, port, board, boardSeconds }: SettingsOptions,
): Record<string, unknown> {
  const bySocket = { socket: { app_token: secretFile(folder, "app-token", slackIds.appToken) } };
  const byHttp = {
    http: { signing_secret: secretFile(folder, "signing-secret", slackIds.signingSecret), port },
  };
  return {
    bot_token: secretFile(folder, "bot-token", slackIds.botToken),
    ...(transport === "socket" ? bySocket : byHttp),
    channels: { southside: south, northside: north, dispatch: boardRoom, ops: opsRoom },
    ...(board === false ? {} : { board: "dispatch" }),
    operator: "ops",
    board_seconds: boardSeconds ?? 1,
    settle_seconds: 0.1,
    api_url: standIn.apiUrl,
  };
}

export interface RunningBot {
  readonly bot: Bot;
  readonly logs: Record<string, unknown>[];
  readonly platform: ChatPlatform;
  /** resolves with the sentence that ended it, if one did */
  readonly ended: Promise<string | undefined>;
  readonly stop: () => Promise<void>;
}

/** The bot in this process, on a store of its own or one that is there already. */
export function startBot(
  folder: string,
  settings: Record<string, unknown>,
  options: {
    readonly healthPort?: number;
    readonly now?: () => number;
    readonly people?: readonly Person[];
    readonly prepare?: (bot: Bot) => void;
  } = {},
): RunningBot {
  const { people: crew = people, prepare, ...serving } = options;
  const opened = openStore(join(folder, "crew.db"));
  if (!opened.ok) throw new Error(opened.problem);
  const made = slack.configure(settings, crew);
  if (!made.ok) throw new Error(made.problems.join("\n"));
  let count = 0;
  const bot = openBot(opened.store, () => `salt ${count++}`);
  prepare?.(bot);
  const logs: Record<string, unknown>[] = [];
  const log: Log = makeLog(
    (line) => logs.push(JSON.parse(line)),
    () => [],
    Date.now,
  );
  const { stop, end } = stopSignal();
  const ended = serve(bot, { platforms: [made.platform], log, stop, ...serving }).finally(() =>
    closeStore(opened.store),
  );
  return {
    bot,
    logs,
    platform: made.platform,
    ended,
    stop: async () => {
      end();
      await ended;
    },
  };
}

/** A free port of this machine. */
export async function freePort(): Promise<number> {
  const { createServer } = await import("node:net");
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  await new Promise<void>((resolve) => server.close(() => resolve()));
  return typeof address === "object" && address !== null ? address.port : 0;
}

/** Waits for something to become true; says what it waited for where it never does. */
export async function until(
  what: string,
  is: () => boolean | Promise<boolean>,
  patienceMs = 15_000,
): Promise<void> {
  const end = Date.now() + patienceMs;
  while (!(await is())) {
    if (Date.now() > end) throw new Error(`waited in vain: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
}

export interface Scene {
  readonly standIn: SlackStandIn;
  readonly folder: string;
  readonly settings: Record<string, unknown>;
  bot: RunningBot;
}

/** A workspace, a bot in it that has joined, and how to end both. */
export async function openScene(
  options: {
    readonly transport?: Transport;
    readonly board?: boolean;
    readonly retriesMs?: readonly number[];
  } = {},
): Promise<Scene> {
  const transport = options.transport ?? "http";
  const port = await freePort();
  const standIn = await startSlackStandIn({
    channels,
    retriesMs: options.retriesMs ?? [20, 200, 500],
    patienceMs: 700,
    ...(transport === "http" ? { eventsUrl: `http://127.0.0.1:${port}/slack/events` } : {}),
  });
  const folder = freshFolder();
  const settings = slackSettings(folder, standIn, {
    transport,
    port,
    ...(options.board === undefined ? {} : { board: options.board }),
  });
  const scene: Scene = { standIn, folder, settings, bot: startBot(folder, settings) };
  await joined(scene);
  return scene;
}

/** Joined, and every channel read to its end. */
export async function joined(scene: Scene): Promise<void> {
  const { bot } = scene;
  await until("the bot joins", () => bot.logs.some((line) => line.event === "joined"));
  await until("it has caught up", () => bot.logs.some((line) => line.event === "caught_up"));
}

/** Ends both; whatever the real service would not have taken is a fault. */
export async function closeScene(scene: Scene): Promise<readonly string[]> {
  await scene.bot.stop();
  await scene.standIn.stop();
  return scene.standIn.violations;
}
