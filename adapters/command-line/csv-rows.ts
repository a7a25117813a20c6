import { parse } from "csv-parse/sync";
import { z } from "zod";
import type { SheetRow } from "../../src/record/import/sheet-row.ts";

const rowsShape = z.array(
  z.object({ record: z.array(z.string()), info: z.object({ lines: z.number() }) }),
);

const marks = [",", ";", "\t", "|"] as const;
/** So many lines are looked at to tell what stands between cells. */
const looked = 20;

/** The mark between a text's cells: told in its first line, else the one that most lines have most often. */
export function delimiterOf(text: string): string {
  const told = /^\ufeff?sep=(.)\r?\n/i.exec(text)?.[1];
  if (told !== undefined) return told;
  const lines = text.split(/\r?\n|\r/, looked).filter((line) => line.trim() !== "");
  const plain = lines.map((line) => line.replaceAll(/"(?:[^"]|"")*"/g, ""));
  const count = (mark: string): number =>
    plain.reduce((sum, line) => sum + Math.min(line.split(mark).length - 1, 40), 0);
  return marks.reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}

/** The rows of a CSV text, or a sentence about what is wrong with it. */
export function rowsOf(text: string): readonly SheetRow[] | string {
  const delimiter = delimiterOf(text);
  const plain = text.replace(/^(\ufeff?)sep=.(\r?\n)/i, "$1$2").replace(/\r(?!\n)/g, "\n");
  return cut(plain, delimiter) ?? lineByLine(plain, delimiter);
}

/** Undefined where a quote is not closed, or swallowed the lines below it. */
function cut(text: string, delimiter: string): readonly SheetRow[] | undefined {
  try {
    const parsed = rowsShape.parse(
      parse(text, {
        bom: true,
        delimiter,
        info: true,
        relax_column_count: true,
        relax_quotes: true,
        skip_empty_lines: true,
        trim: true,
      }),
    );
    const width = parsed[0]?.record.length ?? 0;
    if (parsed.some(({ record }) => swallowed(record, delimiter, width))) return undefined;
    return parsed.map(({ record, info }) => ({
      // the parser counts the line on which a row ends
      line: info.lines - (record.join("").match(/\n/g)?.length ?? 0),
      cells: record,
    }));
  } catch {
    return undefined;
  }
}

/** A cell with a whole row in it: the quote before it was never closed. */
function swallowed(record: readonly string[], delimiter: string, width: number): boolean {
  return (
    width > 2 &&
    record.some(
      (cell) =>
        cell.includes("\n") &&
        cell.split("\n").some((line) => line.split(delimiter).length >= Math.max(3, width - 1)),
    )
  );
}

/** Each line by itself, so that a quote that is not closed spoils its own line alone. */
function lineByLine(text: string, delimiter: string): readonly SheetRow[] {
  const rows: SheetRow[] = [];
  const lines = text.replace(/^\ufeff/, "").split(/\r?\n/);
  for (const [index, line] of lines.entries()) {
    if (line.trim() === "") continue;
    const [row] = cut(line, delimiter) ?? [];
    if (row !== undefined) rows.push({ line: index + 1, cells: row.cells });
    else {
      const problem = "a quote is opened and not closed; close it or take it out";
      rows.push({ line: index + 1, cells: line.split(delimiter), problem });
    }
  }
  return rows;
}
