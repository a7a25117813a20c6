import { deserialize, serialize } from "node:v8";
import { z } from "zod";
import {
  type Cursor,
  completed,
  factory,
  type ObjectStore,
  type OpenDatabase,
  prototypes,
  type Request,
  settled,
  type Transaction,
} from "./indexed-db.ts";
import type { Change, KeyFile, WholeDatabase } from "./key-file.ts";

const path = z.union([z.string(), z.array(z.string())]);
const shapeSchema = z.array(
  z.object({
    name: z.string(),
    keyPath: path.nullable(),
    indexes: z.array(
      z.object({ name: z.string(), keyPath: path, unique: z.boolean(), multiEntry: z.boolean() }),
    ),
  }),
);
type Shape = z.infer<typeof shapeSchema>;

/** Says what a call changed, once its transaction is complete. */
type Told = () => readonly Change[];

/** The state of this process's one mirror. */
interface Mirror {
  file: KeyFile | undefined;
  watching: boolean;
  /** the machine is starting: its changes are written as whole databases when it has started */
  starting: boolean;
  changed: boolean;
  /** what each running transaction will have changed, in the order of its calls */
  readonly pending: WeakMap<Transaction, Told[]>;
}
const mirror: Mirror = {
  file: undefined,
  watching: false,
  starting: true,
  changed: false,
  pending: new WeakMap(),
};

/**
 * Brings the machine's databases back from the file, runs `start`, and from then on writes every
 * transaction of theirs to the file before the machine learns that it is done. The patch is global:
 * one account a process.
 */
export async function mirrored<T>(file: KeyFile, start: () => Promise<T>): Promise<T> {
  if (mirror.file !== undefined)
    throw new Error("one account a process: its keys are open already");
  for (const database of file.databases()) await restore(file, database);
  mirror.file = file;
  if (!mirror.watching) watch();
  mirror.watching = true;
  const started = await start();
  const known = new Map(file.databases().map(({ name, version }) => [name, version]));
  const whole: WholeDatabase[] = [];
  for (const { name, version } of await factory.databases()) {
    if (mirror.changed || known.get(name) !== version) whole.push(await dump(name));
  }
  file.keepWhole(whole);
  mirror.starting = false;
  return started;
}

/** After the machine was closed: forgets its databases, so that a file may be opened again. */
export async function release(): Promise<void> {
  mirror.file = undefined;
  mirror.starting = true;
  mirror.changed = false;
  for (const { name } of await factory.databases()) await settled(factory.deleteDatabase(name));
}

async function restore(
  file: KeyFile,
  kept: { readonly name: string; readonly version: number; readonly shape: string },
): Promise<void> {
  const shape = shapeSchema.parse(JSON.parse(kept.shape));
  const opening = factory.open(kept.name, kept.version);
  opening.addEventListener("upgradeneeded", () => shapeUp(opening.result, shape));
  const db = await settled(opening);
  if (shape.length > 0) {
    const transaction = db.transaction(
      shape.map(({ name }) => name),
      "readwrite",
    );
    const done = completed(transaction);
    for (const { name, keyPath } of shape) {
      const store = transaction.objectStore(name);
      for (const { key, value } of file.rows(kept.name, name)) {
        // a key that is part of the value must not be given again
        if (keyPath === null) store.put(deserialize(value), JSON.parse(key));
        else store.put(deserialize(value));
      }
    }
    await done;
  }
  db.close();
}

function shapeUp(db: OpenDatabase, shape: Shape): void {
  for (const { name, keyPath, indexes } of shape) {
    const store = db.createObjectStore(name, { keyPath });
    for (const { name: index, keyPath: of, unique, multiEntry } of indexes) {
      store.createIndex(index, of, { unique, multiEntry });
    }
  }
}

async function dump(name: string): Promise<WholeDatabase> {
  const db = await settled(factory.open(name));
  const names = [...db.objectStoreNames];
  const shape: Shape[number][] = [];
  const rows: { store: string; key: string; value: Uint8Array }[] = [];
  if (names.length > 0) {
    const transaction = db.transaction(names, "readonly");
    for (const store of names.map((one) => transaction.objectStore(one))) {
      shape.push(shapeOf(store));
      const keys = z.array(z.unknown());
      const asked = [settled(store.getAllKeys()), settled(store.getAll())] as const;
      const [found, values] = await Promise.all(asked);
      const all = keys.parse(values);
      keys.parse(found).forEach((key, index) => {
        rows.push({ store: store.name, key: keyText(key), value: serialize(all[index]) });
      });
    }
  }
  const { version } = db;
  db.close();
  return { name, version, shape: JSON.stringify(shape), rows };
}

