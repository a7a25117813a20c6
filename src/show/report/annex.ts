import { type Cell, cellsOf, headingsOn, rowHeight, rowOn } from "./blocks.ts";
import { heightOf, type Page, textAt } from "./page.ts";
import type { Annex } from "./report.ts";

const gutter = 16;
/** pt of a title with the line below it */
const titled = 30;
const headed = 12;
/** set tighter than the report: it is looked up in, not read */
const letters = 6.5;

/**
 * A long table in two columns, each with its headings; under what stands on the page where it fits
 * whole, else from a new page on. The last page's columns are of one height.
 */
export function annexOn(page: Page, annex: Annex): void {
  const { table } = annex;
  const width = (page.width - gutter) / 2;
  const left = (column: number): readonly Cell[] =>
    cellsOf(table, { x: page.left + column * (width + gutter), width });
  const heights = table.rows.map((row) => rowHeight(page, row, { cells: left(0), size: letters }));
  const all = heights.reduce((sum, height) => sum + height, 0);
  const tallest = Math.max(0, ...heights);
  if (page.y + titled + headed + all / 2 + tallest > page.bottom) page.next();
  titleOn(page, annex);
  let at = 0;
  let rest = all;
  while (at < heights.length) {
    const top = page.y;
    const room = page.bottom - top - headed;
    const wanted = rest / 2 + tallest;
    const [first, second] = [Math.min(room, wanted), room];
    let lowest = top;
    for (const [column, height] of [first, second].entries()) {
      if (at >= heights.length) break;
      page.y = top;
      const cells = left(column);
      headingsOn(page, table, cells);
      const until = page.y + height;
      const from = at;
      for (; at < heights.length; at++) {
        const own = heights[at] ?? 0;
        if (page.y + own > until && at > from) break;
        rowOn(page, table.rows[at] ?? [], { cells, size: letters });
        rest -= own;
      }
      lowest = Math.max(lowest, page.y);
    }
    page.y = lowest;
    if (at < heights.length) page.next();
  }
}

function titleOn(page: Page, { title, says }: Annex): void {
  const line = { x: page.left, width: page.width };
  page.y += 4;
  textAt(page, title, { ...line, y: page.y, size: 9.5, bold: true });
  page.y += 14;
  textAt(page, says, { ...line, y: page.y, size: 7 });
  page.y += heightOf(page, says, { ...line, size: 7 }) + 3;
}
