import type { RegistryKind } from "../registry.ts";
import type { Column } from "./column.ts";

export type RowFacts = Readonly<Record<string, unknown>>;

/** One kind of office file: told by its headings, read by its columns. A new one is a file and a line in its list. */
export interface FileKind {
  readonly kind: RegistryKind;
  readonly plural: string;
  readonly columns: readonly Column[];
  /** whether headings can be of this kind: field -> the heading that names it */
  readonly tells: (headings: ReadonlyMap<string, string>) => boolean;
  /** the fields that make a row one of its kind */
  readonly key: readonly string[];
  /** the field by which several rows tell of one thing, and how they become one */
  readonly parts?: {
    readonly field: string;
    readonly join: (rows: readonly RowFacts[]) => RowFacts;
  };
  /** fields that are made of a column's field */
  readonly makes?: Readonly<Record<string, readonly string[]>>;
  /** last look at a row: the facts to keep, or what is wrong with them */
  readonly finish?: (facts: RowFacts) => RowFacts | string;
}
