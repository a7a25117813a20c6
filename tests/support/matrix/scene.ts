import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { matrix } from "../../../adapters/matrix/main.ts";
import { makeLog } from "../../../adapters/serve/log.ts";
import type { Person } from "../../../adapters/serve/people.ts";
import { serve } from "../../../adapters/serve.ts";
import { type Bot, openBot } from "../../../src/bot.ts";
import { closeStore, openStore } from "../../../src/record/store.ts";
import { type StandIn, startStandIn } from "./stand-in.ts";
import type { StoredEvent } from "./world.ts";

export const me = "@readback:fake.test";
export const bram = "@bram:fake.test";
export const nia = "@nia:fake.test";
export const tamsin = "@tamsin:fake.test";
export const odd = "@odd:fake.test";
export const south = "!south:fake.test";
export const north = "!north:fake.test";
export const everybody = [tamsin, bram, nia, odd, me];
export const megolm = { "m.room.encryption": { algorithm: "m.megolm.v1.aes-sha2" } };

const people: readonly Person[] = [
  { person: "bram", role: "tech", matrix: bram },
  { person: "nia", role: "tech", matrix: nia },
  { person: "tamsin", role: "dispatcher", matrix: tamsin },
  { person: "sorrel", role: "tech", matrix: "@sorrel:fake.test" },
];

/** A bot on a stand-in homeserver, in this process. */
export interface Scene {
  readonly server: StandIn;
  readonly bot: () => Bot;
  readonly folder: string;
  readonly logs: string[];
  readonly start: () => Promise<void>;
  /** ends it in good order; gives the sentence with which it ended, where it did so by itself */
  readonly stop: () => Promise<string | undefined>;
  readonly ended: () => Promise<string | undefined>;
  /** what the bot posted in a room, edits apart */
  readonly posts: (room: string) => readonly StoredEvent[];
  readonly close: () => Promise<void>;
}

export interface SceneOptions {
  readonly board?: boolean;
  readonly people?: readonly Person[];
  /** channel -> room */
  readonly rooms?: Readonly<Record<string, string>>;
  readonly now?: () => number;
  readonly prepare?: (bot: Bot) => void;
}

export async function openScene(options: SceneOptions = {}): Promise<Scene> {
  const server = await startStandIn();
  const folder = mkdtempSync(join(tmpdir(), "matrix-"));
  writeFileSync(join(folder, "password"), "correct horse");
  const logs: string[] = [];
  let bot: Bot | undefined;
  let end: () => void = () => {};
  let running: Promise<string | undefined> = Promise.resolve(undefined);
  let salts = 0;
  const start = async (): Promise<void> => {
    const made = matrix.configure(
      {
        server: server.url,
        user: me,
        password: { file: join(folder, "password") },
        keys: join(folder, "keys.db"),
        rooms: options.rooms ?? { south, north },
        ...(options.rooms === undefined ? { operator: "south" } : {}),
        ...(options.board === true ? { board: "south", board_seconds: 1 } : {}),
      },
      options.people ?? people,
    );
    if (!made.ok) throw new Error(made.problems.join("\n"));
    const opened = openStore(join(folder, "store.db"));
    if (!opened.ok) throw new Error(opened.problem);
    const mine = openBot(opened.store, () => `salt ${salts++}`);
    bot = mine;
    options.prepare?.(mine);
    const stop = new Promise<void>((resolve) => {
      end = resolve;
    });
    const from = logs.length;
    const log = makeLog(
      (line) => logs.push(line),
      () => [],
      Date.now,
    );
    running = serve(mine, {
      platforms: [made.platform],
      log,
      stop,
      ...(options.now === undefined ? {} : { now: options.now }),
    }).finally(() => closeStore(opened.store));
    await until("it is connected", () =>
      logs
        .slice(from)
        .some((line) => line.includes('"event":"joined"') || line.includes('"event":"stopped"')),
    );
  };
  const stop = async (): Promise<string | undefined> => {
    end();
    return running;
  };
  return {
    server,
    folder,
    logs,
    start,
    stop,
    ended: () => running,
    bot: () => {
      if (bot === undefined) throw new Error("not started");
      return bot;
    },
    posts: (room) =>
      server.world.events.filter(
        (event) =>
          event.room === room &&
          event.sender === me &&
          event.state_key === undefined &&
          !("m.new_content" in event.content),
      ),
    close: async () => {
      await stop();
      await server.stop();
    },
  };
}

/** Asks until it holds. */
export async function until(what: string, holds: () => boolean, mostMs = 25_000): Promise<void> {
  const end = Date.now() + mostMs;
  while (!holds()) {
    if (Date.now() > end) throw new Error(`${what}: not within ${mostMs} ms`);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

export const bodyOf = (event: StoredEvent | undefined): string => String(event?.content.body ?? "");
