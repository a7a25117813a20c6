const tags = /<(?:\w+:)?(row|c)(?=[\s/>])((?:"[^"]*"|'[^']*'|[^>"'])*)>/g;
const place = /\br\s*=\s*(?:"([^"]*)"|'([^']*)')/;
const address = /^([A-Z]{1,3})(\d{1,7})$/;

/**
 * Cells that a workbook's sheet takes once it is read, gaps and all: a cell far out makes every row as
 * long. Infinite where a place is written as no program writes it.
 */
export function sheetArea(xml: string): number {
  const filled = { row: 0, column: 0 };
  let [row, column, last, sum] = [0, 0, 0, 0];
  for (const [, tag, attributes = ""] of xml.matchAll(tags)) {
    const [, double, single] = place.exec(attributes) ?? [];
    const told = double ?? single;
    if (tag === "row") {
      row = told === undefined ? row + 1 : Number(told);
      column = 0;
    } else {
      const at = told === undefined ? { row, column: column + 1 } : placeOf(told);
      if (at === undefined) return Number.POSITIVE_INFINITY;
      sum += Math.max(0, at.column - column);
      column = at.column;
      // what is empty is left out at the right and below
      if (!attributes.endsWith("/")) {
        filled.row = Math.max(filled.row, at.row);
        filled.column = Math.max(filled.column, column);
      }
      last = Math.max(last, at.row);
    }
    if (!(row >= 0)) return Number.POSITIVE_INFINITY;
    last = Math.max(last, row);
  }
  return Math.max(last, sum, filled.row * filled.column);
}

function placeOf(told: string): { readonly row: number; readonly column: number } | undefined {
  const [, letters, digits] = address.exec(told) ?? [];
  if (letters === undefined || digits === undefined) return undefined;
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return { row: Number(digits), column };
}
