import { webApi } from "@slack/bolt";
import { z } from "zod";
import type { CheckLine } from "../chat-platform.ts";
import { clockCheck } from "../serve/clock-check.ts";
import type { Person } from "../serve/people.ts";
import type { SlackConfig } from "./config.ts";
import { tokenSentence, troubleOf } from "./trouble.ts";

/** What the app must be allowed, as README lists it. */
export const scopes = [
  "app_mentions:read",
  "channels:history",
  "channels:read",
  "chat:write",
  "files:read",
  "files:write",
  "groups:history",
  "groups:read",
  "im:history",
  "mpim:history",
  "pins:write",
  "reactions:read",
] as const;

const infoSchema = z.object({
  channel: z.object({ is_member: z.boolean().optional(), is_archived: z.boolean().optional() }),
});

/** Asks Slack about token, permissions and channels; nothing is sent to anybody. */
export async function check(
  config: SlackConfig,
  people: readonly Person[],
  client: webApi.WebClient,
): Promise<readonly CheckLine[]> {
  const here = people.filter((person) => person.slack !== undefined).length;
  const crew: CheckLine = {
    ok: here > 0,
    says:
      here > 0
        ? `Slack: ${here} people are admitted.`
        : 'Slack: nobody is admitted; give people a "slack" id.',
  };
  try {
    const who = await client.auth.test();
    const has = new Set(who.response_metadata?.scopes ?? []);
    const lacks = has.size === 0 ? [] : scopes.filter((scope) => !has.has(scope));
    const token: CheckLine = { ok: true, says: `Slack: the bot is ${who.user} in ${who.team}.` };
    const rights: CheckLine = {
      ok: lacks.length === 0,
      says:
        lacks.length === 0
          ? "Slack: the app has the permissions that it needs."
          : `Slack: the app lacks ${lacks.join(", ")}; add them and install the app again.`,
    };
    const channels: CheckLine[] = [];
    for (const [name, id] of Object.entries(config.channels)) {
      channels.push(await channelLine(client, name, id));
    }
    const base = config.api_url ?? "https://slack.com/api/";
    const clock = await clockCheck("Slack", new URL("api.test", base).href, Date.now);
    return [token, rights, ...clock, ...(await socketLine(config)), ...channels, crew];
  } catch (error) {
    const trouble = troubleOf(error);
    const says =
      trouble.kind === "token"
        ? tokenSentence(trouble.why)
        : `Slack cannot be reached (${trouble.why}); check the network and "api_url".`;
    return [{ ok: false, says }, crew];
  }
}

async function channelLine(client: webApi.WebClient, name: string, id: string): Promise<CheckLine> {
  try {
    const { channel } = infoSchema.parse(await client.conversations.info({ channel: id }));
    if (channel.is_archived === true) {
      return { ok: false, says: `Slack: ${name} (${id}) is archived.` };
    }
    return channel.is_member === true
      ? { ok: true, says: `Slack: the bot is in ${name}.` }
      : { ok: false, says: `Slack: the bot is not in ${name} (${id}); invite it there.` };
  } catch (error) {
    return { ok: false, says: `Slack: ${name} (${id}): ${troubleOf(error).why}.` };
  }
}

/** Opening a connection's address shows whether the app's token is right; no socket is opened. */
async function socketLine(config: SlackConfig): Promise<readonly CheckLine[]> {
  if (config.socket === undefined) return [];
  const client = slackClient(config.socket.app_token, config.api_url);
  try {
    await client.apps.connections.open({});
    return [{ ok: true, says: "Slack: Socket Mode is on." }];
  } catch (error) {
    const { why } = troubleOf(error);
    return [
      {
        ok: false,
        says: `Slack: Socket Mode does not work (${why}); switch it on and give the app-level token with connections:write.`,
      },
    ];
  }
}

/** A client that never tries twice by itself: one lost answer would be two posts. */
export function slackClient(token: string, apiUrl: string | undefined): webApi.WebClient {
  return new webApi.WebClient(token, {
    retryConfig: { retries: 0 },
    timeout: 10_000,
    rejectRateLimitedCalls: true,
    logLevel: webApi.LogLevel.ERROR,
    ...(apiUrl === undefined ? {} : { slackApiUrl: apiUrl }),
  });
}
