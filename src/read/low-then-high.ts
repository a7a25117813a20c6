import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** The high side stands above the low side by so much at least while it runs; common practice, no source. */
const leastRatio = 1.35;

function gauge(draft: Draft | undefined): draft is Draft {
  if (draft?.quantity !== "pressure" || draft.gone || draft.rating !== undefined) return false;
  const told = [draft.series, draft.after, draft.points, draft.question, draft.stat];
  return told.every((one) => one === undefined) && !draft.earlier && Number.isNaN(draft.high);
}

function joined(items: readonly Item[], left: Draft, right: Draft): boolean {
  const gap = items.slice(left.index + 1, right.index);
  return gap.length === 1 && /^(?:and|over|,|\/|&)$/.test(gap[0]?.text ?? "");
}

/** "circuit one's seventy psi and two forty", "compressor 2 6.8 bar and 22 bar": its low side, then its high side. */
export function lowThenHigh(list: readonly Draft[], items: readonly Item[]): void {
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (!gauge(left) || !gauge(right) || right.place !== undefined) return;
    if (left.subject !== right.subject || !joined(items, left, right)) return;
    const alike = left.unit?.figure === right.unit?.figure;
    if (!alike || left.value <= 0 || right.value < left.value * leastRatio) return;
    const circuit = /^(?:circuit|compressor|system|rack)\b/.test(left.subject ?? "");
    const alone = left.place === undefined && circuit && !gauge(list[order + 1]);
    if (left.place !== "suction" && !alone) return;
    left.place = "suction";
    right.place = "discharge";
  });
}
