/** Check name -> six lines: where, setting, caution, what good looks like, source. */
export const howTo: ReadonlyMap<string, readonly string[]> = new Map();
