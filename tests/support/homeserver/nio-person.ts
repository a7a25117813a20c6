import { spawn } from "node:child_process";
import { openSync } from "node:fs";
import { createInterface } from "node:readline";
import { z } from "zod";
import { type Account, type Homeserver, nioPython, until } from "./server.ts";

const eventSchema = z.object({
  kind: z.literal("event"),
  room: z.string(),
  id: z.string(),
  sender: z.string(),
  content: z.record(z.string(), z.unknown()),
  encrypted: z.boolean(),
  locked: z.boolean(),
  ts: z.number(),
});
export type SeenEvent = z.output<typeof eventSchema>;
const doneSchema = z.object({
  kind: z.literal("done"),
  n: z.number(),
  event: z.string().optional(),
  room: z.string().optional(),
  error: z.string().optional(),
  devices: z.array(z.string()).optional(),
});
type Done = z.output<typeof doneSchema>;

/** Somebody who uses matrix-nio. */
export interface NioPerson {
  readonly user: string;
  readonly seen: readonly SeenEvent[];
  readonly join: (room: string) => Promise<void>;
  /** gives the event's id; tried again until the server takes it, posted once */
  readonly send: (room: string, text: string, more?: object) => Promise<string>;
  readonly react: (room: string, event: string, key: string) => Promise<void>;
  /** encrypts a file as the room wants it, and sends it */
  readonly sendFile: (
    room: string,
    file: { readonly name: string; readonly type: string; readonly bytes: Uint8Array },
  ) => Promise<void>;
  /** opens an encrypted talk of two, and gives its room once the other is there */
  readonly talkTo: (user: string) => Promise<string>;
  readonly redact: (room: string, event: string) => Promise<void>;
  /** the next message goes out under a new key, which is shared first */
  readonly renewKey: (room: string) => Promise<void>;
  /** file of what the client says about itself */
  readonly log: string;
  readonly stop: () => void;
}

/** `messagesAKey`: how many messages go out under one key. */
export async function nioPerson(
  server: Homeserver,
  account: Account,
  messagesAKey: number,
): Promise<NioPerson> {
  const script = "tests/support/homeserver/person.py";
  const store = `${server.folder}/nio-${account.user.slice(1, 5)}`;
  const log = `${store}.log`;
  const child = spawn(
    nioPython() ?? "python3",
    [script, server.url, account.user, account.password, store, String(messagesAKey)],
    { stdio: ["pipe", "pipe", openSync(log, "a")] },
  );
  const { stdin, stdout } = child;
  if (stdin === null || stdout === null) throw new Error("matrix-nio without its pipes");
  const seen: SeenEvent[] = [];
  const waiting = new Map<number, (done: Done) => void>();
  let ready = false;
  createInterface({ input: stdout }).on("line", (line) => {
    const what: unknown = JSON.parse(line);
    const event = eventSchema.safeParse(what);
    const done = doneSchema.safeParse(what);
    if (event.success) seen.push(event.data);
    else if (done.success) waiting.get(done.data.n)?.(done.data);
    else ready = true;
  });
  let n = 0;
  const ask = async (what: object): Promise<Done> => {
    n += 1;
    const mine = n;
    const answer = new Promise<Done>((resolve) => waiting.set(mine, resolve));
    stdin.write(`${JSON.stringify({ n: mine, tx: `p${mine}-${Date.now()}`, ...what })}\n`);
    const done = await answer;
    if (done.error !== undefined) throw new Error(done.error);
    return done;
  };
  await until(() => ready, 120_000, "matrix-nio");
  return {
    user: account.user,
    seen,
    join: async (room) => void (await ask({ do: "join", room })),
    send: async (room, text, more = {}) => {
      const content = { msgtype: "m.text", body: text, ...more };
      return z.string().parse((await ask({ do: "send", room, content })).event);
    },
    react: async (room, event, key) => {
      const content = { "m.relates_to": { rel_type: "m.annotation", event_id: event, key } };
      await ask({ do: "send", room, type: "m.reaction", content });
    },
    sendFile: async (room, { name, type, bytes }) =>
      void (await ask({
        do: "file",
        room,
        name,
        type,
        bytes: Buffer.from(bytes).toString("base64"),
      })),
    talkTo: async (user) => z.string().parse((await ask({ do: "talk", with: user })).room),
    redact: async (room, event) => void (await ask({ do: "redact", room, event })),
    renewKey: async (room) => void (await ask({ do: "forget", room })),
    log,
    stop: () => void child.kill("SIGKILL"),
  };
}
