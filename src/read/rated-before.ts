import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const measured =
  /^(?:tested|tests|reads|reading|read|measured|measures|measuring|came|got|getting|checks|checked|actual|shows|showing|pulls|pulling|draws|drawing)$/;

/** What a part measures is at most so much of what it is marked; common practice, no source. */
const share = { from: 0.1, to: 2 } as const;

/** "it tested at thirty nine" behind "run cap rated fifty": the same part, measured. */
export function ratedBefore(draft: Draft, items: readonly Item[], context: Context): void {
  const last = context.readings[context.readings.length - 1];
  if (last?.rating === undefined || last.rating === "setpoint" || context.latest !== 1) return;
  if (draft.quantity !== undefined || draft.unit !== undefined || draft.over) return;
  if (draft.named !== undefined || draft.points !== undefined || draft.place !== undefined) return;
  if (draft.subject !== undefined || draft.rating !== undefined || draft.thing !== undefined)
    return;
  if (!items.slice(0, draft.index).some(({ text }) => measured.test(text))) return;
  const ratio = draft.value / Number(last.figure.number);
  if (!(ratio >= share.from && ratio <= share.to)) return;
  draft.quantity = last.quantity;
  draft.unit = unitCalled(last.figure.unit);
  draft.assumedUnit = draft.unit !== undefined;
  draft.subject = last.subject;
  draft.question = undefined;
}
