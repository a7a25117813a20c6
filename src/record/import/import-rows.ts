import { type PutOutcome, putFacts } from "../registry.ts";
import { type Store, transact } from "../store.ts";
import type { Column } from "./column.ts";
import { type FileKind, fileKinds } from "./kinds.ts";
import { importSettings } from "./settings-rows.ts";

/** One row of a file with the number of the line that it starts on. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

export interface Imported {
  readonly plural: string;
  readonly counts: Readonly<Record<PutOutcome, number>>;
  readonly bad: readonly { readonly line: number; readonly reason: string }[];
  /** headings that nothing was done with */
  readonly unused: readonly string[];
}

/** Takes in an office file: the first row is its headings. Good rows are kept, bad ones told. */
export function importRows(store: Store, rows: readonly CsvRow[]): Imported | string {
  const [head, ...body] = rows;
  if (head === undefined) return "The file is empty.";
  const headings = head.cells.map(plainHeading);
  if (headings[0] === "setting" && headings[1] === "value") return importSettings(store, body);
  const kind = fileKinds.find(({ marks }) =>
    marks.every((mark) => headings.some((heading) => mark.test(heading))),
  );
  if (kind === undefined) {
    return `The headings tell no known kind of file: ${head.cells.join(", ")}. Known: ${fileKinds.map(({ plural }) => plural).join(", ")}.`;
  }
  const columns = headings.map((heading) =>
    kind.columns.find((column) => column.heading.test(heading)),
  );
  const counts = { added: 0, changed: 0, same: 0 };
  const bad: { line: number; reason: string }[] = [];
  const seen = new Map<string, number>();
  transact(store, () => {
    for (const row of body) {
      if (row.cells.every((cell) => cell.trim() === "")) continue;
      const read = readRow({ kind, columns, headings }, row, seen);
      if (typeof read === "string") bad.push({ line: row.line, reason: read });
      else counts[putFacts(store, { kind: kind.kind, ...read })]++;
    }
  });
  const unused = head.cells.filter(
    (cell, index) => cell.trim() !== "" && columns[index] === undefined,
  );
  return { plural: kind.plural, counts, bad, unused };
}

interface Layout {
  readonly kind: FileKind;
  readonly columns: readonly (Column | undefined)[];
  readonly headings: readonly string[];
}

interface Line {
  readonly key: string;
  readonly facts: Readonly<Record<string, unknown>>;
}

function readRow(layout: Layout, row: CsvRow, seen: Map<string, number>): Line | string {
  const { kind, columns, headings } = layout;
  if (row.cells.slice(columns.length).some((cell) => cell.trim() !== "")) {
    return `has ${row.cells.length} cells, the headings are ${columns.length}`;
  }
  const facts: Record<string, unknown> = {};
  for (const [index, column] of columns.entries()) {
    const cell = (row.cells[index] ?? "").trim();
    if (column === undefined || cell === "" || cell === "-") continue;
    const heading = headings[index] ?? "";
    const read = column.read(cell, heading);
    if (!read.ok) return `${heading}: ${read.problem}`;
    facts[column.field] = read.value;
  }
  const missing = kind.columns.find(
    ({ field, required }) => required && facts[field] === undefined,
  );
  if (missing !== undefined) return `${missing.field.replaceAll("_", " ")} is missing`;
  const key = kind.key.map((field) => String(facts[field] ?? "").toLowerCase()).join("\n");
  const before = seen.get(key);
  if (before !== undefined) {
    return `${kind.key.map((field) => facts[field]).join(" ")} stands on line ${before} already`;
  }
  seen.set(key, row.line);
  return { key, facts };
}

const plainHeading = (cell: string): string =>
  cell
    .toLowerCase()
    .replace(/[\s_]+/g, " ")
    .replace(/[()[\]:*]/g, " ")
    .replace(/\s+/g, " ")
    .trim();
