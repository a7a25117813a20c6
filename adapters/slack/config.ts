import { z } from "zod";
import { secretSchema } from "../serve/secret.ts";

const channelId = z
  .string()
  .regex(
    /^[CG][A-Z0-9]{2,}$/,
    "a channel id looks like C024BE7LH: at the foot of the channel's details",
  );

/** Without a public address: the bot opens a socket to Slack. */
const socketSchema = z.strictObject({ app_token: secretSchema });

/** Slack calls the bot: TLS stands in front. */
const httpSchema = z.strictObject({
  signing_secret: secretSchema,
  host: z.string().min(1).default("127.0.0.1"),
  port: z.int().min(1).max(65_535),
});

const local = new Set(["127.0.0.1", "localhost", "[::1]"]);
const apiUrl = z.url().refine((text) => {
  const url = URL.parse(text);
  return url?.protocol === "https:" || (url !== null && local.has(url.hostname));
}, "must begin with https:// (http:// would show the token to everybody on the way)");

/** What stands under "slack" in the configuration. */
export const slackConfigSchema = z
  .strictObject({
    bot_token: secretSchema,
    socket: socketSchema.optional(),
    http: httpSchema.optional(),
    /** the names that stand in the record -> channel ids */
    channels: z.record(z.string().min(1), channelId),
    /** whether admitted people may write to the bot directly */
    direct: z.boolean().default(true),
    board: z.string().optional(),
    operator: z.string().optional(),
    /** shortest time between two edits of the board */
    board_seconds: z.number().min(1).max(600).default(5),
    /** after a lost answer: how long until the channel's history shows what was posted */
    settle_seconds: z.number().min(0).max(60).default(2.5),
    api_url: apiUrl.optional(),
  })
  .superRefine((config, context) => {
    const fail = (path: string, message: string): void => {
      context.addIssue({ code: "custom", path: [path], message });
    };
    if ((config.socket === undefined) === (config.http === undefined)) {
      fail("socket", 'give one of "socket" (no public address needed) and "http"');
    }
    const names = Object.keys(config.channels);
    if (names.length === 0) fail("channels", "name at least one channel");
    const ids = Object.values(config.channels);
    const twice = ids.find((id, index) => ids.indexOf(id) !== index);
    if (twice !== undefined) fail("channels", `${twice} stands under two names`);
    for (const field of ["board", "operator"] as const) {
      const name = config[field];
      if (name === undefined || names.includes(name)) continue;
      fail(field, `names no channel of "channels"; known: ${names.join(", ")}`);
    }
  });

export type SlackConfig = z.output<typeof slackConfigSchema>;
