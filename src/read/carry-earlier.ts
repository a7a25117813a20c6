import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { onlyAlive } from "./inherit.ts";

/** "it was 12 yesterday" behind "T1 to gnd 4M": the same thing at another visit, where it is all that was told. */
export function carryEarlier(drafts: readonly Draft[], { readings, latest }: Context): void {
  const draft = onlyAlive(drafts);
  const last = readings[readings.length - 1];
  if (draft?.earlier !== true || last === undefined || latest !== 1) return;
  const { points, place, subject, grounded, count, rating } = draft;
  if ((points ?? place ?? subject ?? rating) !== undefined || grounded || count > 1) return;
  if (draft.quantity !== last.quantity || last.rating !== undefined) return;
  if (last.points !== undefined) {
    draft.points = [last.points];
    draft.assumedPoints = true;
  }
  draft.place = last.at;
  draft.subject = last.subject;
}
