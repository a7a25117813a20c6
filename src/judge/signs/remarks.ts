import type { SignGroup } from "../sign.ts";

/** What is noticed in passing; the outcomes are observation names. */
export const remarkSigns: readonly SignGroup[] = [];
