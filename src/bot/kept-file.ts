import type { FileOut } from "../model.ts";
import { fingerprint } from "../record/fingerprint.ts";
import type { Attached } from "../record/outbox.ts";
import { putFile, sentKey } from "../record/words-table.ts";
import type { Bot } from "./desk.ts";

/** Keeps a file under its hash until it is sent; gives what an outbox row says of it. */
export function keptFile(bot: Bot, { name, type, bytes }: FileOut): Attached {
  const sha256 = fingerprint(bytes);
  putFile(bot.store, sentKey(sha256), { salt: bot.salt(), content: Buffer.from(bytes) });
  return { name, type, size: bytes.length, sha256 };
}
