import {
  LogLevel,
  LogService,
  MatrixClient,
  MemoryStorageProvider,
  setRequestFn,
} from "matrix-bot-sdk";
import { z } from "zod";
import type { Ask } from "./ask.ts";
import { endPolls, fetchRequest } from "./fetch-request.ts";
import { Trouble, troubleFrom } from "./trouble.ts";

// the SDK's own HTTP client is no longer maintained, and its log would show message text
setRequestFn(fetchRequest);
LogService.setLevel(LogLevel.ERROR);
LogService.setLogger({ info() {}, warn() {}, error() {}, debug() {}, trace() {} });

/** The SDK's client with a loop of our own: its own one loses messages when a handler fails. */
class LoopClient extends MatrixClient {
  readonly #loop: () => void;

  constructor(server: string, token: string, loop: () => void) {
    super(server, token, new MemoryStorageProvider());
    this.#loop = loop;
  }

  protected override startSyncInternal(): Promise<void> {
    // not awaited: start() would never resolve
    this.#loop();
    return Promise.resolve();
  }
}

/** A connection to a homeserver: the only file that knows the SDK. */
export interface Connection {
  readonly ask: Ask;
  readonly upload: (name: string, type: string, bytes: Uint8Array) => Promise<string>;
  readonly download: (
    path: string,
  ) => Promise<{ readonly type: string; readonly bytes: Uint8Array }>;
  /** Starts the loop once the server answers. */
  readonly start: (loop: () => void) => Promise<void>;
  /** Ends the long poll. */
  readonly stop: () => void;
}

const requestTimeoutMs = 20_000;
const mediaTimeoutMs = 120_000;

/** `token` is "" before the login. */
export function connect(server: string, token: string): Connection {
  let loop = (): void => {};
  const client = new LoopClient(server, token, () => loop());
  const ask: Ask = (method, path, body, options = {}) =>
    answered(
      client.doRequest(method, path, options.query, body, options.timeoutMs ?? requestTimeoutMs),
      options.accept,
    );
  return {
    ask,
    upload: async (name, type, bytes) => {
      const path = "/_matrix/media/v3/upload";
      const sent = client.doRequest(
        "POST",
        path,
        { filename: name },
        Buffer.from(bytes),
        mediaTimeoutMs,
        false,
        type,
      );
      return z.object({ content_uri: z.string() }).parse(await answered(sent)).content_uri;
    },
    download: async (path) => {
      const got = client.doRequest(
        "GET",
        path,
        undefined,
        undefined,
        mediaTimeoutMs,
        true,
        undefined,
        true,
      );
      const raw = z.object({
        headers: z.record(z.string(), z.string()),
        body: z.instanceof(Uint8Array),
      });
      const { headers, body } = raw.parse(await answered(got));
      return { type: headers["content-type"] ?? "application/octet-stream", bytes: body };
    },
    start: async (begin) => {
      loop = begin;
      await answered(client.start());
    },
    stop: () => {
      client.stop();
      endPolls();
    },
  };
}

const errorBody = z.object({
  errcode: z.string().optional(),
  error: z.string().optional(),
  retry_after_ms: z.number().optional(),
});
const failed = z.object({ statusCode: z.number(), body: z.unknown() });

/** Every way in which the SDK rejects, as a `Trouble`. */
async function answered(
  request: Promise<unknown>,
  accept: readonly number[] = [],
): Promise<unknown> {
  try {
    return await request;
  } catch (error) {
    const known = failed.safeParse(error);
    if (!known.success) throw new Trouble("unanswered", messageOf(error));
    const { statusCode, body } = known.data;
    if (accept.includes(statusCode)) return body;
    throw troubleFrom(statusCode, errorBody.safeParse(jsonOf(body)).data ?? {});
  }
}

function jsonOf(body: unknown): unknown {
  if (!(body instanceof Uint8Array)) return body;
  try {
    return JSON.parse(Buffer.from(body).toString("utf8"));
  } catch {
    return {};
  }
}

function messageOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  return error.cause instanceof Error ? `${error.message} (${error.cause.message})` : error.message;
}
