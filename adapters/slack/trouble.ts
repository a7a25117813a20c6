import { webApi } from "@slack/bolt";

/** Why a call to Slack failed, told by its kind and never by its words. */
export type Trouble =
  /** certainly not done; `retryMs` is Slack's own delay */
  | { readonly kind: "limited"; readonly retryMs: number; readonly why: string }
  /** the request never left */
  | { readonly kind: "unreachable"; readonly why: string }
  /** done or not, nobody knows */
  | { readonly kind: "unclear"; readonly why: string }
  | { readonly kind: "token"; readonly why: string }
  /** Slack's own word, final */
  | { readonly kind: "refused"; readonly code: string; readonly why: string };

const tokenErrors = new Set([
  "invalid_auth",
  "not_authed",
  "account_inactive",
  "token_revoked",
  "token_expired",
]);

/** Answers that say nothing about whether the work was done. */
const unclearErrors = new Set([
  "internal_error",
  "fatal_error",
  "service_unavailable",
  "request_timeout",
]);

/** Causes at which no byte of the request was sent. */
const neverLeft = new Set([
  "ECONNREFUSED",
  "ENOTFOUND",
  "EAI_AGAIN",
  "ENETUNREACH",
  "EHOSTUNREACH",
]);

export function troubleOf(error: unknown): Trouble {
  if (error instanceof webApi.WebAPIRateLimitedError) {
    const retryMs = Math.max(1, error.retryAfter) * 1000;
    return { kind: "limited", retryMs, why: `asked to wait ${error.retryAfter} s` };
  }
  if (error instanceof webApi.WebAPIPlatformError) return platformTrouble(error.data.error);
  if (error instanceof webApi.WebAPIHTTPError) {
    return { kind: "unclear", why: `HTTP ${error.statusCode}` };
  }
  const code = codeOf(error);
  const why = code ?? (error instanceof Error ? error.message : String(error));
  return code !== undefined && neverLeft.has(code)
    ? { kind: "unreachable", why }
    : { kind: "unclear", why };
}

function platformTrouble(code: string): Trouble {
  if (tokenErrors.has(code)) return { kind: "token", why: code };
  if (code === "ratelimited") return { kind: "limited", retryMs: 30_000, why: code };
  return unclearErrors.has(code)
    ? { kind: "unclear", why: code }
    : { kind: "refused", code, why: sentence(code) };
}

/** The innermost system error's code: the client wraps what `fetch` wraps. */
function codeOf(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined;
  const inner = "original" in error ? error.original : error.cause;
  const deeper = codeOf(inner);
  if (deeper !== undefined) return deeper;
  const code = "code" in error ? String(error.code) : undefined;
  return code?.startsWith("slack_") === true ? undefined : code;
}

const remedies: Readonly<Record<string, string>> = {
  not_in_channel: "the bot is not in the channel: invite it there",
  channel_not_found:
    "there is no such channel for the bot: check its id, and invite the bot if it is private",
  is_archived: "the channel is archived: unarchive it or take it out of the configuration",
  missing_scope:
    "the app lacks a permission: compare its scopes with the list in README and install it again",
  restricted_action: "the workspace does not let the bot write there: ask its administrator",
  not_allowed_token_type: "this kind of token cannot do that: give the bot token (xoxb-…)",
};

const sentence = (code: string): string => `${remedies[code] ?? "Slack refuses it"} (${code})`;

export const tokenSentence = (why: string): string =>
  `Slack does not take the bot's token (${why}). Install the app again, put the new token where the configuration says, and start once more.`;
