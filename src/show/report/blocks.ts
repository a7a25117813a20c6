import { heightOf, type Page, textAt } from "./page.ts";
import type { Block, Table } from "./report.ts";

const size = 8;
const gap = 4;
/** The face stands far apart by itself: rows of a table need less. */
const lead = -1.6;

/** Sets a block under what stands on the page; a title never stands alone at its foot. */
export function blockOn(page: Page, block: Block): void {
  page.room(40);
  page.y += gap;
  textAt(page, block.title, { x: page.left, y: page.y, width: page.width, size: 9.5, bold: true });
  page.y += 13;
  if (block.kind === "table") tableOn(page, block.table);
  else {
    for (const line of block.lines) lineOn(page, line, 8.5);
    for (const line of block.small ?? []) lineOn(page, line, 7);
  }
}

/** pt of a title and of a table's headings */
const headed = 30;

/** Whether a table goes under what stands on the page, whole. */
export function tableFits(page: Page, { table }: Extract<Block, { kind: "table" }>): boolean {
  let y = page.y + headed;
  for (const row of table.rows) {
    y += rowHeight(page, table, row) + rowGap;
    if (y > page.bottom) return false;
  }
  return true;
}

function lineOn(page: Page, line: string, letters: number): void {
  const style = { x: page.left, width: page.width, size: letters, lead: -0.8 };
  const height = heightOf(page, line, style);
  page.room(height);
  textAt(page, line, { ...style, y: page.y });
  page.y += height + 1;
}

/** A table with hairlines; its headings come again on each page. */
function tableOn(page: Page, table: Table): void {
  headingsOn(page, table);
  for (const row of table.rows) {
    const cells = cellsOf(page, table);
    const height = rowHeight(page, table, row);
    if (page.y + height > page.bottom) {
      page.next();
      headingsOn(page, table);
    }
    for (const [index, cell] of cells.entries()) {
      textAt(page, row[index] ?? "", { ...cell, y: page.y, size, lead });
    }
    page.y += height + rowGap - 1;
    rule(page, 0.25);
    page.y += 1;
  }
  page.y += 1;
}

const rowGap = 2.2;

function rowHeight(page: Page, table: Table, row: readonly string[]): number {
  return Math.max(
    ...cellsOf(page, table).map((cell, index) =>
      heightOf(page, row[index] ?? "", { ...cell, size, lead }),
    ),
  );
}

function headingsOn(page: Page, table: Table): void {
  const cells = cellsOf(page, table);
  for (const [index, cell] of cells.entries()) {
    const says = table.columns[index]?.says ?? "";
    textAt(page, says, { ...cell, y: page.y, size: 7, bold: true });
  }
  page.y += 10;
  rule(page, 0.8);
  page.y += 1.5;
}

function cellsOf(page: Page, { columns }: Table): readonly { x: number; width: number }[] {
  let x = page.left;
  return columns.map(({ share }) => {
    const cell = { x, width: share * page.width - 6 };
    x += share * page.width;
    return cell;
  });
}

function rule({ doc, left, width, y }: Page, weight: number): void {
  doc
    .lineWidth(weight)
    .strokeColor("black")
    .moveTo(left, y)
    .lineTo(left + width, y)
    .stroke();
}
