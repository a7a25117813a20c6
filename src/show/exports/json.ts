import type { FileOut } from "../../model.ts";
import type { ExportRecord } from "./export-record.ts";
import { inOneOrder } from "./in-one-order.ts";

/** What the file calls itself; the schema of its shape is published beside it. */
export const jsonFormat = "readback export";
export const jsonVersion = 1;

/** The export as one JSON text: a line a job, an entry, a file; sealed at its end. */
export function jsonText(record: ExportRecord, files: readonly FileOut[]): string {
  const { about, chain } = record;
  const parts: readonly (readonly [string, string])[] = [
    ["format", JSON.stringify(jsonFormat)],
    ["version", String(jsonVersion)],
    ["scope", JSON.stringify(about.scope)],
    ["revision", String(about.revision)],
    ["since_revision", JSON.stringify(about.since ?? null)],
    ["as_of", JSON.stringify(about.asOf)],
    ["time_zone", JSON.stringify(record.zone)],
    ["units", JSON.stringify(record.units)],
    ["digest", JSON.stringify(about.digest)],
    ["jobs", lines(record.shown, inOneOrder)],
    ["due", lines(record.due ?? [])],
    ["changes", lines(record.changes ?? [])],
    ["files", lines(files.map(({ name, bytes }) => ({ name, sha256: record.fingerprint(bytes) })))],
    ...(chain === undefined
      ? []
      : [
          ["people", JSON.stringify(chain.people)] as const,
          ["entries", lines(chain.entries)] as const,
          ["other_heads", lines(chain.other_heads)] as const,
          ["words", lines(chain.words)] as const,
        ]),
  ];
  return record.seal(`{\n${parts.map(([name, text]) => `"${name}": ${text}`).join(",\n")}`);
}

function lines(
  items: readonly object[],
  write: (item: object) => string = (item) => JSON.stringify(item),
): string {
  return items.length === 0 ? "[]" : `[\n${items.map((item) => write(item)).join(",\n")}\n]`;
}
