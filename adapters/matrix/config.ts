import { z } from "zod";
import { secretSchema } from "../serve/secret.ts";

const roomName = z
  .string()
  .regex(
    /^[!#][^:\s]+(:\S+)?$/,
    "a room is its id, !abc:chat.example, or its address, #south:chat.example",
  );

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
    /** the names that stand in the record -> rooms */
    rooms: z.record(z.string().min(1), roomName),
    /** whether admitted people may talk to the bot in a room of their own */
    direct: z.boolean().default(true),
    board: z.string().optional(),
    operator: z.string().optional(),
    /** shortest time between two edits of the board; servers' default limits ask for 15 */
    board_seconds: z.number().min(1).max(600).default(15),
  })
  .superRefine((config, context) => {
    const fail = (path: string, message: string): void => {
      context.addIssue({ code: "custom", path: [path], message });
    };
    const names = Object.keys(config.rooms);
    if (names.length === 0) fail("rooms", "name at least one room");
    const rooms = Object.values(config.rooms);
    const twice = rooms.find((value, index) => rooms.indexOf(value) !== index);
    if (twice !== undefined) fail("rooms", `${twice} stands under two names`);
    for (const field of ["board", "operator"] as const) {
      const name = config[field];
      if (name === undefined || names.includes(name)) continue;
      fail(field, `names no room of "rooms"; known: ${names.join(", ")}`);
    }
  });

export type MatrixConfig = z.output<typeof configSchema>;
