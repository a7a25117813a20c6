/**
 * One request to the homeserver's client API with JSON both ways; rejects with a `Trouble`. `accept`
 * names statuses beside 2xx whose body is an answer. Paths are complete and encoded.
 */
export type Ask = (
  method: "GET" | "PUT" | "POST",
  path: string,
  body?: object,
  options?: {
    readonly query?: Readonly<Record<string, string | number>>;
    readonly accept?: readonly number[];
    readonly timeoutMs?: number;
  },
) => Promise<unknown>;
