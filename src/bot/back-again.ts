import type { Job, Message, Span, Statement, Understood } from "../model.ts";

const back =
  /^\s*(?:ok(?:ay)?,?\s+)?(?:i['’]?m\s+|we['’]?re\s+)?back(?:\s+(?:now|again|here))?\s*[.!]?\s*$/i;

/** "Back", of who went to fetch something from this job: he is on site again. */
export function withBackAgain(
  understood: Understood,
  message: Pick<Message, "text" | "person">,
  job: Job,
): Understood {
  if (!back.test(message.text) || understood.statements.some(({ kind }) => kind === "status")) {
    return understood;
  }
  const last = job.statements.findLast(
    ({ who, statement, undone, deleted }) =>
      who === message.person && statement.kind === "status" && undone !== true && deleted !== true,
  )?.statement;
  if (last?.kind !== "status" || last.errand !== true) return understood;
  const span: Span = [0, message.text.length];
  const statement: Statement = {
    kind: "status",
    status: "on_site",
    said: message.text,
    spans: [span],
    rule: "back from an errand",
  };
  return { ...understood, statements: [...understood.statements, statement], skipped: [] };
}
