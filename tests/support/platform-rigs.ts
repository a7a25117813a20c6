import { join } from "node:path";
import { PassThrough } from "node:stream";
import type { ChatPlatform } from "../../adapters/chat-platform.ts";
import { makeLog } from "../../adapters/serve/log.ts";
import { serve } from "../../adapters/serve.ts";
import { slack } from "../../adapters/slack/main.ts";
import { terminalOn } from "../../adapters/terminal/main.ts";
import { type Bot, openBot } from "../../src/bot.ts";
import { closeStore, openStore } from "../../src/record/store.ts";
import { matrixRoom } from "./matrix/rig.ts";
import {
  channels,
  freePort,
  freshFolder,
  people,
  slackSettings,
  south,
  until,
} from "./slack-crew.ts";
import { slackIds, startSlackStandIn } from "./slack-stand-in.ts";
import { stopSignal } from "./stop-signal.ts";

/** One running platform with the bot behind it, as the contract test uses it. */
export interface Room {
  readonly bot: Bot;
  /** the name that messages of this room carry */
  readonly channel: string;
  /** Sorrel says something; gives its id where the platform has one before it is heard */
  readonly say: (text: string, at?: number) => string | undefined;
  /** Sorrel replies to a message by its id, the way this platform has for it */
  readonly reply: (text: string, to: string) => void;
  /** the platform brings the last message once more */
  readonly again: () => void;
  /** what stands in the room, said by the bot, oldest first */
  readonly answers: () => readonly string[];
  /** what the person at the platform was told about a message that could not be kept */
  readonly complaints: () => readonly string[];
  /** the program's log, a line of JSON each */
  readonly logs: readonly string[];
  /** nothing is on its way from the platform any more */
  readonly settled: () => boolean;
  readonly stop: () => Promise<void>;
}

export interface Rig {
  readonly name: string;
  /** what this platform cannot do by its nature, and why */
  readonly cannot: Readonly<Partial<Record<Ability, string>>>;
  readonly open: () => Promise<Room>;
}

export type Ability = "reply" | "repeat" | "times" | "split" | "redeliver";

interface Started {
  readonly bot: Bot;
  readonly logs: string[];
  readonly stop: () => Promise<void>;
}

function run(platform: ChatPlatform): Started {
  const opened = openStore(join(freshFolder(), "contract.db"));
  if (!opened.ok) throw new Error(opened.problem);
  let count = 0;
  const bot = openBot(opened.store, () => `salt ${count++}`);
  const logs: string[] = [];
  const { stop, end } = stopSignal();
  const log = makeLog(
    (line) => logs.push(line),
    () => [],
    Date.now,
  );
  const ended = serve(bot, { platforms: [platform], log, stop });
  return {
    bot,
    logs,
    stop: async () => {
      end();
      await ended;
      closeStore(opened.store);
    },
  };
}

async function terminalRoom(): Promise<Room> {
  const input = new PassThrough();
  const output = new PassThrough();
  let printed = "";
  output.on("data", (chunk: Buffer) => {
    printed += chunk.toString();
  });
  const made = terminalOn(() => ({ input, output })).configure({ person: "sorrel" }, []);
  if (!made.ok) throw new Error(made.problems.join("\n"));
  const { bot, logs, stop } = run(made.platform);
  await until("it greets", () => printed.includes("/quit"));
  const greeting = printed.length;
  const blocks = () =>
    printed
      .slice(greeting)
      .split("\n")
      .filter((line) => line !== "");
  return {
    bot,
    logs,
    channel: "terminal",
    say: (text) => {
      input.write(`${text}\n`);
      return undefined;
    },
    reply: () => {},
    again: () => {},
    answers: () => blocks().filter((line) => !line.startsWith("Not kept")),
    complaints: () => blocks().filter((line) => line.startsWith("Not kept")),
    settled: () => true,
    stop,
  };
}

async function slackRoom(transport: "http" | "socket"): Promise<Room> {
  const port = await freePort();
  const standIn = await startSlackStandIn({
    channels,
    patienceMs: 500,
    retriesMs: [50, 300, 600],
    ...(transport === "http" ? { eventsUrl: `http://127.0.0.1:${port}/slack/events` } : {}),
  });
  const settings = slackSettings(freshFolder(), standIn, { transport, port, board: false });
  const made = slack.configure(settings, people);
  if (!made.ok) throw new Error(made.problems.join("\n"));
  const { bot, logs, stop } = run(made.platform);
  await until("it has caught up", () => logs.some((line) => line.includes('"caught_up"')));
  const typed = (text: string): string =>
    text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
  let last = standIn.sayUnheard("U0IBSEN", "C0NORTH", "nothing");
  return {
    bot,
    logs,
    channel: "southside",
    say: (text, at) => {
      const ts =
        at === undefined
          ? {}
          : { ts: `${Math.floor(at / 1000)}.${String(at % 1000).padStart(3, "0")}000` };
      last = standIn.say("U0SORREL", south, typed(text), ts);
      return `${slackIds.team}:${south}:${last.ts}`;
    },
    reply: (text, to) => {
      last = standIn.say("U0SORREL", south, typed(text), { thread_ts: to.split(":").at(-1) ?? to });
    },
    again: () =>
      standIn.delivery.publish({ ...last, channel: south, event_ts: last.ts }, "EvAgain"),
    answers: () => standIn.bot(south).map(({ text }) => text),
    complaints: () => [],
    settled: () => standIn.delivery.open() === 0,
    stop: async () => {
      await stop();
      await standIn.stop();
      if (standIn.violations.length > 0) throw new Error(standIn.violations.join("\n"));
    },
  };
}

/** Platforms whose rooms the contract test cannot open, and where they are held to it instead. */
export const heldElsewhere: Readonly<Record<string, string>> = {};

/** Every platform that the program has; a new one adds its room here. */
export const rigs: readonly Rig[] = [
  {
    name: "terminal",
    cannot: {
      reply: "a typed line is said to nobody's message",
      repeat: "a typed line comes once",
      times: "a line's time is the moment it was typed",
      split: "a terminal has no longest post",
      redeliver: "the person types it again, and is told to",
    },
    open: terminalRoom,
  },
  { name: "matrix", cannot: {}, open: matrixRoom },
  { name: "slack over http", cannot: {}, open: () => slackRoom("http") },
  { name: "slack over a socket", cannot: {}, open: () => slackRoom("socket") },
];
