import type { Statement, Understood } from "../model.ts";

const goingTo =
  /\b(?:going|off|over|moving|on)(?: on| over| out)? to (?:the )?(?!(?:it|them|that|bed|lunch|get|do|be|check|pull|put|run|need|try|have|take|change|replace|let|see|call|order|add|use|make)\b)[\p{L}'’ -]{3,30}/iu;

/** "Leaving, going to the gym": the way, behind what he leaves; undefined where he stays or goes nowhere. */
export function goesOver(
  text: string,
  { statements }: Pick<Understood, "statements">,
): Statement | undefined {
  const leaves = statements.some(
    (one) => one.kind === "status" && (one.status === "left_site" || one.status === "done"),
  );
  const match = leaves ? goingTo.exec(text) : null;
  if (match === null) return undefined;
  return {
    kind: "status",
    status: "on_the_way",
    where: match[0].replace(/^.*? to (?:the )?/i, ""),
    said: match[0],
    spans: [[match.index, match.index + match[0].length]],
    rule: "going to <site>",
  };
}
