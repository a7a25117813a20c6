import type { Found, Part, SendContext } from "../chat-platform.ts";
import type { SlackMessage } from "./events.ts";
import { readHistory, readReplies } from "./history.ts";
import { idOf, tsOfTime } from "./ids.ts";
import { threadTs } from "./send.ts";
import { troubleOf } from "./trouble.ts";
import type { Working } from "./working.ts";

/** Clocks of two machines differ, and the request took its time. */
const slackMs = 60_000;

const answersOf = /^reply:slack:(.+):\d+(?:#\d+)?$/;

/** When the earliest moment was, by Slack's clock, at which a part can have gone out, ms. */
function earliest({ door }: Working, part: Part, since: number): number {
  const answered = answersOf.exec(part.key)?.[1];
  const said = answered === undefined ? undefined : door.kept(answered)?.message.at;
  // a clock of ours that runs ahead would look behind the post; an answer never precedes its message
  return said === undefined ? since : Math.min(since, Date.parse(said));
}

/** Whether a part that may have gone out did: Slack knows no key, so the channel is read. */
export async function findPart(
  working: Working,
  part: Part,
  { since, before }: { readonly since: number } & Pick<SendContext, "before">,
): Promise<Found> {
  // an edit, a pin and an unseen upload may be done twice
  if (part.kind === "upload" || part.kind === "pin" || part.replaces !== undefined) {
    return { kind: "absent" };
  }
  const channel = working.crew.channelId(part.channel);
  if (channel === undefined) return { kind: "absent" };
  const window = {
    channel,
    oldest: tsOfTime(earliest(working, part, since) - slackMs),
    metadata: true,
  };
  const root = threadTs(part);
  try {
    // a post in a thread is not in the channel's history
    const messages =
      root === undefined
        ? await readHistory(working, window)
        : await readReplies(working, { ...window, root });
    const isIt = (message: SlackMessage): boolean =>
      part.kind === "share"
        ? message.files?.some((file) => file.id === before) === true
        : message.metadata?.event_payload?.key === part.key;
    const found = messages.find(isIt);
    return found === undefined
      ? { kind: "absent" }
      : { kind: "found", remote: idOf({ team: working.me.team, channel, ts: found.ts }) };
  } catch (error) {
    const trouble = troubleOf(error);
    // its thread was deleted: then it does not stand there
    if (trouble.kind === "refused" && trouble.code === "thread_not_found")
      return { kind: "absent" };
    return { kind: "unclear", why: trouble.why };
  }
}
