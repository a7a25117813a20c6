import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const speed = /^(?:hi|high|med|medium|lo|low|highest|lowest)$/;

/** The speed that is named right behind a value: "3.6a on hi", "2.9 med". */
function speedBehind(items: readonly Item[], index: number): number {
  const on = /^(?:on|at|@|,)$/.test(items[index + 1]?.text ?? "");
  const at = index + (on ? 2 : 1);
  return speed.test(items[at]?.text ?? "") ? at : -1;
}

/** "blower 3.6a on hi 2.9 on med 2.2 lo": amps at each speed of a motor; no sides of a circuit. */
export function speeds(drafts: readonly Draft[], items: readonly Item[]): void {
  let first: Draft | undefined;
  for (const draft of drafts) {
    if (draft.gone) continue;
    const at = speedBehind(items, draft.index);
    if (first === undefined || first.sentence !== draft.sentence) {
      first = draft.unit?.dimension === "current" && at >= 0 ? draft : undefined;
      continue;
    }
    if (at < 0 || draft.unit !== undefined || draft.points !== undefined) continue;
    const ratio = draft.value / first.value;
    if (!(ratio > 0.15 && ratio < 4)) continue;
    draft.unit = first.unit;
    draft.assumedUnit = true;
    draft.named = undefined;
    draft.hint = undefined;
    draft.place = undefined;
    draft.subject ??= first.subject;
  }
}