function shapeOf(store: ObjectStore): Shape[number] {
  if (store.autoIncrement)
    throw new Error(`the key database's ${store.name} counts by itself: not mirrored`);
  const indexes = [...store.indexNames].map((name) => {
    const { keyPath, unique, multiEntry } = store.index(name);
    return { name, keyPath, unique, multiEntry };
  });
  return { name: store.name, keyPath: store.keyPath, indexes };
}

type Key = string | number | readonly Key[];
const keySchema: z.ZodType<Key> = z.lazy(() =>
  z.union([z.string(), z.number(), z.array(keySchema)]),
);
const keyText = (key: unknown): string => JSON.stringify(keySchema.parse(key));

/** Sees every writing call. Each kind of call is told how to say what it changed, once it is done. */
function watch(): void {
  const { store, cursor, database } = prototypes;
  const put = (on: ObjectStore, [value]: readonly unknown[], request: Request): Told => {
    const bytes = serialize(value);
    return () => [{ ...placeOf(on), kind: "put", key: keyText(request.result), value: bytes }];
  };
  replace(store, "put", put);
  replace(store, "add", put);
  replace(store, "clear", (on: ObjectStore) => () => [{ ...placeOf(on), kind: "clear" }]);
  replace(cursor, "update", (on: Cursor, [value]: readonly unknown[]) => {
    const [at, key, bytes] = [storeOf(on), keyText(on.primaryKey), serialize(value)];
    return () => [{ ...placeOf(at), kind: "put", key, value: bytes }];
  });
  replace(cursor, "delete", (on: Cursor) => {
    const [at, key] = [storeOf(on), keyText(on.primaryKey)];
    return () => [{ ...placeOf(at), kind: "delete", key }];
  });
  watchDelete(store);
  const open = database.transaction;
  database.transaction = function (this: unknown, ...args: unknown[]): unknown {
    const made: unknown = open?.apply(this, args);
    // registered first, so it runs before the machine goes on
    if (isTransaction(made) && made.mode !== "readonly") flushOn(made);
    return made;
  };
}

function flushOn(transaction: Transaction): void {
  transaction.addEventListener("complete", () => {
    const changes = mirror.pending.get(transaction) ?? [];
    if (changes.length === 0) return;
    mirror.changed = true;
    if (mirror.starting) return;
    try {
      mirror.file?.apply(changes.flatMap((change) => change()));
    } catch (error) {
      // a machine that goes on with keys that were not kept would use them twice after a restart
      const why = error instanceof Error ? error.message : String(error);
      process.stderr.write(
        `The Matrix keys cannot be written (${why}); ended before anything is sent with them.\n`,
      );
      process.exit(74);
    }
  });
}

/** A range is deleted key by key, as they are when the deletion's turn comes. */
function watchDelete(store: (typeof prototypes)["store"]): void {
  const remove = store.delete;
  store.delete = function (this: ObjectStore, range: unknown): unknown {
    const keys = this.getAllKeys(range);
    const made: unknown = remove?.call(this, range);
    changesOf(this.transaction).push(() =>
      z
        .array(z.unknown())
        .parse(keys.result)
        .map((key) => ({ ...placeOf(this), kind: "delete", key: keyText(key) })),
    );
    return made;
  };
}

function replace<On extends ObjectStore | Cursor>(
  of: (typeof prototypes)["store"],
  name: string,
  told: (on: On, args: readonly unknown[], request: Request) => Told,
): void {
  const original = of[name];
  of[name] = function (this: On, ...args: unknown[]): unknown {
    const before = name === "put" || name === "add" ? undefined : told(this, args, noRequest);
    const made: unknown = original?.apply(this, args);
    const change = before ?? (isRequest(made) ? told(this, args, made) : undefined);
    if (change !== undefined) changesOf(storeOf(this).transaction).push(change);
    return made;
  };
}

const noRequest: Request = { result: undefined, error: undefined, addEventListener: () => {} };
const isRequest = (made: unknown): made is Request =>
  typeof made === "object" && made !== null && "result" in made && "addEventListener" in made;
const isTransaction = (made: unknown): made is Transaction =>
  typeof made === "object" && made !== null && "mode" in made && "objectStore" in made;

function changesOf(transaction: Transaction): Told[] {
  const known = mirror.pending.get(transaction);
  if (known !== undefined) return known;
  const made: Told[] = [];
  mirror.pending.set(transaction, made);
  return made;
}

function storeOf(on: ObjectStore | Cursor): ObjectStore {
  if (!("source" in on)) return on;
  return "objectStore" in on.source ? on.source.objectStore : on.source;
}

function placeOf(store: ObjectStore): { readonly database: string; readonly store: string } {
  return { database: store.transaction.db.name, store: store.name };
}
