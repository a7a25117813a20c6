import { z } from "zod";

/** What matrix-bot-sdk gives the function that makes its requests. */
const paramsSchema = z.object({
  uri: z.string(),
  method: z.string(),
  qs: z.record(z.string(), z.unknown()).nullish(),
  /** null: the body is wanted as bytes */
  encoding: z.null().optional(),
  timeout: z.number(),
  headers: z.record(z.string(), z.string()),
  body: z.union([z.string(), z.instanceof(Uint8Array)]).optional(),
});

interface Answer {
  readonly statusCode: number;
  readonly headers: Readonly<Record<string, string>>;
  body: string | Buffer;
}
type Callback = (error: unknown, answer?: Answer, body?: string | Buffer) => void;

/** Far above any photo; a server that sends more is cut off. */
export const mostAnswerBytes = 100 * 1024 * 1024;

/** Requests that `stop` ends: the long poll, which may be silent for half a minute. */
const polls = new Set<AbortController>();
export function endPolls(): void {
  for (const poll of polls) poll.abort();
}

/** Makes the SDK's requests with the runtime's own `fetch`. */
export function fetchRequest(params: unknown, callback: Callback): void {
  const control = new AbortController();
  const given = paramsSchema.parse(params);
  const isPoll = new URL(given.uri).pathname.endsWith("/sync");
  if (isPoll) polls.add(control);
  const timer = setTimeout(() => control.abort(new Error("timed out")), given.timeout);
  answerTo(given, control.signal)
    .then((answer) => callback(undefined, answer, answer.body), callback)
    .finally(() => {
      clearTimeout(timer);
      polls.delete(control);
    });
}

async function answerTo(
  given: z.output<typeof paramsSchema>,
  signal: AbortSignal,
): Promise<Answer> {
  const url = new URL(given.uri);
  for (const [name, value] of Object.entries(given.qs ?? {})) {
    if (value !== undefined && value !== null) url.searchParams.set(name, String(value));
  }
  const response = await fetch(url, {
    method: given.method,
    headers: given.headers,
    // the token must not follow the server elsewhere; media are the one exception, and carry none
    redirect: url.pathname.includes("/media/") ? "follow" : "error",
    signal,
    ...(given.body === undefined ? {} : { body: given.body }),
  });
  const bytes = await readUpTo(response, mostAnswerBytes);
  const body = given.encoding === null ? bytes : withDelay(bytes.toString("utf8"), response);
  return { statusCode: response.status, headers: Object.fromEntries(response.headers), body };
}

async function readUpTo(response: Response, most: number): Promise<Buffer> {
  const parts: Uint8Array[] = [];
  let size = 0;
  for await (const part of response.body ?? []) {
    size += part.length;
    if (size > most) throw new Error(`an answer of more than ${most} bytes`);
    parts.push(part);
  }
  return Buffer.concat(parts);
}

/** The SDK drops headers of errors: the delay that the server asks for is carried in the body. */
function withDelay(text: string, response: Response): string {
  const seconds = Number(response.headers.get("retry-after") ?? Number.NaN);
  if (response.status !== 429 || Number.isNaN(seconds)) return text;
  const body = z.record(z.string(), z.unknown()).safeParse(parsedOrNothing(text));
  return JSON.stringify({
    errcode: "M_LIMIT_EXCEEDED",
    ...body.data,
    retry_after_ms: seconds * 1000,
  });
}

function parsedOrNothing(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return {};
  }
}
