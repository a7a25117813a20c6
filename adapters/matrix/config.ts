import { z } from "zod";
import { secretSchema } from "../serve/secret.ts";

const roomName = z
  .string()
  .regex(
    /^[!#][^:\s]+(:\S+)?$/,
    "a room is its id, !abc:chat.example, or its address, #south:chat.example",
  );

const roomSchema = z.strictObject({
  room: roomName,
  /** the name that stands in the record, and by which boards and answers find the room */
  channel: z.string().min(1),
});

const local = new Set(["127.0.0.1", "localhost", "[::1]"]);
const serverSchema = z.url().refine((text) => {
  const url = URL.parse(text);
  return url?.protocol === "https:" || (url?.protocol === "http:" && local.has(url.hostname));
}, "must begin with https:// (http:// would show the token to everybody on the way; only this machine itself may do without)");

/** What stands under "matrix" in the configuration. */
export const configSchema = z
  .strictObject({
    server: serverSchema.transform((url) => url.replace(/\/+$/, "")),
    user: z.string().regex(/^@[^:\s]+:\S+$/, "the bot's full id looks like @readback:chat.example"),
    /** needed for the first start only: keys are made, cross-signed and kept then */
    password: secretSchema.optional(),
    /** instead of a password: an access token of a device that nothing else uses */
    token: secretSchema.optional(),
    /** the file of the device's keys */
    keys: z.string().min(1),
    rooms: z.array(roomSchema).min(1),
    /** whether admitted people may talk to the bot in a room of their own */
    direct: z.boolean().default(true),
    board: z.string().optional(),
    operator: z.string().optional(),
    /** shortest time between two edits of the board; servers' default limits ask for 15 */
    board_seconds: z.number().min(1).max(600).default(15),
  })
  .superRefine((config, context) => {
    const channels = config.rooms.map(({ channel }) => channel);
    for (const name of ["board", "operator"] as const) {
      const channel = config[name];
      if (channel === undefined || channels.includes(channel)) continue;
      const message = `names no channel of "rooms"; known: ${channels.join(", ")}`;
      context.addIssue({ code: "custom", path: [name], message });
    }
    for (const field of ["channel", "room"] as const) {
      const all = config.rooms.map((room) => room[field]);
      const twice = all.find((value, index) => all.indexOf(value) !== index);
      if (twice === undefined) continue;
      context.addIssue({
        code: "custom",
        path: ["rooms"],
        message: `${field} ${twice} stands twice`,
      });
    }
  });

export type MatrixConfig = z.output<typeof configSchema>;
