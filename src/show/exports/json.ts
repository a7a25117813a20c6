import type { ExportRecord } from "./export-record.ts";
import { inOneOrder } from "./in-one-order.ts";

/** What the file calls itself; the schema of its shape is published beside it. */
export const jsonFormat = "readback export";
export const jsonVersion = 1;

/** Another file of the same export. */
export interface FilePrint {
  readonly name: string;
  readonly sha256: string;
}

/** The export as one JSON text, in pieces: a line a job, an entry, a file; sealed at its end. */
export function jsonPieces(record: ExportRecord, files: readonly FilePrint[]): Iterable<string> {
  return record.seal(unclosed(record, files));
}

function* unclosed(record: ExportRecord, files: readonly FilePrint[]): Generator<string> {
  const { about, chain } = record;
  const heads: readonly (readonly [string, string])[] = [
    ["format", JSON.stringify(jsonFormat)],
    ["version", String(jsonVersion)],
    ["scope", JSON.stringify(about.scope)],
    ["revision", String(about.revision)],
    ["since_revision", JSON.stringify(about.since ?? null)],
    ["as_of", JSON.stringify(about.asOf)],
    ["time_zone", JSON.stringify(record.zone)],
    ["units", JSON.stringify(record.units)],
    ["digest", JSON.stringify(about.digest)],
  ];
  yield `{\n${heads.map(([name, text]) => `"${name}": ${text}`).join(",\n")}`;
  yield* lines("jobs", record.shown, inOneOrder);
  yield* lines("due", record.due ?? []);
  yield* lines("changes", record.changes ?? []);
  yield* lines("files", files);
  if (chain === undefined) return;
  yield `,\n"people": ${JSON.stringify(chain.people)}`;
  yield* lines("entries", chain.entries);
  yield* lines("other_heads", chain.other_heads);
  yield* lines("words", chain.words);
}

function* lines(
  name: string,
  items: Iterable<object>,
  write: (item: object) => string = (item) => JSON.stringify(item),
): Generator<string> {
  yield `,\n"${name}": [`;
  let before = "";
  for (const item of items) {
    yield `${before}\n${write(item)}`;
    before = ",";
  }
  yield before === "" ? "]" : "\n]";
}
