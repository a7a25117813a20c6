import type { Statement, Understood } from "../model.ts";
import { type Context, startContext } from "../read/context.ts";
import { read } from "../read/read.ts";
import { withAsked } from "./asked-not-told.ts";
import { lastBefore, type Placed } from "./hours-left.ts";
import type { Memory } from "./memory.ts";

const yes =
  /^\s*(?:yes|yep|yeah|yup|ya|sure did|we did|i did|did (?:it|that|them))\b(?!.*\b(?:but not|not yet|tomorrow|will|gonna|going to)\b)/i;

/** Letters of a question of a deed at most. Our choice, no source. */
const longest = 200;

/**
 * "Was the filter changed?", and then "yes 2 16x25s": what the desk asked of is done by the word of who did it.
 */
export function withYes(understood: Understood, message: Placed, memory: Memory): Understood {
  const { text, role, at } = message;
  if (role !== "tech" || !yes.test(text) || understood.readings.length > 0) return understood;
  if (understood.statements.some(({ kind }) => kind !== "note" && kind !== "confirm"))
    return understood;
  const asked = lastBefore(memory, message);
  if (asked === undefined || asked.role === "tech" || asked.person === message.person)
    return understood;
  if (asked.text.length > longest) return understood;
  const context: Context = startContext(memory.settings.units, at);
  const told = read(asked.text.replace(/\?+\s*$/, ""), context);
  const isQuestion = withAsked(told, asked).statements.some(
    (one) => one.kind === "question" && one.question === "told",
  );
  if (!isQuestion) return understood;
  const deeds = told.statements.flatMap((one): readonly Statement[] =>
    one.kind === "action" || (one.kind === "part" && one.state === "fitted")
      ? [{ ...one, said: text.trim(), spans: [[0, text.length]], rule: "yes to <deed>" }]
      : [],
  );
  if (deeds.length === 0) return understood;
  return { ...understood, statements: deeds, unread: [], unread_spans: [], ask: [], skipped: [] };
}
