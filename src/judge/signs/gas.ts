import type { SignGroup } from "../sign.ts";

/** What the refrigerant and air side tests show when the cause lies elsewhere. */
export const gasSigns: readonly SignGroup[] = [];
