import { z } from "zod";
import { takeFromRest } from "./rest-table.ts";
import { type Store, sql, transact } from "./store.ts";
import { entryKey, eraseWords, fileKey, getWords, messageKey } from "./words-table.ts";

interface Erased {
  readonly platform: string;
  readonly id: string;
}

/**
 * Erases what a message said and the files that came with it, wherever they stand, and what was
 * answered in its words; dated stubs stay. False where there was nothing left to erase.
 */
export function eraseMessage(store: Store, message: Erased, at: string): boolean {
  // what is taken out is overwritten, not only given free
  store.db.pragma("secure_delete = ON");
  return transact(store, () => {
    const own = entriesFor(store, message);
    const quoted = wordsOf(store, message, own);
    const keys = [
      messageKey(message.platform, message.id),
      ...own.map(({ job, place }) => entryKey(job, place)),
      ...filesOnlyIn(store, message).map(fileKey),
    ];
    const found = keys.map((key) => eraseWords(store, key, at)).some((one) => one);
    // what was derived from the words goes with them
    for (const { job } of own) takeFromRest(store, job);
    eraseAnswers(store, message, quoted);
    return found;
  });
}

/** Gives the free space of the file back, so that nothing can be read out of it; false where another program is in the way. */
export function clearFreeSpace(store: Store): boolean {
  try {
    store.db.exec("VACUUM");
    store.db.pragma("wal_checkpoint(TRUNCATE)");
    return true;
  } catch {
    return false;
  }
}

const places = z.array(z.object({ job: z.number(), place: z.number() }));

function entriesFor(store: Store, { platform, id }: Erased): z.output<typeof places> {
  const rows = sql(store, "SELECT job, place FROM entry WHERE platform = ? AND message = ?");
  return places.parse(rows.all(platform, id));
}

const spoken = z.object({ text: z.string() });
/** Letters from which words are somebody's own and no reading: our choice, no source. */
const fewest = 16;

/** The message, and the longer pieces of it that entries keep. */
function wordsOf(
  store: Store,
  message: Erased,
  entries: z.output<typeof places>,
): readonly string[] {
  const whole = getWords(store, messageKey(message.platform, message.id))?.text;
  const pieces = entries.flatMap(({ job, place }) => {
    const kept = getWords(store, entryKey(job, place))?.text;
    return kept === undefined ? [] : z.array(z.string()).parse(JSON.parse(kept));
  });
  const text = whole === undefined ? [] : [spoken.parse(JSON.parse(whole)).text];
  return [...new Set([...text, ...pieces])].filter(({ length }) => length >= fewest);
}

const fileRows = z.array(z.string());
const hashes = z.array(z.object({ sha256: z.string() }));

/** Hashes of the files that came with this message and with no other. */
function filesOnlyIn(store: Store, { platform, id }: Erased): readonly string[] {
  const own = sql(store, "SELECT files FROM inbox WHERE platform = ? AND id = ?").pluck();
  const others = sql(
    store,
    `SELECT 1 FROM inbox LEFT JOIN words ON key = 'message:' || platform || ':' || id
     WHERE instr(files, ?) > 0 AND NOT (platform = ? AND id = ?) AND erased IS NULL LIMIT 1`,
  );
  return fileRows
    .parse(own.all(platform, id))
    .flatMap((files) => hashes.parse(JSON.parse(files)))
    .map(({ sha256 }) => sha256)
    .filter((sha256) => others.get(sha256, platform, id) === undefined);
}

/** What was sent in answer to a message, or quotes it, keeps its place without its text. */
function eraseAnswers(store: Store, { platform, id }: Erased, quoted: readonly string[]): void {
  const gone = "text = '[erased]', wire = NULL";
  const sent = "state IN ('sent', 'failed')";
  sql(store, `UPDATE outbox SET ${gone} WHERE platform = ? AND answers = ? AND ${sent}`).run(
    platform,
    id,
  );
  const quotes = sql(store, `UPDATE outbox SET ${gone} WHERE instr(text, ?) > 0 AND ${sent}`);
  for (const words of quoted) quotes.run(words);
}
