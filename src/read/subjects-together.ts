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

/** "fan 1 and 2", "1 2 3 all": does the second name go on with the first? */
function together(items: readonly Item[], first: number, second: number): boolean {
  if (second === first + 1)
    return /^\d/.test(items[first]?.text ?? "") && /^\d/.test(items[second]?.text ?? "");
  return second === first + 2 && /^(?:and|&|n|,)$/.test(items[second - 1]?.text ?? "");
}

/** "fan 1 and fan 2 both 3.6 A", "fan 1 dead, 2 and 3 pulling 3.6": the subjects that stand together before the value. */
export function subjectsOf(note: Note, draft: Draft): string[] {
  let found: string[] = [];
  let last = -1;
  // behind other names a comma alone joins nothing: "went with the board to comp 2, comp 1 runs 14"
  let broken = false;
  for (const index of draft.before) {
    const item = note.items[index];
    if (item?.kind !== itemKind.subject || item.subject === undefined || item.subject === "")
      continue;
    if (last >= 0 && !together(note.items, last, index)) {
      found = [];
      broken = true;
    }
    found.push(item.subject);
    last = index;
  }
  const joint = note.items[last - 1]?.text;
  if (broken && (found.length < 2 || joint === ",")) return [];
  return apart(note.items, found, draft.index) ? [] : found;
}
