import type { CautionRule } from "../caution.ts";

/** Every caution; a new one is its file and a line here. */
export const cautions: readonly CautionRule[] = [];
