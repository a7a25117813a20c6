import { parse } from "csv-parse/sync";
import { z } from "zod";
import type { CsvRow } from "../../src/record/import/import-rows.ts";

const rowsShape = z.array(
  z.object({ record: z.array(z.string()), info: z.object({ lines: z.number() }) }),
);

/** The rows of a CSV text, or a sentence about what is wrong with it. */
export function rowsOf(text: string): readonly CsvRow[] | string {
  const firstLine = text.slice(0, text.search(/\r?\n|$/));
  const count = (mark: string): number => firstLine.split(mark).length;
  const delimiter = [",", ";", "\t"].reduce((best, mark) =>
    count(mark) > count(best) ? mark : best,
  );
  try {
    const parsed = rowsShape.parse(
      parse(text, {
        bom: true,
        delimiter,
        info: true,
        relax_column_count: true,
        skip_empty_lines: true,
        trim: true,
      }),
    );
    return parsed.map(({ record, info }) => ({
      // the parser counts the line on which a row ends
      line: info.lines - (record.join("").match(/\n/g)?.length ?? 0),
      cells: record,
    }));
  } catch (error) {
    return error instanceof Error ? `It is no CSV: ${error.message}.` : "It is no CSV.";
  }
}
