import type { Draft } from "./draft.ts";
import { sameDimension } from "./inherit.ts";
import { type Item, itemKind } from "./item.ts";

const which = /^(?:first|second|third|1st|2nd|3rd|low|lo|high|hi|one|two|1|2)$/;
const stage = /^(?:stage|stages|stg|speed|fire)$/;

/** "second stage", "2nd stg", "low fire" right before a value, over a label alone. */
function stageBefore(items: readonly Item[], index: number): boolean {
  for (let at = index - 1; at >= 1 && at >= index - 3; at--) {
    const item = items[at];
    if (item === undefined || item.kind === itemKind.number || item.text === ",") return false;
    if (stage.test(item.text)) return which.test(items[at - 1]?.text ?? "");
  }
  return false;
}

function isBare(draft: Draft): boolean {
  return (draft.named ?? draft.hint ?? draft.points ?? draft.rating) === undefined;
}

/** "first stage 17 split second stage 21": stage by stage the same is told, where one of them says what. */
export function stages(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone && !draft.over && !draft.same);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || left.sentence !== right.sentence) return;
    if (!stageBefore(items, left.index) || !stageBefore(items, right.index)) return;
    const seconds = right.unit?.dimension === "time" || left.unit?.dimension === "time";
    if (seconds || !sameDimension(left, right)) return;
    const ratio = right.value / left.value;
    if (!(ratio > 0.2 && ratio < 5)) return;
    const [full, empty] = isBare(right) && right.unit === undefined ? [left, right] : [right, left];
    if (!isBare(empty) || (isBare(full) && full.unit === undefined)) return;
    empty.named = full.named;
    empty.hint = full.hint;
    if (empty.unit === undefined) {
      empty.unit = full.unit;
      empty.assumedUnit = full.unit !== undefined;
    }
    empty.place = full.place;
  });
}
