import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { leads, legRows } from "./leg-rows.ts";
import { role } from "./word.ts";

/** Distinct points of the pairs that were measured before a value, in the order in which they were named. */
function pointsBefore(drafts: readonly Draft[], order: number): readonly string[] {
  const names = new Set<string>();
  for (const draft of drafts.slice(0, order)) {
    if (draft.gone || draft.points === undefined || draft.grounded) continue;
    for (const points of draft.points)
      if (points.length === 2 && !points.includes("ground"))
        for (const name of points) names.add(name);
  }
  return [...names];
}

/** "all", "each", "everything" in front of the value, or behind it. */
function saidOfAll(items: readonly Item[], index: number): boolean {
  for (let at = index - 1; at >= 0 && at >= index - 4; at--) {
    const item = items[at];
    if (item === undefined || item.kind === itemKind.number) return false;
    if ((item.roles & (role.all | role.each)) !== 0 || /^every/.test(item.text)) return true;
    if (item.text === "," || item.text === ".") return false;
  }
  return items
    .slice(index + 1, index + 5)
    .some((item) => (item.roles & (role.all | role.each)) !== 0);
}

const rows = [...legRows, leads];

/** "T1-T3 to ground 2.1 gig": from the first to the last, each of them to ground; "T1-T2 to ground" both. */
function rangeToGround(draft: Draft, items: readonly Item[]): boolean {
  // "R-S 2.6 to gnd 220 meg": the ground begins what comes next
  const led = draft.before.some(
    (at) => items[at]?.kind === itemKind.points && items[at + 1]?.kind === itemKind.ground,
  );
  if (!led) return false;
  const [pair, ...more] = draft.points ?? [];
  if (pair?.length !== 2 || more.length > 0 || pair.includes("ground")) return false;
  const row = rows.find((one) => one[0] === pair[0] && one[2] === pair[1]);
  draft.points = (row ?? pair).map((name) => [name, "ground"]);
  draft.count = 1;
  return true;
}

/** "c-r 1.1 c-s 2.9 r-s 4.0, all OL to shell": all means the pins that were named. */
export function groundOfPairs(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((draft, order) => {
    if (draft.gone || !draft.grounded || rangeToGround(draft, items)) return;
    if (draft.points !== undefined && !draft.assumedPoints) return;
    const meg = draft.unit?.dimension === "resistance" && draft.unit.factor >= 1e6;
    if (!draft.over && !meg) return;
    const names = pointsBefore(drafts, order);
    if (names.length !== 3 || !saidOfAll(items, draft.index)) return;
    draft.points = names.map((name) => [name, "ground"]);
    draft.count = 1;
    draft.assumedPoints = false;
  });
}
