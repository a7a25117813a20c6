import { z } from "zod";

/** Only what is used of Slack's events; the rest may change without harm. */
export const fileSchema = z.object({
  id: z.string(),
  name: z.string().nullish(),
  mimetype: z.string().nullish(),
  size: z.number().nullish(),
  url_private: z.string().nullish(),
  mode: z.string().nullish(),
  file_access: z.string().nullish(),
});
export type SlackFile = z.output<typeof fileSchema>;

export const messageSchema = z.object({
  ts: z.string(),
  user: z.string().nullish(),
  text: z.string().nullish(),
  subtype: z.string().nullish(),
  bot_id: z.string().nullish(),
  thread_ts: z.string().nullish(),
  edited: z.object({ ts: z.string() }).nullish(),
  files: z.array(fileSchema).nullish(),
  reply_count: z.number().nullish(),
  latest_reply: z.string().nullish(),
  /** in a channel's history alone; a message with many names not everybody */
  reactions: z
    .array(z.object({ name: z.string(), users: z.array(z.string()).nullish() }))
    .nullish()
    .catch(null),
  /** ours holds the key of what was posted; others' may be stripped of everything */
  metadata: z
    .object({ event_payload: z.looseObject({ key: z.unknown() }).nullish() })
    .nullish()
    .catch(null),
});
export type SlackMessage = z.output<typeof messageSchema>;

const messageEvent = messageSchema.extend({
  type: z.enum(["message", "app_mention"]),
  channel: z.string(),
  message: messageSchema.nullish(),
  previous_message: messageSchema.nullish(),
  deleted_ts: z.string().nullish(),
});

const reactionEvent = z.object({
  type: z.enum(["reaction_added", "reaction_removed"]),
  user: z.string(),
  reaction: z.string(),
  event_ts: z.string(),
  item: z.object({ type: z.string(), channel: z.string().nullish(), ts: z.string().nullish() }),
});

const otherEvent = z.object({ type: z.string(), channel: z.unknown().optional() });

/** Most telling first: anything that is neither is only named in the log. */
export const envelopeSchema = z.object({
  team_id: z.string(),
  event_id: z.string().nullish(),
  event: z.union([messageEvent, reactionEvent, otherEvent]),
});
export type Envelope = z.output<typeof envelopeSchema>;
export type MessageEvent = z.output<typeof messageEvent>;
export type ReactionEvent = z.output<typeof reactionEvent>;
