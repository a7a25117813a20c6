import type { Rule } from "../note.ts";

/** Ways of saying what is no measurement, in the order in which they take their words. */
export const asides: readonly Rule[] = [];

/** Ways of saying everything else, after the measurements have been read. */
export const remarks: readonly Rule[] = [];
