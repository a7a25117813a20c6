import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";

const electrical = /^(?:resistance|current|voltage)$/;

/** Is nothing said of the value that would make it another thing's? */
function isFree(draft: Draft): boolean {
  const { points, subject, place, rating, earlier, unit } = draft;
  const own = [points, subject, place, rating].some((one) => one !== undefined);
  return !own && !earlier && (unit === undefined || electrical.test(unit.dimension));
}

/** "okay lead two now", then "one minute 680 meg": what was turned to is what is measured. */
export function atPointInHand(drafts: readonly Draft[], context: Context): void {
  const { pointed, machine, readings } = context;
  const last = readings[readings.length - 1];
  const named = drafts.findIndex(({ points }) => points !== undefined);
  const list = named < 0 ? drafts : drafts.slice(0, named);
  const one = list.length === 1 || list.every(({ after }) => after !== undefined);
  if (list.length === 0 || !one || !list.every(isFree)) return;
  if (pointed !== undefined)
    for (const draft of list)
      draft.points = [last?.points?.[1] === "ground" ? [pointed, "ground"] : [pointed]];
  // "compressor two now", then "14.4": of its kind the one that was turned to
  const family = machine?.replace(/ \S+$/, " ");
  const alike = family !== undefined && last?.subject?.startsWith(family) === true;
  if (alike && pointed === undefined && list.length === 1 && drafts.length === 1)
    for (const draft of list) draft.subject = machine;
}
