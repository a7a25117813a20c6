import { endsClause } from "../breaks.ts";
import { itemKind } from "../item.ts";
import type { Note } from "../note.ts";
import { isStatus, type Seen, statusOf } from "./status-words.ts";

/** Words and signs of such a message at most. Our choice, no source. */
const mostItems = 40;

/** The unit that begins the clause a status stands in: "HP-4 waiting on the coil". */
function unitAhead({ items }: Note, at: number): string | undefined {
  const from = items.findLastIndex((item, i) => i < at && endsClause(item)) + 1;
  const first = items[from];
  const near = at - from <= 2;
  return near && first?.kind === itemKind.subject ? first.subject : undefined;
}

/** "RTU-2 done, HP-4 waiting on the coil": each unit has its own status; nothing where not two are told so. */
export function ofTwoUnits(note: Note): readonly Seen[] {
  if (note.holds.mark || note.items.length > mostItems) return [];
  const units: string[] = [];
  const seen: Seen[] = [];
  note.items.forEach((item, at) => {
    const status = item.owner === undefined ? statusOf(item) : undefined;
    if (status !== "done" && status !== "waiting_for_parts") return;
    const unit = isStatus(note, at, status) ? unitAhead(note, at) : undefined;
    if (unit === undefined || units.includes(unit)) return;
    units.push(unit);
    seen.push({ status, at });
  });
  const [first, second, ...more] = seen;
  return first !== undefined && first.status !== second?.status && more.length === 0 && second
    ? [first, second]
    : [];
}
