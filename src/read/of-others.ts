import type { Draft } from "./draft.ts";
import type { Note } from "./note.ts";

/** "over 550 on the other two": which leads they are the one named before says, not their count. */
export function ofOthers({ items }: Note, draft: Draft): boolean {
  return items
    .slice(Math.max(0, draft.index - 5), draft.index + 5)
    .some(({ text }) => text === "other" || text === "others");
}
