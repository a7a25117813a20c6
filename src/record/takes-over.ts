import type { Statement } from "../model.ts";

const taking =
  /(?:^|[,.;!?]\s*|\bknow[,?]?\s+|\bbefore\s+)(?:i'?m |i am |i will be |i'?ll be |ok |and |now |so )*(?:taking|i'?ll take|i took|took|i have|i'?ve got)\b/i;

/** "taking OU-3 from Tamsin": more than a question what stands there, the job is in his hand now. */
export function takesOver(statement: Statement): boolean {
  return (
    statement.kind === "question" &&
    statement.question === "handover" &&
    taking.test(statement.about ?? "")
  );
}
