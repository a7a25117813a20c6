import type { Draft } from "./draft.ts";

/** "peak was 88.4 amps, average's about 21": a second figure of the same thing, told by which it is. */
export function statsOfOne(drafts: readonly Draft[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left?.stat === undefined || right.stat === undefined || left.stat === right.stat) return;
    if (left.sentence !== right.sentence || right.points !== undefined) return;
    const bare = right.unit === undefined && right.named === undefined && right.hint === undefined;
    if (!bare || (left.unit ?? left.named ?? left.hint) === undefined) return;
    right.unit = left.unit;
    right.assumedUnit = left.unit !== undefined;
    right.named = left.named;
    right.hint = left.hint;
    right.place ??= left.place;
    right.subject ??= left.subject;
  });
}
