import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { createHmac, randomBytes } from "node:crypto";
import { existsSync, mkdirSync, mkdtempSync, openSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { z } from "zod";

const python = ".hs/synapse/bin/python";
const nioPythons = [".hs/nio/bin/python", "/usr/bin/python3"];

const imports = (program: string, modules: string): boolean => {
  if (!existsSync(program)) return false;
  try {
    execFileSync(program, ["-c", `import ${modules}`], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
};

/** The Python that has the second client; undefined where none has. */
export const nioPython = (): string | undefined =>
  nioPythons.find((one) => imports(one, "nio, olm"));
export const homeserverIsHere = (): boolean =>
  imports(python, "synapse") && nioPython() !== undefined;

export interface Account {
  readonly user: string;
  readonly password: string;
  readonly token: string;
}

export interface Homeserver {
  readonly url: string;
  readonly folder: string;
  readonly register: (name: string) => Promise<Account>;
  /** ends the server, gently or not, and starts it again; resolves when it answers */
  readonly restart: (signal?: "SIGTERM" | "SIGKILL") => Promise<void>;
  readonly stop: () => Promise<void>;
}

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      const port = typeof address === "object" && address !== null ? address.port : 0;
      server.close(() => resolve(port));
    });
  });

/**
 * On SQLite this server counts the messages between devices on from the last one that it still
 * holds: after a restart with nothing left to deliver it begins at one again, takes a message with a
 * small number for one that the device has acknowledged with the larger number of before, and drops
 * it. With the database that is meant for use the count is kept. A row that nobody fetches keeps it here.
 */
function rememberPlace(file: string): void {
  const db = new Database(file, { timeout: 10_000 });
  db.exec(`
CREATE TRIGGER remember_place AFTER INSERT ON device_inbox WHEN new.user_id <> '@nobody:hs.test' BEGIN
  DELETE FROM device_inbox WHERE user_id = '@nobody:hs.test';
  INSERT INTO device_inbox (user_id, device_id, stream_id, message_json)
    VALUES ('@nobody:hs.test', 'PLACE', new.stream_id, '{}');
END`);
  db.close();
}

/** What waits for an account's devices (keys, that is) is never delivered. */
export function loseKeysFor(server: Homeserver, account: Account): void {
  const db = new Database(join(server.folder, "homeserver.db"), { timeout: 10_000 });
  db.prepare("DELETE FROM device_inbox WHERE user_id = ?").run(account.user);
  db.close();
}

const freely = "{per_second: 10000, burst_count: 10000}";

/** `limits`: the server's own rate limits instead of none. */
function settings(port: number, limits: boolean): string {
  const open = `
rc_message: ${freely}
rc_registration: ${freely}
rc_login: {address: ${freely}, account: ${freely}, failed_attempts: ${freely}}
rc_joins: {local: ${freely}, remote: ${freely}}
rc_joins_per_room: ${freely}
rc_room_creation: ${freely}
rc_invites: {per_room: ${freely}, per_user: ${freely}, per_issuer: ${freely}}
rc_admin_redaction: ${freely}
`;
  return `
listeners: [{port: ${port}, type: http, tls: false, bind_addresses: ["127.0.0.1"], resources: [{names: [client, media], compress: false}]}]
registration_shared_secret: "tests-only"
trusted_key_servers: []
suppress_key_server_warning: true
federation_domain_whitelist: []
presence: {enabled: false}
url_preview_enabled: false
${limits ? "" : open}`;
}

/** Starts a homeserver of its own on the loopback, with an empty database. */
export async function startHomeserver(limits = false): Promise<Homeserver> {
  const folder = mkdtempSync(join(tmpdir(), "hs-"));
  const port = await freePort();
  const url = `http://127.0.0.1:${port}`;
  mkdirSync(folder, { recursive: true });
  const main = join(folder, "homeserver.yaml");
  const more = join(folder, "test.yaml");
  execFileSync(
    python,
    [
      ...["-m", "synapse.app.homeserver", "--server-name", "hs.test", "--config-path", main],
      ...["--data-directory", folder, "--generate-config", "--report-stats=no"],
    ],
    { stdio: "ignore" },
  );
  writeFileSync(join(folder, "hs.test.log.config"), "version: 1\nroot: {level: ERROR}\n");
  writeFileSync(more, settings(port, limits));
  const start = async (): Promise<ChildProcess> => {
    const out = openSync(join(folder, "out"), "a");
    const child = spawn(python, ["-m", "synapse.app.homeserver", "-c", main, "-c", more], {
      stdio: ["ignore", out, out],
    });
    await until(
      async () => (await fetch(`${url}/_matrix/client/versions`)).ok,
      120_000,
      "the homeserver",
    );
    return child;
  };
  let child = await start();
  rememberPlace(join(folder, "homeserver.db"));
  const end = async (signal: "SIGTERM" | "SIGKILL"): Promise<void> => {
    const gone = new Promise((resolve) => child.once("exit", resolve));
    child.kill(signal);
    await gone;
  };
  return {
    url,
    folder,
    register: (name) => register(url, name),
    restart: async (signal = "SIGTERM") => {
      await end(signal);
      child = await start();
    },
    stop: () => end("SIGTERM"),
  };
}

async function register(url: string, username: string): Promise<Account> {
  const path = `${url}/_synapse/admin/v1/register`;
  const { nonce } = z.object({ nonce: z.string() }).parse(await (await fetch(path)).json());
  const password = randomBytes(9).toString("hex");
  const mac = createHmac("sha1", "tests-only")
    .update([nonce, username, password, "notadmin"].join("\0"))
    .digest("hex");
  const response = await fetch(path, {
    method: "POST",
    body: JSON.stringify({ nonce, username, password, admin: false, mac }),
  });
  const made = z
    .object({ user_id: z.string(), access_token: z.string() })
    .parse(await response.json());
  return { user: made.user_id, token: made.access_token, password };
}

/** Asks until it holds; an error counts as not yet. */
export async function until(
  holds: () => boolean | Promise<boolean>,
  mostMs: number,
  what: string,
): Promise<void> {
  const end = Date.now() + mostMs;
  for (;;) {
    try {
      if (await holds()) return;
    } catch (error) {
      if (Date.now() > end) throw error;
    }
    if (Date.now() > end) throw new Error(`${what}: not within ${mostMs} ms`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
