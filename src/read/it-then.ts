import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { role } from "./word.ts";

const clock = "at <hour>:<minute>";

/** "at 10:20 the suction was 98, and at 11:05 it was 104": the same gauge at another time. */
export function itThen(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.place === undefined || left.quantity !== right.quantity) return;
    if (right.place !== undefined || right.points !== undefined || right.subject !== undefined)
      return;
    const [time, it, verb] = items.slice(Math.max(0, right.index - 3), right.index);
    const was = it?.text === "it" && ((verb?.roles ?? 0) & role.is) !== 0;
    const its = /^(?:its|it's)$/.test(verb?.text ?? "");
    if ((was ? time : its ? it : undefined)?.owner !== clock) return;
    right.place = left.place;
    right.subject = left.subject;
  });
}
