import type { Draft } from "./draft.ts";
import type { Note } from "./note.ts";

/** "the same with compressor 3 but oil 48": the name that the words lead to, whatever follows. */
export function ledSubject({ items }: Note, { index, points }: Draft): string | undefined {
  if (points !== undefined || !/^(?:on|for|with|at)$/.test(items[index + 1]?.text ?? ""))
    return undefined;
  const the = items[index + 2]?.text === "the" ? 1 : 0;
  return items[index + 2 + the]?.subject;
}
