import type { Envelope, MessageEvent, ReactionEvent, SlackFile, SlackMessage } from "./events.ts";
import { idOf } from "./ids.ts";

/** What an event means for us, ids still Slack's. Names and admission come after. */
export type Meaning =
  | {
      readonly kind: "said";
      readonly id: string;
      readonly ts: string;
      readonly channel: string;
      readonly user: string;
      readonly text: string;
      readonly thread?: string;
      readonly files: readonly SlackFile[];
    }
  | {
      readonly kind: "edited";
      readonly id: string;
      /** when it was edited */
      readonly ts: string;
      readonly channel: string;
      readonly user: string;
      readonly text: string;
      readonly original: string;
      readonly thread?: string;
    }
  | {
      readonly kind: "deleted";
      readonly id: string;
      readonly ts: string;
      readonly channel: string;
      readonly original: string;
      /** who had written it, where the event says so */
      readonly user?: string;
    }
  | {
      readonly kind: "reacted";
      readonly id: string;
      readonly ts: string;
      readonly channel: string;
      readonly user: string;
      readonly target: string;
      readonly name: string;
      /** it was taken off again */
      readonly off?: true;
    }
  /** somebody removed one of the bot's own posts: the board, maybe */
  | { readonly kind: "own_removed" }
  | { readonly kind: "revoked" }
  | { readonly kind: "nothing"; readonly why: string };

const nothing = (why: string): Meaning => ({ kind: "nothing", why });

export const editId = (original: string, editedTs: string): string =>
  `${original}:edit:${editedTs}`;
export const deletionId = (original: string): string => `${original}:del`;

/** Subtypes that are something that a person said. */
const spoken = new Set(["file_share", "thread_broadcast", "me_message"]);

export function translate(envelope: Envelope): Meaning {
  const { event, team_id: team } = envelope;
  if (event.type === "tokens_revoked" || event.type === "app_uninstalled")
    return { kind: "revoked" };
  if ("reaction" in event) return reaction(event, team);
  if (!("ts" in event)) return nothing(event.type);
  if (event.subtype === "message_changed") return changed(event, team);
  if (event.subtype === "message_deleted") return deleted(event, team);
  return said(event, { team, channel: event.channel });
}

/** A message as events and histories hold it. */
export function said(
  message: SlackMessage,
  { team, channel }: { readonly team: string; readonly channel: string },
): Meaning {
  const { ts, user, subtype } = message;
  if (message.bot_id != null || subtype === "bot_message") return nothing("a bot spoke");
  if (subtype != null && !spoken.has(subtype)) return nothing(subtype);
  if (user == null) return nothing("nobody spoke");
  return {
    kind: "said",
    id: idOf({ team, channel, ts }),
    ts,
    channel,
    user,
    text: message.text ?? "",
    files: message.files ?? [],
    ...threadOf(message, { team, channel }),
  };
}

/** A message inside a thread; the thread's first message is not. */
function threadOf(
  { thread_ts, ts }: SlackMessage,
  { team, channel }: { readonly team: string; readonly channel: string },
): { readonly thread?: string } {
  return thread_ts == null || thread_ts === ts
    ? {}
    : { thread: idOf({ team, channel, ts: thread_ts }) };
}

function changed(event: MessageEvent, team: string): Meaning {
  const { message, previous_message: before, channel } = event;
  if (message == null) return nothing("an edit of nothing");
  // our own edits of the board come back this way
  if (message.bot_id != null || message.user == null) return nothing("a bot's message was edited");
  const original = idOf({ team, channel, ts: message.ts });
  if (message.subtype === "tombstone") {
    return gone(event, original, before?.user);
  }
  // link previews, pins and language marks come as edits too
  if (before != null && before.text === message.text) return nothing("no word was changed");
  const ts = message.edited?.ts ?? event.ts;
  return {
    kind: "edited",
    id: editId(original, ts),
    ts,
    channel,
    user: message.user,
    text: message.text ?? "",
    original,
    ...threadOf(message, { team, channel }),
  };
}

function deleted(event: MessageEvent, team: string): Meaning {
  const { channel, deleted_ts, previous_message: before } = event;
  if (deleted_ts == null) return nothing("a deletion of nothing");
  if (before?.bot_id != null) return { kind: "own_removed" };
  return gone(event, idOf({ team, channel, ts: deleted_ts }), before?.user);
}

const gone = (event: MessageEvent, original: string, user: string | null | undefined): Meaning => ({
  kind: "deleted",
  id: deletionId(original),
  ts: event.ts,
  channel: event.channel,
  original,
  ...(user == null ? {} : { user }),
});

/** One reaction of one person on one message, whatever the tone of skin. */
export const reactionId = (target: string, name: string, user: string): string =>
  `${target}:${name.split("::")[0] ?? name}:${user}`;

function reaction(event: ReactionEvent, team: string): Meaning {
  const { channel, ts } = event.item;
  if (event.item.type !== "message" || channel == null || ts == null) {
    return nothing("a reaction to no message");
  }
  const target = idOf({ team, channel, ts });
  const { user, reaction: name, event_ts } = event;
  return {
    kind: "reacted",
    id: reactionId(target, name, user),
    ts: event_ts,
    channel,
    user,
    target,
    name,
    ...(event.type === "reaction_removed" ? { off: true as const } : {}),
  };
}
