import { randomBytes } from "node:crypto";
import { z } from "zod";
import { type Connection, connect } from "./client.ts";
import type { MatrixConfig } from "./config.ts";
import type { KeyFile } from "./keys/key-file.ts";
import { Trouble } from "./trouble.ts";

export interface Session {
  readonly connection: Connection;
  readonly user: string;
  readonly device: string;
}

const whoamiSchema = z.object({ user_id: z.string(), device_id: z.string().optional() });

/**
 * The account's one device. Logs in by password the first time, with a device id that was kept
 * before; from then on the kept token is used, so that the server knows a repeated request again.
 */
export async function openSession(config: MatrixConfig, file: KeyFile): Promise<Session> {
  const token = file.note("token") ?? config.token ?? (await logIn(config, file));
  const connection = connect(config.server, token);
  const who = whoamiSchema.parse(await connection.ask("GET", "/_matrix/client/v3/account/whoami"));
  if (who.user_id !== config.user) {
    throw new Trouble(
      "token",
      `the token belongs to ${who.user_id}, the configuration names ${config.user}`,
    );
  }
  if (who.device_id === undefined)
    throw new Trouble("token", "the token belongs to no device; log in with a password");
  const kept = file.note("device");
  if (kept !== undefined && kept !== who.device_id) {
    throw new Trouble(
      "token",
      `the key file ${file.path} belongs to device ${kept}, the token to ${who.device_id}; they are only good together`,
    );
  }
  file.setNote("device", who.device_id);
  file.setNote("token", token);
  return { connection, user: who.user_id, device: who.device_id };
}

async function logIn(config: MatrixConfig, file: KeyFile): Promise<string> {
  if (config.password === undefined) {
    throw new Trouble(
      "token",
      `${file.path} holds no login yet: give "password" or "token" for the first start`,
    );
  }
  const device = file.note("device") ?? `READBACK${randomBytes(4).toString("hex").toUpperCase()}`;
  file.setNote("device", device);
  const answer = await askLogin(config, device);
  const { access_token } = z.object({ access_token: z.string() }).parse(answer);
  file.setNote("token", access_token);
  return access_token;
}

async function askLogin(config: MatrixConfig, device: string): Promise<unknown> {
  try {
    return await connect(config.server, "").ask("POST", "/_matrix/client/v3/login", {
      type: "m.login.password",
      identifier: { type: "m.id.user", user: config.user },
      password: config.password,
      device_id: device,
      initial_device_display_name: "readback",
    });
  } catch (error) {
    if (!(error instanceof Trouble) || error.kind !== "refused") throw error;
    throw new Trouble(
      "token",
      `the server does not let ${config.user} in with this password (${error.message}); mend "user" or "password"`,
    );
  }
}
