import type { Column } from "./column.ts";
import type { FileKind } from "./file-kind.ts";
import { type Fit, fitOf, plainHeading } from "./heading.ts";
import { fileKinds } from "./kinds/list.ts";
import type { SheetRow } from "./sheet-row.ts";

/** Which column of a kind each column of the file is. */
export interface Layout {
  readonly kind: FileKind;
  readonly columns: readonly (Column | undefined)[];
  /** as the file has them */
  readonly headings: readonly string[];
  /** rows of the file up to the headings, them included */
  readonly above: number;
  readonly score: number;
}

/** Titles, dates and empty lines may stand above the headings, but not more than this. */
const mostAbove = 15;

/** More columns, or letters in a heading, has no list of ours; our choice, no source. */
const mostColumns = 500;
const mostLetters = 120;

/** Finds the headings of a file: the row, or two rows one over the other, that names most columns of a kind. */
export function findHeadings(rows: readonly SheetRow[]): Layout | undefined {
  let best: Layout | undefined;
  for (const [index, row] of rows.slice(0, mostAbove).entries()) {
    if (row.cells.length > mostColumns) continue;
    const next = rows[index + 1];
    const single = row.cells.map((cell) => [cell]);
    const both =
      next === undefined || next.cells.length > mostColumns || !canBeTwo(row.cells, next.cells)
        ? []
        : twoRows(row.cells, next.cells);
    for (const [headings, above] of [
      [single, index + 1],
      [both, index + 2],
    ] as const) {
      const layout = bestKind(headings, above);
      if (layout === undefined) continue;
      // where the row above adds nothing it is a title
      const plainer = headings === single && layout.above === best?.above;
      const lead = layout.score - (best?.score ?? 0);
      if (lead > 0 || (plainer && lead === 0)) best = layout;
    }
  }
  return best;
}

/** Merged cells leave gaps in the upper row; without one the lower row must not look like values. */
function canBeTwo(upper: readonly string[], lower: readonly string[]): boolean {
  const gaps = lower.some(
    (cell, index) => cell.trim() !== "" && (upper[index] ?? "").trim() === "",
  );
  return gaps || !lower.some((cell) => /\d/.test(cell));
}

/** A merged heading stands over several columns: it goes on until the next one. */
function twoRows(upper: readonly string[], lower: readonly string[]): readonly string[][] {
  let group = "";
  return Array.from({ length: Math.max(upper.length, lower.length) }, (_, index) => {
    const over = (upper[index] ?? "").trim();
    const under = (lower[index] ?? "").trim();
    if (over !== "") group = over;
    if (under === "") return [over];
    return [under, `${group} ${under}`.trim()];
  });
}

/** Each heading with its other wordings. */
type Headings = readonly (readonly string[])[];

function bestKind(headings: Headings, above: number): Layout | undefined {
  let best: Layout | undefined;
  for (const kind of fileKinds) {
    const layout = layoutFor(kind, headings, above);
    if (layout !== undefined && layout.score > (best?.score ?? 0)) best = layout;
  }
  return best;
}

/** "Type" below "Refrigerant" is "refrigerant type" before it is "type". */
function bestFit(wordings: readonly string[], column: Column): number {
  const [own = 0, whole = 0] = wordings.map(
    (wording): Fit => (wording === "" ? 0 : fitOf(wording, column)),
  );
  return whole >= 3 ? Math.max(own, whole + 0.5) : Math.max(own, whole);
}

function layoutFor(kind: FileKind, headings: Headings, above: number): Layout | undefined {
  const plain = headings.map((wordings) =>
    wordings.map((cell) => (cell.length > mostLetters ? "" : plainHeading(cell))),
  );
  const offers = plain
    .flatMap((wordings, at) =>
      kind.columns.map((column) => {
        return { at, column, fit: bestFit(wordings, column) };
      }),
    )
    .filter(({ fit }) => fit > 0)
    .sort((a, b) => b.fit - a.fit);
  const columns: (Column | undefined)[] = headings.map(() => undefined);
  const named = new Map<string, string>();
  let score = 0;
  for (const { at, column, fit } of offers) {
    if (columns[at] !== undefined || named.has(column.field)) continue;
    columns[at] = column;
    named.set(column.field, plain[at]?.[0] ?? "");
    score += 1 + fit / 10;
  }
  // one known heading among many that are not: a list of something else
  if (named.size < 2 && plain.filter(([said]) => said !== "").length > 2) return undefined;
  if (!kind.tells(named) || kind.columns.some((c) => c.required && !named.has(c.field)))
    return undefined;
  return {
    kind,
    columns,
    headings: headings.map((wordings) => wordings.at(-1) ?? ""),
    above,
    score,
  };
}
