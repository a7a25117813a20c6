import type { Caution, ReplyInput } from "../model.ts";
import { sentence } from "./wording.ts";

/** The caution that is true now and that this person was not given on this job today; else "". */
export function dangerLine(input: ReplyInput): string {
  const caution = freshCaution(input);
  return caution === undefined ? "" : sentence(caution.says);
}

/** The id of the caution that the reply gives, for the record of what was said to whom. */
export function dangerGiven(input: ReplyInput): string | undefined {
  return freshCaution(input)?.id;
}

/** Questions whose answer sends hands to the machine. */
const handsOn = new Set(["next", "how"]);

/** Only who stands at the machine is warned, and only by a message that speaks of the machine. */
function freshCaution(input: ReplyInput): Caution | undefined {
  const given = new Set(input.cautioned);
  if (input.message.role !== "tech" || input.opened || !atTheMachine(input)) return undefined;
  const asksHow = input.understood.statements.some(
    (s) => s.kind === "question" && handsOn.has(s.question),
  );
  return input.judgement.cautions.find(
    ({ id, severity, now }) =>
      !given.has(id) && (severity === "danger" || (severity === "warning" && (now || asksHow))),
  );
}

function atTheMachine(input: ReplyInput): boolean {
  const { message, understood } = input;
  if (message.edits !== undefined || message.deletes !== undefined) return false;
  if (understood.statements.some((s) => s.kind === "status" && s.status === "done")) return false;
  if (input.readings.length > 0 || understood.unread.length > 0) return true;
  return understood.statements.some((s) => {
    if (s.kind === "question") return handsOn.has(s.question);
    return s.kind === "action" || s.kind === "observation" || s.kind === "part";
  });
}
