import type { Message, Statement, Understood } from "../model.ts";
import { type Context, startContext } from "../read/context.ts";
import { read } from "../read/read.ts";
import { withAsked } from "./asked-not-told.ts";
import { lastBefore, type Placed } from "./hours-left.ts";
import type { Memory } from "./memory.ts";
import { personSaid } from "./people.ts";

const yes =
  /^\s*(?:yes|yep|yeah|yup|ya|sure did|we did|i did|did (?:it|that|them))\b(?!.*\b(?:but not|not yet|tomorrow|will|gonna|going to)\b)/i;

/** Letters of a question of a deed at most. Our choice, no source. */
const longest = 200;

const isThere =
  /^\s*(?:(?:so|and|ok|hey)[\s,]+)*(?:(?:is|are) ([\p{L}'-]+) (?:there|here|on ?site|at .{2,40}?)(?: yet| already| now)?|([\p{L}'-]+),? (?:are )?(?:you|u) (?:there|on ?site)(?: yet| already)?)\s*\?*\s*$/iu;

/** "Is joren there yet", and then his own "yes": he has come. */
function comesBy(asked: Message, { person, text }: Placed, memory: Memory): Statement | undefined {
  const name =
    isThere
      .exec(asked.text)
      ?.slice(1)
      .find((one) => one !== undefined) ?? "";
  const any = /^any(?:one|body)$/i.test(name);
  const own = asked.role !== "tech" && (any || personSaid(memory, name) === person);
  const words = text.trim().split(/\s+/).length;
  if (!own || words > (any ? 7 : 4) || (any && !/\b(?:here|there|on ?site|arrived)\b/i.test(text)))
    return undefined;
  return {
    kind: "status",
    status: "on_site",
    said: text.trim(),
    spans: [[0, text.length]],
    rule: "yes to <is he there>",
  };
}

/**
 * "Was the filter changed?", and then "yes 2 16x25s": what the desk asked of is done by the word of who did it.
 */
export function withYes(understood: Understood, message: Placed, memory: Memory): Understood {
  const { text, role, at } = message;
  if (role !== "tech" || !yes.test(text) || understood.readings.length > 0) return understood;
  if (understood.statements.some(({ kind }) => kind !== "note" && kind !== "confirm"))
    return understood;
  const asked = lastBefore(memory, message);
  const there = asked === undefined ? undefined : comesBy(asked, message, memory);
  if (there !== undefined) return { ...understood, statements: [there], skipped: [] };
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
