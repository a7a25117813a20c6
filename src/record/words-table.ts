import { z } from "zod";
import { type Store, sql } from "./store.ts";

/** The one table whose content may be erased: messages, free text of entries, file bytes. */
const row = z.object({
  salt: z.string(),
  content: z.union([z.string(), z.instanceof(Buffer), z.null()]),
  erased: z.string().nullable(),
});

export interface Words {
  readonly salt: string;
  /** absent once erased */
  readonly text?: string;
  readonly bytes?: Uint8Array;
  /** ISO date of the erasure */
  readonly erased?: string;
}

export const messageKey = (platform: string, id: string): string => `message:${platform}:${id}`;
export const entryKey = (job: number, place: number): string => `entry:${job}.${place}`;
export const fileKey = (sha256: string): string => `file:${sha256}`;

export function putWords(
  store: Store,
  key: string,
  words: { readonly salt: string; readonly content: string | Uint8Array },
): void {
  sql(store, "INSERT OR IGNORE INTO words (key, salt, content) VALUES (?, ?, ?)").run(
    key,
    words.salt,
    words.content,
  );
}

/** The same for a file's bytes: one that was erased and is sent again is there again. */
export function putFile(
  store: Store,
  key: string,
  file: { readonly salt: string; readonly content: Uint8Array },
): void {
  sql(
    store,
    `INSERT INTO words (key, salt, content) VALUES (?, ?, ?) ON CONFLICT (key) DO UPDATE
       SET salt = excluded.salt, content = excluded.content, erased = NULL WHERE erased IS NOT NULL`,
  ).run(key, file.salt, file.content);
}

export function getWords(store: Store, key: string): Words | undefined {
  const found = sql(store, "SELECT salt, content, erased FROM words WHERE key = ?").get(key);
  if (found === undefined) return undefined;
  const { salt, content, erased } = row.parse(found);
  return {
    salt,
    ...(typeof content === "string" ? { text: content } : {}),
    ...(content instanceof Buffer ? { bytes: content } : {}),
    ...(erased === null ? {} : { erased }),
  };
}

/** Puts a dated stub in the place of what stands under a key; whether there was something. */
export function eraseWords(store: Store, key: string, at: string): boolean {
  const erased = sql(
    store,
    "UPDATE words SET content = NULL, salt = '', erased = ? WHERE key = ? AND erased IS NULL",
  ).run(at, key);
  return erased.changes > 0;
}

/** Bytes of a file that the bot sends: they can be made again, and stay only until all is sent. */
export const sentKey = (sha256: string): string => `sent:${sha256}`;

/** Lets go of what was sent, once nothing waits to be sent any more. */
export function letSentGo(store: Store): void {
  sql(
    store,
    `DELETE FROM words WHERE key >= 'sent:' AND key < 'sent;' AND NOT EXISTS (
       SELECT 1 FROM outbox WHERE state <> 'sent' AND state IN ('pending', 'sending'))`,
  ).run();
}
