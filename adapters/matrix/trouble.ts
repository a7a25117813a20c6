/**
 * Why a request to the homeserver did not succeed. `unanswered`: no answer or the server's own
 * failure, so it may have been done or not; `limited`: not done, ask again after `retryMs`;
 * `token`: the access token is no longer good; `refused`: anything else that the server declines.
 */
export type TroubleKind = "unanswered" | "limited" | "token" | "refused";

export class Trouble extends Error {
  readonly kind: TroubleKind;
  readonly status: number | undefined;
  /** the server's code ("M_FORBIDDEN"), where it gave one */
  readonly code: string | undefined;
  readonly retryMs: number;
  /** it came before the request that matters, so nothing has left yet */
  readonly early: boolean;

  constructor(
    kind: TroubleKind,
    message: string,
    facts: {
      readonly status?: number;
      readonly code?: string;
      readonly retryMs?: number;
      readonly early?: boolean;
    } = {},
  ) {
    super(message);
    this.kind = kind;
    this.status = facts.status;
    this.code = facts.code;
    this.retryMs = facts.retryMs ?? 0;
    this.early = facts.early ?? false;
  }
}

/** Common practice where a server limits without saying for how long. */
const unsaidLimitMs = 5000;

/** Tells an error answer of the server by its status and code. */
export function troubleFrom(
  status: number,
  body: {
    readonly errcode?: string | undefined;
    readonly error?: string | undefined;
    readonly retry_after_ms?: number | undefined;
  },
): Trouble {
  const code = body.errcode;
  const says = `${status}${code === undefined ? "" : ` ${code}`}${body.error === undefined ? "" : `: ${body.error}`}`;
  const facts = { status, ...(code === undefined ? {} : { code }) };
  if (status === 429 || code === "M_LIMIT_EXCEEDED") {
    return new Trouble("limited", says, {
      ...facts,
      retryMs: body.retry_after_ms ?? unsaidLimitMs,
    });
  }
  if (code === "M_UNKNOWN_TOKEN" || code === "M_MISSING_TOKEN" || code === "M_USER_DEACTIVATED") {
    return new Trouble("token", says, facts);
  }
  return new Trouble(status >= 500 ? "unanswered" : "refused", says, facts);
}

/** The same trouble, met before anything was sent. Whatever is no trouble with the server may pass too. */
export function early(error: unknown): Trouble {
  if (!(error instanceof Trouble)) {
    return new Trouble("unanswered", error instanceof Error ? error.message : String(error), {
      early: true,
    });
  }
  const { status, code, retryMs } = error;
  return new Trouble(error.kind, error.message, {
    retryMs,
    early: true,
    ...(status === undefined ? {} : { status }),
    ...(code === undefined ? {} : { code }),
  });
}
