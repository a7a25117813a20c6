/** One row of a file with the number of the line that it starts on. */
export interface SheetRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** what kept the row from being cut into cells */
  readonly problem?: string;
}
