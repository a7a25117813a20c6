import type { webApi } from "@slack/bolt";
import type { ChatKind, ChatPlatform, Door } from "../chat-platform.ts";
import type { Person } from "../serve/people.ts";
import { problemsOf } from "../serve/problems.ts";
import { catchUp } from "./catch-up.ts";
import { check, slackClient } from "./check.ts";
import { type SlackConfig, slackConfigSchema } from "./config.ts";
import { crewOf } from "./crew.ts";
import { envelopeSchema } from "./events.ts";
import { httpTransport } from "./http-transport.ts";
import { findPart } from "./look.ts";
import { escaped } from "./plain-text.ts";
import { sendPart } from "./send.ts";
import { socketTransport } from "./socket-transport.ts";
import { take } from "./take.ts";
import { translate } from "./translate.ts";
import type { Transport, TransportOptions } from "./transport.ts";
import { tokenSentence, troubleOf } from "./trouble.ts";
import type { Me, Working } from "./working.ts";

/** Slack: events over HTTP or a socket, posts over the Web API. */
export const slack: ChatKind = {
  name: "slack",
  configure: (raw, people) => {
    const parsed = slackConfigSchema.safeParse(raw, { reportInput: true });
    return parsed.success
      ? { ok: true, platform: slackPlatform(parsed.data, people) }
      : { ok: false, problems: problemsOf(parsed.error, ["platforms", "slack"]) };
  },
};

/** Slack repeats an event this often; after that nobody brings it again. */
const lastRetry = 3;

function slackPlatform(config: SlackConfig, people: readonly Person[]): ChatPlatform {
  const client = slackClient(config.bot_token, config.api_url);
  let working: Working | undefined;
  let transport: Transport | undefined;
  let stopping = false;
  let stop: () => void = () => {};
  const stopped = new Promise<void>((resolve) => {
    stop = resolve;
  });
  const notYet = { kind: "later", retryMs: 1000, why: "not connected yet" } as const;
  return {
    name: "slack",
    longest: 3800,
    lengthOf: (text) => escaped(text).length,
    boardEveryMs: config.board_seconds * 1000,
    settleMs: config.settle_seconds * 1000,
    ...(config.board === undefined ? {} : { boardChannel: config.board }),
    ...(config.operator === undefined ? {} : { operatorChannel: config.operator }),
    start: async (door) => {
      const me = await whoAmI(client, door, stopped);
      if (me === undefined) return "stopped before Slack answered";
      const crew = crewOf(config, people);
      const standing = new Map<string, string>();
      const now = { config, crew, door, client, me, standing, stopping: () => stopping };
      working = now;
      transport = transportFor(now);
      const how = await Promise.race([transport.open(), stopped]);
      const names = crew.channels.map(({ name }) => name).join(", ");
      return `Slack: ${how ?? "stopped"}; channels ${names}; ${people.filter((one) => one.slack !== undefined).length} people`;
    },
    send: async (part, context) =>
      working === undefined ? notYet : sendPart(working, part, context),
    find: async (part, since, { before }) =>
      working === undefined
        ? { kind: "unclear", why: notYet.why }
        : findPart(working, part, { since, ...(before === undefined ? {} : { before }) }),
    stop: async () => {
      stopping = true;
      stop();
      await transport?.close();
    },
    check: () => check(config, people, client),
  };
}

const longestPauseMs = 30_000;

/** Asks until Slack answers: without the own id nothing could be told apart from the bot's own words. */
async function whoAmI(
  client: webApi.WebClient,
  door: Door,
  stopped: Promise<void>,
): Promise<Me | undefined> {
  for (let failures = 1; ; failures++) {
    try {
      const { team_id: team, user_id: userId, bot_id: botId } = await client.auth.test();
      if (team !== undefined && userId !== undefined && botId !== undefined) {
        return { team, userId, botId };
      }
      door.fatal("Slack: this is no bot token; give the one that begins with xoxb-.");
    } catch (error) {
      const trouble = troubleOf(error);
      if (trouble.kind === "token") door.fatal(tokenSentence(trouble.why));
      else door.log.warn("slack_away", { why: trouble.why, failures });
    }
    const waitMs = Math.min(longestPauseMs, 250 * 2 ** failures);
    let timer: NodeJS.Timeout | undefined;
    const waited = new Promise<"waited">((resolve) => {
      timer = setTimeout(() => resolve("waited"), waitMs);
    });
    const first = await Promise.race([waited, stopped]);
    clearTimeout(timer);
    if (first !== "waited") return undefined;
  }
}

function transportFor(given: Working): Transport {
  const { config, me } = given;
  const known = { me, token: config.bot_token, log: given.door.log };
  let catching: Promise<void> = Promise.resolve();
  const catchAgain = (): void => {
    catching = catching
      .then(() => catchUp(working))
      .catch((error: unknown) => door.log.warn("not_caught_up", { why: String(error) }));
  };
  const { door, stop } = watched(given.door, catchAgain);
  const working = { ...given, door };
  const options: TransportOptions = {
    handle: once(working),
    connected: door.connected,
    joined: catchAgain,
    failed: ({ why, final }) => {
      if (final) door.fatal(tokenSentence(why));
      else door.log.warn("slack_trouble", { why });
    },
  };
  const made =
    config.http === undefined
      ? socketTransport(
          { app_token: config.socket?.app_token ?? "", api_url: config.api_url },
          known,
          options,
        )
      : httpTransport(config.http, known, options);
  return {
    open: made.open,
    close: async () => {
      stop();
      await made.close();
      await catching;
    },
  };
}

/** Slack brings an event again for about five minutes; what was not kept by then is read from the channel. */
const missedMs = 6 * 60_000;

/** Catches up as soon as the store takes something after it refused, and else when Slack has given up. */
function watched(door: Door, catchAgain: () => void): { readonly door: Door; stop: () => void } {
  let timer: NodeJS.Timeout | undefined;
  const again = (): void => {
    clearTimeout(timer);
    timer = undefined;
    catchAgain();
  };
  const deliver: Door["deliver"] = (arrival) => {
    try {
      const outcome = door.deliver(arrival);
      if (timer !== undefined) again();
      return outcome;
    } catch (error) {
      timer ??= setTimeout(again, missedMs);
      throw error;
    }
  };
  return { door: { ...door, deliver }, stop: () => clearTimeout(timer) };
}

/** The same event at the same time, because its first delivery takes long, is handled once. */
function once(working: Working): TransportOptions["handle"] {
  const handling = new Map<string, Promise<void>>();
  return async (body, retry) => {
    const parsed = envelopeSchema.safeParse(body);
    if (!parsed.success) {
      working.door.log.warn("slack_odd_event", { why: parsed.error.issues[0]?.message });
      return;
    }
    const { event } = parsed.data;
    if (event.type === "message" && !("ts" in event)) {
      working.door.log.error("slack_odd_event", { why: "a message of an unknown form" });
    }
    const meaning = translate(parsed.data);
    if (!("id" in meaning)) return take(working, meaning, true);
    const known = handling.get(meaning.id);
    if (known !== undefined) return known;
    const work = take(working, meaning, retry >= lastRetry);
    handling.set(meaning.id, work);
    try {
      await work;
    } finally {
      handling.delete(meaning.id);
    }
  };
}
