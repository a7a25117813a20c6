import type { CaseNote } from "../model.ts";

/** A compressor was changed in this note. */
export function replacesCompressor(note: CaseNote): boolean {
  return note.statements.some(
    (one) =>
      (one.kind === "action" && one.action === "replaced" && /comp/i.test(one.what ?? "")) ||
      (one.kind === "part" && one.state === "fitted" && /comp/i.test(one.part)),
  );
}
