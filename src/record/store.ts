import Database from "better-sqlite3";
import { schemaSteps } from "./schema.ts";

/** An open store: one SQLite file. Other files of this folder hold its statements. */
export interface Store {
  readonly db: Database.Database;
  readonly path: string;
  readonly prepared: Map<string, Database.Statement>;
}

export interface StoreOptions {
  /** never make, change or migrate the file */
  readonly readonly?: boolean;
  /** how long to wait for another program's lock, ms */
  readonly patience_ms?: number;
}

export type Opened =
  | { readonly ok: true; readonly store: Store }
  | { readonly ok: false; readonly problem: string };

const applicationId = 0x52424b31;

/** Opens a store, making or upgrading it as needed. What stands in the way is said in one sentence. */
export function openStore(path: string, options: StoreOptions = {}): Opened {
  let db: Database.Database | undefined;
  try {
    db = new Database(path, {
      readonly: options.readonly === true,
      fileMustExist: options.readonly === true,
      timeout: options.patience_ms ?? 3000,
    });
    const problem = prepare(db, path, options.readonly === true);
    if (problem === undefined) return { ok: true, store: { db, path, prepared: new Map() } };
    db.close();
    return { ok: false, problem };
  } catch (error) {
    db?.close();
    const problem = storeProblem(error, path);
    if (problem === undefined) throw error;
    return { ok: false, problem };
  }
}

export function closeStore(store: Store): void {
  store.db.close();
}

/**
 * Commits no longer wait for the disk's own cache. A killed program still loses nothing; a power cut
 * may take the last commits back, all of them together. Only for a store whose platforms then bring
 * again what was taken back.
 */
export function relaxSync(store: Store): void {
  store.db.pragma("synchronous = NORMAL");
  // the log is moved into the file at SQLite's own 1,000 pages: at 8,000 that held all answers up for 60 ms
}

/** Copies a store into a new file while others use it, and checks the copy; a sentence where it is not whole. */
export function copyStore(store: Store, path: string): string | undefined {
  store.db.prepare("VACUUM INTO ?").run(path);
  const copy = new Database(path, { readonly: true, fileMustExist: true });
  try {
    const found = String(copy.pragma("integrity_check", { simple: true }));
    return found === "ok" ? undefined : `The copy ${path} is not whole: ${found}.`;
  } finally {
    copy.close();
  }
}

/** A statement, compiled once a store. */
export function sql(store: Store, text: string): Database.Statement {
  const known = store.prepared.get(text);
  if (known !== undefined) return known;
  const made = store.db.prepare(text);
  store.prepared.set(text, made);
  return made;
}

/** Runs steps as one transaction: all of them are kept, or none. */
export function transact<T>(store: Store, steps: () => T): T {
  return store.db.transaction(steps).immediate();
}

function prepare(db: Database.Database, path: string, readonly: boolean): string | undefined {
  const version = Number(db.pragma("user_version", { simple: true }));
  const id = Number(db.pragma("application_id", { simple: true }));
  const tables = Number(db.prepare("SELECT count(*) FROM sqlite_schema").pluck().get());
  if (id !== applicationId && (tables > 0 || version > 0 || readonly)) {
    return `${path} is not a readback store.`;
  }
  if (version > schemaSteps.length) {
    return `${path} was written by a newer readback (store version ${version}, this program knows ${schemaSteps.length}); nothing was changed.`;
  }
  if (readonly) {
    return version === schemaSteps.length ? undefined : upgradeFirst(path);
  }
  db.pragma("journal_mode = WAL");
  db.pragma("synchronous = FULL");
  db.pragma("foreign_keys = ON");
  if (version < schemaSteps.length) {
    if (version > 0 && path !== ":memory:") keepAside(db, copyName(path, version));
    upgrade(db);
  }
  // a store that can be read but not written must say so now, not at the first message
  db.exec("BEGIN IMMEDIATE; ROLLBACK");
  return undefined;
}

/** Where a store is copied to before it is upgraded: put it back in its place to return to the older program. */
export const copyName = (path: string, version: number): string => `${path}.version-${version}`;

/** The first copy is the one that counts: a later try finds it there and leaves it. */
function keepAside(db: Database.Database, copy: string): void {
  try {
    new Database(copy, { readonly: true, fileMustExist: true }).close();
    return;
  } catch {
    // not there yet
  }
  db.prepare("VACUUM INTO ?").run(copy);
}

function upgradeFirst(path: string): string {
  return `${path} was written by an older readback; open it once for writing, then it can be read.`;
}

function upgrade(db: Database.Database): void {
  db.transaction(() => {
    // read again inside: another program may have done it meanwhile
    const from = Number(db.pragma("user_version", { simple: true }));
    for (const step of schemaSteps.slice(from)) db.exec(step.sql);
    db.pragma(`user_version = ${schemaSteps.length}`);
    db.pragma(`application_id = ${applicationId}`);
  }).immediate();
}

const sentences: readonly { readonly code: RegExp; readonly says: (path: string) => string }[] = [
  {
    code: /^SQLITE_(BUSY|LOCKED)/,
    says: (path) => `${path} is in use by another program; try again when that one has ended.`,
  },
  {
    code: /^SQLITE_READONLY/,
    says: (path) =>
      `${path} or its folder is read-only; allow writing there or choose another with --db.`,
  },
  { code: /^SQLITE_(NOTADB|CORRUPT)/, says: (path) => `${path} is not a readback store.` },
  {
    code: /^SQLITE_FULL/,
    says: (path) => `The disk that holds ${path} is full; nothing of this step was kept.`,
  },
  {
    code: /^SQLITE_CANTOPEN/,
    says: (path) => `${path} cannot be opened: the file, its folder or the permission is missing.`,
  },
  {
    code: /^SQLITE_(PERM|AUTH)/,
    says: (path) => `${path} cannot be opened: permission is missing.`,
  },
  {
    code: /^SQLITE_IOERR/,
    says: (path) => `${path} cannot be read or written: the disk reports an error.`,
  },
];

/** The sentence for a fault of the store's file; undefined where the error is something else. */
export function storeProblem(error: unknown, path: string): string | undefined {
  if (error instanceof Database.SqliteError) {
    const { code } = error;
    return sentences.find((line) => line.code.test(code))?.says(path);
  }
  // the driver refuses a missing folder with a plain TypeError
  if (error instanceof TypeError && error.message.includes("directory does not exist")) {
    return `${path} cannot be opened: its folder does not exist.`;
  }
  return undefined;
}
