import { chmodSync, existsSync } from "node:fs";
import Database from "better-sqlite3";
import { z } from "zod";

/**
 * The SQLite file of one account's keys: device, access token, encrypted rooms and the crypto
 * machine's own databases. Apart from the store, and always fully synced: a ratchet that a power
 * cut turns back would use a message key twice. An older copy of it must never come back to life.
 */
export interface KeyFile {
  readonly path: string;
  readonly note: (name: string) => string | undefined;
  readonly setNote: (name: string, value: string) => void;
  readonly notesLike: (
    prefix: string,
  ) => readonly { readonly name: string; readonly value: string }[];
  readonly databases: () => readonly KeptDatabase[];
  /** puts whole databases in the place of what was kept of them */
  readonly keepWhole: (databases: readonly WholeDatabase[]) => void;
  readonly apply: (changes: readonly Change[]) => void;
  readonly rows: (database: string, store: string) => readonly KeptRow[];
  readonly close: () => void;
}

export interface KeptDatabase {
  readonly name: string;
  readonly version: number;
  /** JSON of its object stores */
  readonly shape: string;
}
export interface KeptRow {
  /** JSON of a string, a number or an array of them */
  readonly key: string;
  readonly value: Uint8Array;
}
export interface WholeDatabase extends KeptDatabase {
  readonly rows: readonly (KeptRow & { readonly store: string })[];
}

interface Place {
  readonly database: string;
  readonly store: string;
}
export type Change = Place &
  (
    | { readonly kind: "put"; readonly key: string; readonly value: Uint8Array }
    | { readonly kind: "delete"; readonly key: string }
    | { readonly kind: "clear" }
  );

const applicationId = 0x52424b32;
const tables = `
CREATE TABLE IF NOT EXISTS note (name TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT;
CREATE TABLE IF NOT EXISTS machine (name TEXT PRIMARY KEY, version INTEGER NOT NULL, shape TEXT NOT NULL) STRICT;
CREATE TABLE IF NOT EXISTS machine_row (
  database TEXT NOT NULL, store TEXT NOT NULL, key TEXT NOT NULL, value BLOB NOT NULL,
  PRIMARY KEY (database, store, key)
) STRICT;
PRAGMA application_id = ${applicationId};
`;

/** Opens or makes the file, for its owner alone. Throws where it is something else or cannot be written. */
export function openKeyFile(path: string): KeyFile {
  const isNew = !existsSync(path);
  // long enough for a program that is just ending
  const db = new Database(path, { timeout: 2000 });
  const id = Number(db.pragma("application_id", { simple: true }));
  const known = Number(db.prepare("SELECT count(*) FROM sqlite_schema").pluck().get());
  if (id !== applicationId && known > 0) {
    db.close();
    throw new Error(`${path} is not a key file of this program.`);
  }
  if (isNew) chmodSync(path, 0o600);
  db.pragma("journal_mode = WAL");
  db.pragma("synchronous = FULL");
  db.exec(tables);
  // two programs with one device's keys would each turn the other's ratchets back
  db.pragma("locking_mode = EXCLUSIVE");
  db.exec("BEGIN IMMEDIATE; COMMIT");
  return keyFileOn(db, path);
}

const noteRows = z.array(z.object({ name: z.string(), value: z.string() }));
const databaseRows = z.array(
  z.object({ name: z.string(), version: z.number(), shape: z.string() }),
);
const machineRows = z.array(z.object({ key: z.string(), value: z.instanceof(Uint8Array) }));

function keyFileOn(db: Database.Database, path: string): KeyFile {
  const note = db.prepare("SELECT value FROM note WHERE name = ?").pluck();
  const setNote = db.prepare(
    "INSERT INTO note VALUES (?, ?) ON CONFLICT DO UPDATE SET value = excluded.value",
  );
  const like = db.prepare(
    "SELECT name, value FROM note WHERE substr(name, 1, length(?)) = ? ORDER BY name",
  );
  const databases = db.prepare("SELECT name, version, shape FROM machine");
  const rows = db.prepare("SELECT key, value FROM machine_row WHERE database = ? AND store = ?");
  const writer = writerOn(db);
  return {
    path,
    note: (name) => z.string().optional().parse(note.get(name)),
    setNote: (name, value) => void setNote.run(name, value),
    notesLike: (prefix) => noteRows.parse(like.all(prefix, prefix)),
    databases: () => databaseRows.parse(databases.all()),
    rows: (database, store) => machineRows.parse(rows.all(database, store)),
    ...writer,
    close: () => void db.close(),
  };
}

function writerOn(db: Database.Database): Pick<KeyFile, "apply" | "keepWhole"> {
  const put = db.prepare(
    "INSERT INTO machine_row VALUES (?, ?, ?, ?) ON CONFLICT DO UPDATE SET value = excluded.value",
  );
  const remove = db.prepare("DELETE FROM machine_row WHERE database = ? AND store = ? AND key = ?");
  const clear = db.prepare("DELETE FROM machine_row WHERE database = ? AND store = ?");
  const clearAll = db.prepare("DELETE FROM machine_row WHERE database = ?");
  const shape = db.prepare(
    "INSERT INTO machine VALUES (?, ?, ?) ON CONFLICT DO UPDATE SET version = excluded.version, shape = excluded.shape",
  );
  return {
    apply: db.transaction((changes: readonly Change[]) => {
      for (const change of changes) {
        const { database, store } = change;
        if (change.kind === "put") put.run(database, store, change.key, change.value);
        else if (change.kind === "delete") remove.run(database, store, change.key);
        else clear.run(database, store);
      }
    }),
    keepWhole: db.transaction((whole: readonly WholeDatabase[]) => {
      for (const database of whole) {
        clearAll.run(database.name);
        shape.run(database.name, database.version, database.shape);
        for (const row of database.rows) put.run(database.name, row.store, row.key, row.value);
      }
    }),
  };
}
