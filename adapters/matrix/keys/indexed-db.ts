import "fake-indexeddb/auto";
import { IDBCursor, IDBDatabase, IDBObjectStore, indexedDB } from "fake-indexeddb";

/**
 * The crypto machine keeps its keys in IndexedDB, which Node lacks; this is one in memory. Its
 * types are a browser's and not known here, so the few that are used are written out.
 */
export interface Request {
  readonly result: unknown;
  readonly error: unknown;
  addEventListener(type: "success" | "error" | "upgradeneeded" | "blocked", then: () => void): void;
}
export interface Names extends Iterable<string> {
  contains(name: string): boolean;
}
export interface Index {
  readonly name: string;
  readonly keyPath: string | string[];
  readonly unique: boolean;
  readonly multiEntry: boolean;
}
export interface ObjectStore {
  readonly name: string;
  readonly keyPath: string | string[] | null;
  readonly autoIncrement: boolean;
  readonly indexNames: Names;
  readonly transaction: Transaction;
  index(name: string): Index;
  createIndex(name: string, keyPath: string | string[], options: object): Index;
  put(value: unknown, key?: unknown): Request;
  getAll(): Request;
  getAllKeys(range?: unknown): Request;
}
export interface Transaction {
  readonly mode: "readonly" | "readwrite" | "versionchange";
  readonly db: OpenDatabase;
  objectStore(name: string): ObjectStore;
  addEventListener(type: "complete" | "abort" | "error", then: () => void): void;
}
export interface OpenDatabase {
  readonly name: string;
  readonly version: number;
  readonly objectStoreNames: Names;
  createObjectStore(name: string, options: object): ObjectStore;
  transaction(stores: readonly string[], mode: "readonly" | "readwrite"): Transaction;
  close(): void;
}
export interface Cursor {
  readonly source: ObjectStore | { readonly objectStore: ObjectStore };
  readonly primaryKey: unknown;
}
interface Factory {
  open(name: string, version?: number): Request & { readonly result: OpenDatabase };
  deleteDatabase(name: string): Request;
  databases(): Promise<readonly { readonly name: string; readonly version: number }[]>;
}

export const factory: Factory = indexedDB;

/** Where a method may be replaced, to see every call of it. */
export interface Prototype {
  [method: string]: (...args: unknown[]) => unknown;
}
export const prototypes: Readonly<Record<"store" | "cursor" | "database", Prototype>> = {
  store: IDBObjectStore.prototype,
  cursor: IDBCursor.prototype,
  database: IDBDatabase.prototype,
};

export function settled<T>(request: Request & { readonly result: T }): Promise<T> {
  return new Promise((resolve, reject) => {
    request.addEventListener("success", () => resolve(request.result));
    request.addEventListener("error", () => reject(request.error));
  });
}

export function completed(transaction: Transaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.addEventListener("complete", () => resolve());
    transaction.addEventListener("abort", () => reject(new Error("a transaction was aborted")));
  });
}
