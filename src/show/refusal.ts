import type { ReplyInput } from "../model.ts";

/** What is never filed and never agreed to, by what the note is about. */
const refusals: Readonly<Record<string, string>> = {
  "skip dead test":
    "No: time off proves nothing. Meter on a known live source, every phase to phase and to ground, then the live source again.",
  wish: "Only what was measured is filed. Measure again and send that figure.",
};

/** The one answer to a wish for a figure or to leaving out the dead test; else undefined. */
export function refusalText(input: ReplyInput): string | undefined {
  for (const statement of input.understood.statements) {
    const text = statement.kind === "note" ? refusals[statement.about] : undefined;
    if (text !== undefined) return text;
  }
  return;
}
