import type { Around } from "./column.ts";
import type { RowFacts } from "./file-kind.ts";
import type { Layout } from "./find-headings.ts";
import { plainHeading } from "./heading.ts";
import type { SheetRow } from "./sheet-row.ts";

/** A row that could not be taken, or was taken and wants to be looked at. */
export interface RowWord {
  readonly line: number;
  readonly reason: string;
}

/** What one row says, under the key that makes it one of its kind. */
export interface ReadLine {
  readonly line: number;
  readonly key: string;
  readonly facts: RowFacts;
}

export interface ReadRows {
  readonly lines: readonly ReadLine[];
  readonly bad: readonly RowWord[];
}

/** Reads every row below the headings; what is wrong with one is told with its line and column. */
export function readRows(
  layout: Layout,
  body: readonly SheetRow[],
  decimal: Around["decimal"],
): ReadRows {
  const lines: ReadLine[] = [];
  const bad: RowWord[] = [];
  const seen = new Map<string, number>();
  for (const row of body) {
    if (row.problem === undefined && row.cells.every((cell) => isEmpty(cell))) continue;
    const facts = row.problem ?? rowFacts(layout, row, decimal);
    const read = typeof facts === "string" ? facts : keyed(layout, row, { facts, seen });
    if (typeof read === "string") bad.push({ line: row.line, reason: read });
    else lines.push(read);
  }
  return { lines, bad };
}

const isEmpty = (cell: string | undefined): boolean => /^[\s\u00a0\-\u2013]*$/.test(cell ?? "");

/** Longer than any note in a list; our choice, no source. */
const mostLetters = 2000;

function rowFacts(layout: Layout, row: SheetRow, decimal: Around["decimal"]): RowFacts | string {
  const { kind, columns, headings } = layout;
  const strange = notARow(layout, row);
  if (strange !== undefined) return strange;
  const facts: Record<string, unknown> = {};
  for (const [index, column] of columns.entries()) {
    const cell = (row.cells[index] ?? "").trim();
    if (column === undefined || isEmpty(cell)) continue;
    const heading = headings[index] ?? "";
    if (cell.length > mostLetters)
      return `${heading}: the cell holds ${cell.length} letters, "${cell.slice(0, 40)}..."; shorten it to ${mostLetters}`;
    const read = column.read(cell, { heading: plainHeading(heading), decimal });
    if (!read.ok) return `${heading}: ${read.problem}`;
    facts[column.field] = read.value;
  }
  const missing = columns.findIndex(
    (column) => column?.required && facts[column.field] === undefined,
  );
  if (missing >= 0) {
    const name = columns[missing]?.field.replaceAll("_", " ");
    return `${headings[missing]}: the ${name} is missing; fill it in or delete the line`;
  }
  return kind.finish === undefined ? facts : kind.finish(facts);
}

/** What stands between rows and is none. */
function notARow({ columns, headings }: Layout, row: SheetRow): string | undefined {
  const over = row.cells.slice(columns.length).filter((cell) => !isEmpty(cell));
  if (over.length > 0) {
    return `has ${row.cells.length} cells, the headings are ${columns.length}; "${over[0]?.slice(0, 40)}" stands under none: put quotes around a cell that holds the separator`;
  }
  const filled = row.cells.filter((cell) => !isEmpty(cell));
  const repeats = row.cells.every((cell, index) => cell.trim() === (headings[index] ?? "").trim());
  if (repeats && filled.length > 1) return "is the headings again; delete the line";
  if (filled.length <= 2 && /^(?:grand |sub)?-?totals?\b|^sum\b|^count\b/i.test(filled[0] ?? ""))
    return `"${filled[0]}" looks like a total, not like a row; delete the line`;
  return undefined;
}

function keyed(
  { kind, headings, columns }: Layout,
  row: SheetRow,
  given: { readonly facts: RowFacts; readonly seen: Map<string, number> },
): ReadLine | string {
  const { facts, seen } = given;
  const key = kind.key.map((field) => plainKey(facts[field])).join("\n");
  const part = kind.parts === undefined ? "" : plainKey(facts[kind.parts.field]);
  const before = seen.get(`${key}\n${part}`);
  if (before !== undefined) {
    const names = kind.key.flatMap((field) => (facts[field] === undefined ? [] : [facts[field]]));
    const naming = columns.findIndex((column) => column?.required === true);
    const heading = headings[naming] ?? kind.key.at(-1) ?? "";
    return `${heading}: ${names.join(" ")} stands on line ${before} already; delete one of the two, or give one another name`;
  }
  seen.set(`${key}\n${part}`, row.line);
  return { line: row.line, key, facts };
}

const plainKey = (value: unknown): string => String(value ?? "").toLowerCase();
