import type { CaseNote } from "../model.ts";
import { isOfSwapTest } from "./swap-test.ts";

/** A compressor was changed in this note. */
export function replacesCompressor(note: CaseNote): boolean {
  return note.statements.some(
    (one) =>
      !isOfSwapTest(one, note) &&
      ((one.kind === "action" && one.action === "replaced" && /comp/i.test(one.what ?? "")) ||
        (one.kind === "part" && one.state === "fitted" && /comp/i.test(one.part))),
  );
}
