import { z } from "zod";
import { takeFromRest } from "./rest-table.ts";
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

/** Erases what a message said, wherever its words stand; a dated stub stays. */
export function eraseMessage(
  store: Store,
  message: { readonly platform: string; readonly id: string },
  at: string,
): boolean {
  const keys = [messageKey(message.platform, message.id)];
  const entries = sql(store, "SELECT job, place FROM entry WHERE platform = ? AND message = ?").all(
    message.platform,
    message.id,
  );
  for (const entry of z.array(z.object({ job: z.number(), place: z.number() })).parse(entries)) {
    keys.push(entryKey(entry.job, entry.place));
    // what was derived from the words goes with them
    takeFromRest(store, entry.job);
  }
  const erase = sql(
    store,
    "UPDATE words SET content = NULL, salt = '', erased = ? WHERE key = ? AND erased IS NULL",
  );
  return keys.map((key) => erase.run(at, key).changes).some((changes) => changes > 0);
}
