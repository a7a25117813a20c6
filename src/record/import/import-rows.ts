import { type PutOutcome, putFacts, readRegistry } from "../registry.ts";
import { type Store, transact } from "../store.ts";
import type { Around } from "./column.ts";
import { decimalOf } from "./decimal-mark.ts";
import type { FileKind } from "./file-kind.ts";
import { findHeadings, type Layout } from "./find-headings.ts";
import { fileKinds } from "./kinds/list.ts";
import { type ReadLine, type ReadRows, type RowWord, readRows } from "./read-rows.ts";
import { importSettings } from "./settings-rows.ts";
import type { SheetRow } from "./sheet-row.ts";
import { checkTree } from "./tree.ts";

/** A heading of the file and the field that it was taken for. */
export interface Match {
  readonly heading: string;
  readonly field: string;
}

export interface Imported {
  readonly plural: string;
  readonly counts: Readonly<Record<PutOutcome, number>>;
  readonly bad: readonly RowWord[];
  /** rows that were kept and want to be looked at */
  readonly notes: readonly RowWord[];
  readonly matched: readonly Match[];
  /** headings that nothing was done with */
  readonly unused: readonly string[];
  /** what each row that is not as before would change, or changed */
  readonly changes: readonly RowWord[];
}

export interface ImportOptions {
  /** nothing is kept: only what would happen is told */
  readonly dry?: boolean;
  /** what stands between cells: a semicolon says that the comma may be a decimal mark */
  readonly delimiter?: string;
  /** called now and then with the rows done */
  readonly progress?: (done: number, of: number) => void;
}

/** Takes in an office file. Good rows are kept, bad ones told; the same file again changes nothing. */
export function importRows(
  store: Store,
  rows: readonly SheetRow[],
  options: ImportOptions = {},
): Imported | string {
  const [head, ...body] = rows;
  if (head === undefined) return "The file is empty.";
  const [first = "", second = ""] = head.cells.map((cell) => cell.trim().toLowerCase());
  if (first === "setting" && second === "value") return importSettings(store, body, options);
  const layout = findHeadings(rows);
  if (layout === undefined) {
    return `The headings tell no known kind of file: ${shortened(head.cells)}. Known: ${fileKinds.map(({ plural }) => plural).join(", ")}.`;
  }
  const decimal: Around["decimal"] =
    decimalOf(rows) ?? (options.delimiter === ";" ? undefined : ".");
  const read = readRows(layout, rows.slice(layout.above), decimal);
  const { lines, bad, notes } = inTree(store, layout, read);
  const kept = keep(store, layout, lines, options);
  return { plural: layout.kind.plural, ...kept, bad, notes, ...headingsOf(layout) };
}

/** As much of a row as tells which one is meant. */
function shortened(cells: readonly string[]): string {
  const shown = cells
    .slice(0, 20)
    .map((cell) => (cell.length > 40 ? `${cell.slice(0, 40)}...` : cell));
  return [...shown, ...(cells.length > shown.length ? ["..."] : [])].join(", ");
}

function inTree(store: Store, { kind }: Layout, read: ReadRows): ReturnType<typeof checkTree> {
  return kind.kind === "equipment"
    ? checkTree(read, readRegistry(store).equipment)
    : { ...read, notes: [] };
}

const rowsBetweenProgress = 1000;

function keep(
  store: Store,
  { kind, columns }: Layout,
  lines: readonly ReadLine[],
  { dry = false, progress }: ImportOptions,
): Pick<Imported, "counts" | "changes"> {
  const counts = { added: 0, changed: 0, same: 0 };
  const changes: RowWord[] = [];
  const things = joined(kind.parts, lines);
  const covers = new Set(
    columns.flatMap((c) => (c === undefined ? [] : [c.field, ...(kind.makes?.[c.field] ?? [])])),
  );
  transact(store, () => {
    for (const [index, { line, key, facts }] of things.entries()) {
      const put = putFacts(store, { kind: kind.kind, key, facts, covers }, dry);
      counts[put.outcome]++;
      const name = key
        .split("\n")
        .filter((word) => word !== "")
        .join(" ");
      if (put.outcome === "added") changes.push({ line, reason: `adds ${name}` });
      if (put.outcome === "changed")
        changes.push({ line, reason: `${name}: ${put.changes.join("; ")}` });
      if ((index + 1) % rowsBetweenProgress === 0) progress?.(index + 1, things.length);
    }
  });
  return { counts, changes };
}

/** Rows that tell of one thing become one. */
function joined(parts: FileKind["parts"], lines: readonly ReadLine[]): readonly ReadLine[] {
  if (parts === undefined) return lines;
  const things = new Map<string, ReadLine[]>();
  for (const line of lines) {
    const known = things.get(line.key);
    if (known === undefined) things.set(line.key, [line]);
    else known.push(line);
  }
  return [...things.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const parted = group.length > 1 || first.facts[parts.field] !== undefined;
    return [parted ? { ...first, facts: parts.join(group.map(({ facts }) => facts)) } : first];
  });
}

function headingsOf({ columns, headings }: Layout): Pick<Imported, "matched" | "unused"> {
  const named = headings.map((heading, index) => ({ heading, field: columns[index]?.field }));
  return {
    matched: named.flatMap(({ heading, field }) =>
      field === undefined ? [] : [{ heading, field }],
    ),
    unused: named.flatMap(({ heading, field }) =>
      field === undefined && heading.trim() !== "" ? [heading] : [],
    ),
  };
}
