import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** Minutes and figures, that many in a row, tell of a vacuum that rises. Common practice, no source. */
const fewestRows = 3;
/** Above this no nitrogen is left to stand, in psi; below the least no field pump comes. Common practice, no source. */
const overPsi = 700;
const leastMicron = 50;

/** The value that a time stands right before: "5 min 1720". */
function timed(draft: Draft, items: readonly Item[]): boolean {
  const time = items[draft.index - 1];
  return time?.kind === itemKind.number && time.unit?.dimension === "time";
}

function isBare(draft: Draft): boolean {
  return (
    draft.unit === undefined &&
    draft.named === undefined &&
    draft.quantity === undefined &&
    draft.points === undefined &&
    draft.rating === undefined &&
    !draft.over
  );
}

/** "1 min 900, 5 min 1720, 10 min 2150": climbing by the minute past what nitrogen is tested at, it is a vacuum that rises. */
export function risingRows(list: readonly Draft[], items: readonly Item[]): void {
  const rows = list.filter((draft) => isBare(draft) && timed(draft, items));
  if (rows.length < fewestRows || rows.length < list.filter(isBare).length) return;
  const climbs = rows.every(
    (row, at) => row.value >= (rows[at - 1]?.value ?? leastMicron) && Number.isInteger(row.value),
  );
  const last = rows[rows.length - 1];
  if (!climbs || last === undefined || last.value <= overPsi) return;
  for (const row of rows) {
    row.quantity = "vacuum";
    row.named = "vacuum";
    row.unit = unitCalled("micron");
    row.assumedUnit = true;
  }
}
