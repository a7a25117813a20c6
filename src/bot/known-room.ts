import type { Span, Statement, Understood } from "../model.ts";

/** Words that a room's number stands behind. */
const inRoom = /\b(?:in|at|for|of|room|zone|suite|unit)\s+(?:room\s+)?$/i;

/**
 * "Supply air 104 F in 301": only who knows the site's rooms can tell that the number is one, so
 * that it is neither unread nor asked about.
 */
export function withKnownRoom(
  understood: Understood,
  text: string,
  rooms: ReadonlySet<string>,
): Understood {
  const isRoom = ([from, to]: Span): boolean =>
    rooms.has(text.slice(from, to).trim()) && inRoom.test(text.slice(0, from));
  const found = understood.unread_spans.filter(isRoom);
  if (found.length === 0) return understood;
  const left = understood.unread_spans.filter((span) => !isRoom(span));
  const names = found.map(([from, to]) => text.slice(from, to).trim());
  const notes = found.map(
    ([from, to]): Statement => ({
      kind: "note",
      about: "place",
      said: text.slice(from, to),
      spans: [[from, to]],
      rule: "<listed room>",
    }),
  );
  const ask = understood.ask.filter((one) => !names.some((name) => one.startsWith(`${name}:`)));
  return {
    ...understood,
    statements: [...understood.statements, ...notes],
    unread: left.map(([from, to]) => text.slice(from, to)),
    unread_spans: left,
    ask,
  };
}
