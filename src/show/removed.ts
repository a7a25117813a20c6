import type { ReplyInput } from "../model.ts";
import { figures } from "./figures.ts";
import { withdrawnSentences } from "./verdict.ts";
import { clipped, listed, sentence, unitName } from "./wording.ts";

/** What a deletion or an undo took out of the record, and the verdicts that went with it. */
export function removedText(input: ReplyInput): string {
  const values = input.replaced.filter(({ by }) => by === undefined).map(({ old }) => old);
  const words = input.withdrawn.map((w) => w.statement.said);
  if (input.job === undefined || values.length + words.length === 0) return "";
  const what = [values.length === 0 ? "" : figures(values), clipped(listed(words), 9)];
  const first = `${unitName(input.job)}: taken out: ${what.filter((w) => w !== "").join("; ")}`;
  return [sentence(first), ...withdrawnSentences(input)].join(" ");
}
