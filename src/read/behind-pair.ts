import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

const side = /^(?:suction|discharge)$/;

function isGauge({ quantity, place, gone }: Draft): boolean {
  return !gone && quantity === "pressure" && side.test(place ?? "");
}

/** Both gauges are told by the stroke between them: "118/340". */
function isPair(left: Draft, right: Draft, items: readonly Item[]): boolean {
  const stroke = items[left.index + 1]?.text ?? "";
  return (
    isGauge(left) &&
    isGauge(right) &&
    left.place !== right.place &&
    right.index === left.index + 2 &&
    /^(?:\/|over)$/.test(stroke)
  );
}

/** "118/340, 52, 96": behind both gauges a bare figure is no gauge once more; how warm which line is, nobody says. */
export function behindPair(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || !isPair(left, right, items)) return;
    let last = right;
    for (let at = order + 1; at < drafts.length; at++) {
      const next = drafts[at];
      if (next === undefined) return;
      const between = items.slice(last.index + 1, next.index);
      const bare = between.every(
        ({ kind, text }) => kind !== itemKind.line && /^(?:,|and|&|n)$/.test(text),
      );
      const after = drafts[at + 1];
      // "118/340, 120/345": both gauges of another circuit
      if (!bare || next.behind.length > 0 || (after && isPair(next, after, items))) return;
      if (isGauge(next) && !next.ownUnit) {
        next.question = "quantity";
        next.place = undefined;
      }
      last = next;
    }
  });
}
