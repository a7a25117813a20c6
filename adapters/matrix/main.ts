import type { ChatKind, ChatPlatform, Door, Outcome } from "../chat-platform.ts";
import type { Person } from "../serve/people.ts";
import { problemsOf } from "../serve/problems.ts";
import { configSchema, type MatrixConfig } from "./config.ts";
import { crewOf } from "./crew.ts";
import { type KeyFile, openKeyFile } from "./keys/key-file.ts";
import { type Pauses, pauseFor, pauses, syncLoop } from "./loop.ts";
import { openRooms } from "./rooms.ts";
import { findPart, sendPart, tokenSentence } from "./send.ts";
import { Trouble } from "./trouble.ts";
import { welcome } from "./welcome.ts";
import type { Working } from "./working.ts";

/** Matrix: messages by a sync loop of its own, plain and encrypted rooms. */
export const matrix: ChatKind = {
  name: "matrix",
  configure: (raw, people) => {
    const parsed = configSchema.safeParse(raw, { reportInput: true });
    return parsed.success
      ? { ok: true, platform: matrixPlatform(parsed.data, people) }
      : { ok: false, problems: problemsOf(parsed.error, ["platforms", "matrix"]) };
  },
};

export function matrixPlatform(config: MatrixConfig, people: readonly Person[]): ChatPlatform {
  let working: Working | undefined;
  let file: KeyFile | undefined;
  let looping: Promise<void> = Promise.resolve();
  const rest = pauses();
  const notYet: Outcome = { kind: "later", retryMs: 1000, why: "not connected yet" };
  return {
    name: "matrix",
    // the text stands in an event up to four times, and encryption adds a third; 64 KiB is the most
    longest: 4000,
    boardEveryMs: config.board_seconds * 1000,
    ...(config.board === undefined ? {} : { boardChannel: config.board }),
    ...(config.operator === undefined ? {} : { operatorChannel: config.operator }),
    start: async (door) => {
      try {
        file = openKeyFile(config.keys);
      } catch (error) {
        door.fatal(keyFileSentence(config, error));
        return "";
      }
      const now = await connected({ config, people, door, file, rest });
      if (now === undefined) return "";
      working = now;
      // the first round answers invitations; what was joined is told after it
      await new Promise<void>((firstRound) => {
        const loop = (): void => {
          looping = syncLoop(now, rest, firstRound).finally(firstRound);
        };
        void begin(now, rest, loop).catch(firstRound);
      });
      return rest.ended() ? "" : welcome(now);
    },
    send: async (part, context) =>
      working === undefined ? notYet : sendPart(working, part, context),
    find: async (part, since) =>
      working === undefined
        ? { kind: "unclear", why: "not connected yet" }
        : findPart(working, part, since),
    stop: async () => {
      rest.end();
      working?.connection.stop();
      await looping;
      await working?.machine.close();
      file?.close();
    },
    check: async () => (await import("./check.ts")).check(config, people),
  };
}

function keyFileSentence(config: MatrixConfig, error: unknown): string {
  const why = error instanceof Error ? error.message : String(error);
  return /locked|busy/i.test(why)
    ? `Matrix: the key file ${config.keys} is in use; another readback runs with it. Two with one device's keys would spoil them.`
    : `Matrix: the key file ${config.keys} cannot be used: ${why}`;
}

interface Beginning {
  readonly config: MatrixConfig;
  readonly people: readonly Person[];
  readonly door: Door;
  readonly file: KeyFile;
  readonly rest: Pauses;
}

/** Tries until the server answers; undefined where it was ended or cannot go on. */
async function connected(beginning: Beginning): Promise<Working | undefined> {
  const { door, rest } = beginning;
  // both are large, and other commands of the program have no use for them
  const [{ openSession }, { openMachine }] = await Promise.all([
    import("./session.ts"),
    import("./keys/machine.ts"),
  ]);
  let machine: Working["machine"] | undefined;
  for (let failures = 1; !rest.ended(); failures += 1) {
    try {
      const { connection, user, device } = await openSession(beginning.config, beginning.file);
      // opened once a process, however often the rest is tried
      machine ??= await openMachine(beginning.file, { user, device }, connection.ask);
      return await workingWith(beginning, { connection, user, machine });
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      door.log.warn("matrix_away", { platform: "matrix", why, failures });
      if (error instanceof Trouble && (error.kind === "token" || error.kind === "refused")) {
        const known = error.code === "M_UNKNOWN_TOKEN";
        door.fatal(known ? tokenSentence(why) : `Matrix: ${why}.`);
        break;
      }
      await rest.pause(pauseFor(error, failures));
    }
  }
  await machine?.close();
  return undefined;
}

/** The client asks the server a few things before it begins, and gives up where there is no answer. */
async function begin({ connection, door }: Working, rest: Pauses, loop: () => void): Promise<void> {
  for (let failures = 1; !rest.ended(); failures += 1) {
    try {
      return await connection.start(loop);
    } catch (error) {
      door.log.warn("matrix_away", { platform: "matrix", why: String(error), failures });
      await rest.pause(pauseFor(error, failures));
    }
  }
  throw new Error("ended before the server answered");
}

async function workingWith(
  { config, people, door, file }: Beginning,
  session: Pick<Working, "connection" | "machine"> & { readonly user: string },
): Promise<Working> {
  const { connection, machine, user } = session;
  const rooms = openRooms(config, file, connection.ask);
  await rooms.resolve();
  if (!(await signed(machine, { user, config, door }))) {
    door.tell(
      "cross-signing",
      'The bot\'s Matrix device is not cross-signed, so some clients may refuse its messages: the server wants the password once. Give "password" for one start.',
    );
  }
  const base = { config, crew: crewOf(people), door, me: user, connection, file, machine, rooms };
  return { ...base, standing: new Map(), lastInThread: new Map() };
}

/** A server that refuses it must not keep the bot from its work. */
async function signed(
  machine: Working["machine"],
  by: { readonly user: string; readonly config: MatrixConfig; readonly door: Door },
): Promise<boolean> {
  try {
    return await machine.crossSign(by.user, by.config.password);
  } catch (error) {
    if (!(error instanceof Trouble) || error.kind !== "refused") throw error;
    by.door.log.warn("not_cross_signed", { platform: "matrix", why: error.message });
    return false;
  }
}
