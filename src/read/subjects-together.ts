import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import type { Note } from "./note.ts";
import { role } from "./word.ts";

/** "I'm on unit 4 and circuit 1's at 130": names of two kinds, the one of the other, unless they are told together around the value. */
export function apart(all: readonly Item[], subjects: readonly string[], value: number): boolean {
  const items = all.slice(Math.max(0, value - 3), value + 3);
  const kinds = new Set(subjects.map((subject) => subject.replace(/[\s-]*[\da-z]+$/i, "")));
  return (
    kinds.size > 1 &&
    !items.some(
      ({ roles }, at) =>
        (roles & (role.each | role.all)) !== 0 && !/^sides?$/.test(items[at + 1]?.text ?? ""),
    )
  );
}

/** "fan 1 and fan 2 both 3.6 A": the subjects that stand together before the value. */
export function subjectsOf(note: Note, draft: Draft): string[] {
  const found: string[] = [];
  let last = -1;
  for (const index of draft.before) {
    const item = note.items[index];
    if (item?.kind !== itemKind.subject || item.subject === undefined || item.subject === "")
      continue;
    const joint = note.items[index - 1]?.text;
    if (
      last >= 0 &&
      (index !== last + 2 || (joint !== "and" && joint !== "&" && joint !== "n" && joint !== ","))
    )
      return [];
    found.push(item.subject);
    last = index;
  }
  return apart(note.items, found, draft.index) ? [] : found;
}
