import type { Message, Understood } from "../model.ts";

const there = /^\s*(?:(?:ok(?:ay)?|i['’]?m|now|just)[, ]+)*there\s*[.!]?\s*$/i;

/** "There", "im there" of a technician, and nothing else: he has come to where he was sent. */
export function withThere(
  understood: Understood,
  { text, role }: Pick<Message, "text" | "role">,
): Understood {
  if (role !== "tech" || !there.test(text) || understood.statements.length > 0) return understood;
  return {
    ...understood,
    statements: [
      { kind: "status", status: "on_site", said: text, spans: [[0, text.length]], rule: "there" },
    ],
    skipped: [],
  };
}
