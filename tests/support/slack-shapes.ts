import { z } from "zod";

/** What the methods that we use take, as they arrive: form fields, JSON inside some of them. */
const json = <T extends z.ZodType>(shape: T) =>
  z
    .string()
    .transform((text, context) => {
      try {
        return JSON.parse(text);
      } catch {
        context.issues.push({ code: "custom", message: "is not JSON", input: text });
        return z.NEVER;
      }
    })
    .pipe(shape);
const flag = z.enum(["true", "false"]).transform((text) => text === "true");
const count = z.string().regex(/^\d+$/).transform(Number);

export const tsShape = z.string().regex(/^\d{10}\.\d{6}$/, "a ts looks like 1700000000.000100");
export const channelShape = z.string().regex(/^[CGD][A-Z0-9]{2,}$/, "a channel id is meant");
const userShape = z.string().regex(/^[UW][A-Z0-9]{2,}$/);

/** Letters of a text as people see them, entities counted as they stand. */
const upTo = (most: number) =>
  z.string().refine((text) => [...text].length <= most, `longer than ${most} characters`);

const plainText = (most: number) =>
  z.strictObject({
    type: z.literal("plain_text"),
    text: upTo(most).min(1),
    emoji: z.boolean().optional(),
  });
const marked = (most: number) =>
  z.strictObject({
    type: z.literal("mrkdwn"),
    text: upTo(most).min(1),
    verbatim: z.boolean().optional(),
  });
const either = (most: number) => z.union([plainText(most), marked(most)]);
const id = { block_id: upTo(255).optional() };

const block = z.discriminatedUnion("type", [
  z.strictObject({ type: z.literal("header"), text: plainText(150), ...id }),
  z.strictObject({ type: z.literal("divider"), ...id }),
  z.strictObject({
    type: z.literal("section"),
    text: either(3000).optional(),
    fields: z.array(either(2000)).max(10).optional(),
    ...id,
  }),
  z.strictObject({
    type: z.literal("context"),
    elements: z.array(either(3000)).min(1).max(10),
    ...id,
  }),
]);

const blocks = z
  .array(block)
  .max(50, "more than 50 blocks")
  .refine((list) => JSON.stringify(list).length <= 13_000, "msg_blocks_too_long")
  .refine((list) => {
    const ids = list.flatMap((one) => (one.block_id === undefined ? [] : [one.block_id]));
    return new Set(ids).size === ids.length;
  }, "block ids are not unique");

export const metadataShape = z.strictObject({
  event_type: z.string().min(1),
  event_payload: z.record(z.string(), z.unknown()),
});

/** Slack cuts a text at 40,000; the bot is to stay at 4,000. */
const text = upTo(4000);
const message = {
  channel: channelShape,
  text: text.min(1),
  blocks: json(blocks).optional(),
  metadata: json(metadataShape).optional(),
  parse: z.enum(["none", "full"]).optional(),
  link_names: flag.optional(),
};
const page = {
  limit: count.pipe(z.number().min(1).max(999)).optional(),
  cursor: z.string().optional(),
  oldest: z
    .string()
    .regex(/^\d+(\.\d+)?$/)
    .optional(),
  latest: z
    .string()
    .regex(/^\d+(\.\d+)?$/)
    .optional(),
  inclusive: flag.optional(),
  include_all_metadata: flag.optional(),
};

/** Every method that the stand-in knows; an argument that is not here is refused. */
export const methodShapes = {
  "auth.test": z.strictObject({}),
  "apps.connections.open": z.strictObject({}),
  "chat.postMessage": z.strictObject({
    ...message,
    thread_ts: tsShape.optional(),
    unfurl_links: flag.optional(),
    unfurl_media: flag.optional(),
  }),
  "chat.update": z.strictObject({ ...message, ts: tsShape }),
  "conversations.history": z.strictObject({ channel: channelShape, ...page }),
  "conversations.replies": z.strictObject({ channel: channelShape, ts: tsShape, ...page }),
  "conversations.info": z.strictObject({ channel: channelShape }),
  "conversations.open": z.strictObject({ users: userShape }),
  "pins.add": z.strictObject({ channel: channelShape, timestamp: tsShape }),
  "files.getUploadURLExternal": z.strictObject({ filename: z.string().min(1), length: count }),
  "files.completeUploadExternal": z.strictObject({
    files: json(z.array(z.strictObject({ id: z.string(), title: z.string().optional() })).min(1)),
    channel_id: channelShape,
    thread_ts: tsShape.optional(),
    initial_comment: z.string().optional(),
  }),
  "files.info": z.strictObject({ file: z.string().regex(/^F[A-Z0-9]+$/) }),
} as const;
export type Method = keyof typeof methodShapes;
