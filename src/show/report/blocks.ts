import { heightOf, type Page, textAt } from "./page.ts";
import type { Block, Table } from "./report.ts";

const size = 8;
const gap = 4;
const titled = 13;
/** The face stands far apart by itself: rows of a table need less. */
const lead = -1.6;

/** Sets a block under what stands on the page; a title never stands alone at its foot. */
export function blockOn(page: Page, block: Block): void {
  page.room(40);
  page.y += gap * page.scale;
  textAt(page, block.title, { x: page.left, y: page.y, width: page.width, size: 9.5, bold: true });
  page.y += titled * page.scale;
  if (block.kind === "table") tableOn(page, block.table);
  else for (const [line, letters] of linesOf(block)) lineOn(page, line, letters);
}

/** How high blocks stand one under the other, at the page's scale. */
export function blocksHeight(page: Page, blocks: readonly Block[]): number {
  return blocks.reduce((sum, block) => sum + blockHeight(page, block), 0);
}

function blockHeight(page: Page, block: Block): number {
  const above = (gap + titled) * page.scale;
  if (block.kind === "lines") {
    const lines = linesOf(block).map(([line, letters]) => lineHeight(page, line, letters) + 1);
    return above + lines.reduce((sum, height) => sum + height, 0);
  }
  const { table } = block;
  const cells = cellsOf(table, { x: page.left, width: page.width });
  const rows = table.rows.map((row) => rowHeight(page, row, { cells, size }));
  return above + headed * page.scale + rows.reduce((sum, height) => sum + height, 0) + 1;
}

const linesOf = ({ lines, small = [] }: Extract<Block, { kind: "lines" }>) => [
  ...lines.map((line) => [line, 8.5] as const),
  ...small.map((line) => [line, 7] as const),
];

const lineStyle = (page: Page, letters: number) => ({
  x: page.left,
  width: page.width,
  size: letters,
  lead: -0.8,
});

const lineHeight = (page: Page, line: string, letters: number): number =>
  heightOf(page, line, lineStyle(page, letters));

function lineOn(page: Page, line: string, letters: number): void {
  const height = lineHeight(page, line, letters);
  page.room(height);
  textAt(page, line, { ...lineStyle(page, letters), y: page.y });
  page.y += height + 1;
}

/** A table with hairlines; its headings come again on each page. */
function tableOn(page: Page, table: Table): void {
  const cells = cellsOf(table, { x: page.left, width: page.width });
  headingsOn(page, table, cells);
  for (const row of table.rows) {
    if (page.y + rowHeight(page, row, { cells, size }) > page.bottom) {
      page.next();
      headingsOn(page, table, cells);
    }
    rowOn(page, row, { cells, size });
  }
  page.y += 1;
}

/** Where a column of a table stands on the page. */
export interface Cell {
  readonly x: number;
  readonly width: number;
}

interface RowStyle {
  readonly cells: readonly Cell[];
  readonly size: number;
}

const rowGap = 2.2;

/** pt of a row with the hairline under it. */
export function rowHeight(page: Page, row: readonly string[], { cells, size }: RowStyle): number {
  const heights = cells.map((cell, index) =>
    heightOf(page, row[index] ?? "", { ...cell, size, lead }),
  );
  return Math.max(...heights) + rowGap;
}

export function rowOn(page: Page, row: readonly string[], style: RowStyle): void {
  const { cells, size } = style;
  const height = rowHeight(page, row, style);
  for (const [index, cell] of cells.entries()) {
    textAt(page, row[index] ?? "", { ...cell, y: page.y, size, lead });
  }
  page.y += height - 1;
  rule(page, cells, 0.25);
  page.y += 1;
}

const headed = 11.5;

export function headingsOn(page: Page, { columns }: Table, cells: readonly Cell[]): void {
  for (const [index, cell] of cells.entries()) {
    textAt(page, columns[index]?.says ?? "", { ...cell, y: page.y, size: 7, bold: true });
  }
  page.y += (headed - 1.5) * page.scale;
  rule(page, cells, 0.8);
  page.y += 1.5 * page.scale;
}

const between = 6;

export function cellsOf({ columns }: Table, { x: from, width }: Cell): readonly Cell[] {
  let x = from;
  return columns.map(({ share }) => {
    const cell = { x, width: share * width - between };
    x += share * width;
    return cell;
  });
}

function rule({ doc, y }: Page, cells: readonly Cell[], weight: number): void {
  const [first, last] = [cells[0], cells.at(-1)];
  if (first === undefined || last === undefined) return;
  doc
    .lineWidth(weight)
    .strokeColor("black")
    .moveTo(first.x, y)
    .lineTo(last.x + last.width + between, y)
    .stroke();
}
