import { existsSync } from "node:fs";
import { z } from "zod";
import type { CheckLine } from "../chat-platform.ts";
import { clockCheck } from "../serve/clock-check.ts";
import type { Person } from "../serve/people.ts";
import { type Connection, connect } from "./client.ts";
import type { MatrixConfig } from "./config.ts";
import { type KeyFile, openKeyFile } from "./keys/key-file.ts";
import { openRooms, stateOrNothing } from "./rooms.ts";
import { Trouble } from "./trouble.ts";
import { joinedRooms } from "./welcome.ts";

const good = (says: string): CheckLine => ({ ok: true, says: `Matrix: ${says}` });
const bad = (says: string): CheckLine => ({ ok: false, says: `Matrix: ${says}` });
const because = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

/** Looks whether server, token, rooms and rights are right. Sends, joins and logs in nowhere. */
export async function check(
  config: MatrixConfig,
  people: readonly Person[],
): Promise<readonly CheckLine[]> {
  const known = people.filter((one) => one.matrix !== undefined).length;
  const lines: CheckLine[] = [
    known > 0
      ? good(`${known} people are listened to`)
      : bad('nobody under "people" has a "matrix" id; nobody would be heard'),
    ...(await clockCheck("Matrix", `${config.server}/_matrix/client/versions`, Date.now)),
  ];
  if (!existsSync(config.keys)) return [...lines, ...(await beforeFirstStart(config))];
  let file: KeyFile;
  try {
    file = openKeyFile(config.keys);
  } catch (error) {
    return [
      ...lines,
      bad(
        `the key file ${config.keys} cannot be opened: ${because(error)}; if the bot is running, stop it for this check`,
      ),
    ];
  }
  try {
    const token = file.note("token") ?? config.token;
    if (token === undefined) return [...lines, ...(await beforeFirstStart(config))];
    return [...lines, ...(await withToken(config, connect(config.server, token), file))];
  } finally {
    file.close();
  }
}

async function beforeFirstStart(config: MatrixConfig): Promise<readonly CheckLine[]> {
  const connection = connect(config.server, config.token ?? "");
  try {
    await connection.ask("GET", "/_matrix/client/versions");
  } catch (error) {
    return [bad(`${config.server} does not answer as a Matrix server: ${because(error)}`)];
  }
  if (config.token !== undefined)
    return [good("the server answers"), await whoIs(config, connection)];
  return config.password === undefined
    ? [bad('there was no start yet: give "password" or "token" for the first one')]
    : [good("the server answers; the password is tried at the first start")];
}

async function whoIs(config: MatrixConfig, connection: Connection): Promise<CheckLine> {
  try {
    const answer = await connection.ask("GET", "/_matrix/client/v3/account/whoami");
    const { user_id } = z.object({ user_id: z.string() }).parse(answer);
    return user_id === config.user
      ? good(`the token is good for ${user_id}`)
      : bad(`the token belongs to ${user_id}, the configuration names ${config.user}`);
  } catch (error) {
    return bad(
      error instanceof Trouble && error.kind === "token"
        ? "the server no longer takes the token; put the key file aside and start once with the password"
        : `${config.server} does not answer: ${because(error)}`,
    );
  }
}

async function withToken(
  config: MatrixConfig,
  connection: Connection,
  file: KeyFile,
): Promise<readonly CheckLine[]> {
  const who = await whoIs(config, connection);
  if (!who.ok) return [who];
  const signed = file.note("cross-signed") === "yes";
  const lines = [
    who,
    signed
      ? good("the device is cross-signed")
      : bad('the device is not cross-signed yet; give "password" for one start'),
  ];
  const rooms = openRooms(config, file, connection.ask);
  try {
    await rooms.resolve();
    const joined = await joinedRooms(connection.ask);
    for (const channel of Object.keys(config.rooms)) {
      const room = rooms.roomOf(channel);
      if (room === undefined || !joined.includes(room))
        lines.push(bad(`${channel}: the bot is not in it; invite it from an admitted account`));
      else lines.push(...(await aboutRoom(config, { connection, rooms }, { channel, room })));
    }
  } catch (error) {
    lines.push(bad(`the rooms could not be looked at: ${because(error)}`));
  }
  return lines;
}

const powersSchema = z.object({
  users: z.record(z.string(), z.number()).default({}),
  users_default: z.number().default(0),
  events: z.record(z.string(), z.number()).default({}),
  events_default: z.number().default(0),
  state_default: z.number().default(50),
});

async function aboutRoom(
  config: MatrixConfig,
  by: { readonly connection: Connection; readonly rooms: ReturnType<typeof openRooms> },
  { channel, room }: { readonly channel: string; readonly room: string },
): Promise<readonly CheckLine[]> {
  const path = `/_matrix/client/v3/rooms/${encodeURIComponent(room)}/state/m.room.power_levels/`;
  const powers = powersSchema.parse((await stateOrNothing(by.connection.ask, path)) ?? {});
  const mine = powers.users[config.user] ?? powers.users_default;
  const cipher = await by.rooms.cipherOf(room);
  const type = cipher === undefined ? "m.room.message" : "m.room.encrypted";
  const how = cipher === undefined ? "plain" : "encrypted";
  const lines = [
    mine >= (powers.events[type] ?? powers.events_default)
      ? good(`${channel}: joined, ${how}, may write`)
      : bad(`${channel}: joined, ${how}, but may not write; raise the bot's level`),
  ];
  if (
    channel === config.board &&
    mine < (powers.events["m.room.pinned_events"] ?? powers.state_default)
  ) {
    lines.push(
      bad(
        `${channel}: the board can be posted but not pinned; let the bot change pinned messages, or pin it by hand`,
      ),
    );
  }
  return lines;
}
