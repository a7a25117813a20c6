import type { ReplyInput, Statement } from "../model.ts";
import { figures } from "./figures.ts";
import { withdrawnSentences } from "./verdict.ts";
import { clipped, listed, sentence, unitName } from "./wording.ts";

/** What a deletion or an undo took out of the record, and the verdicts that went with it. */
export function removedText(input: ReplyInput): string {
  const values = input.replaced.filter(({ by }) => by === undefined).map(({ old }) => old);
  const words = input.withdrawn.flatMap(({ statement }) =>
    values.length > 0 && goesWithValue(statement) ? [] : [statement.said],
  );
  if (input.job === undefined || values.length + words.length === 0) return "";
  const what = [values.length === 0 ? "" : figures(values), clipped(listed(words), 9)];
  const first = `${unitName(input.job)}: taken out: ${what.filter((w) => w !== "").join("; ")}`;
  return [sentence(first), ...withdrawnSentences(input)].join(" ");
}

/** The gas of a weight and the deed that it weighs say nothing beside the weight itself. */
function goesWithValue(statement: Statement): boolean {
  if (statement.kind === "nameplate") return statement.field === "refrigerant";
  return (
    statement.kind === "action" &&
    (statement.action === "charged" || statement.action === "recovered")
  );
}
