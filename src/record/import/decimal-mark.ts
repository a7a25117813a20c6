import type { SheetRow } from "./sheet-row.ts";

/** The mark before decimals, where the file's own numbers show just one of the two. */
export function decimalOf(rows: readonly SheetRow[]): "." | "," | undefined {
  let commas = 0;
  let points = 0;
  for (const { cells } of rows) {
    for (const cell of cells) {
      const mark = shown(cell);
      if (mark === ",") commas++;
      else if (mark === ".") points++;
    }
  }
  if (commas > 0 && points === 0) return ",";
  return points > 0 && commas === 0 ? "." : undefined;
}

/** "7,3" and "1.234,5" show a comma, "7.3" and "1,234.5" a point; "1,234" shows nothing. */
function shown(cell: string): "." | "," | undefined {
  const plain = cell.trim();
  if (/^\d+,(\d{1,2}|\d{4,})$|^\d{1,3}(\.\d{3})+,\d+$|^0,\d+$/.test(plain)) return ",";
  return /^\d+\.(\d{1,2}|\d{4,})$|^\d{1,3}(,\d{3})+\.\d+$|^0\.\d+$/.test(plain) ? "." : undefined;
}
