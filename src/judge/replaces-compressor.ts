import type { CaseNote } from "../model.ts";
import { isOfSwapTest } from "./swap-test.ts";

const compressor = /comp|scroll|recip|hermetic|rotary/i;

/** A compressor was changed in this note. */
export function replacesCompressor(note: CaseNote): boolean {
  return note.statements.some(
    (one) =>
      !isOfSwapTest(one, note) &&
      ((one.kind === "action" && one.action === "replaced" && compressor.test(one.what ?? "")) ||
        (one.kind === "part" && one.state === "fitted" && compressor.test(one.part))),
  );
}
