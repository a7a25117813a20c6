import type { Reading } from "../model.ts";
import { adopt } from "./adopt.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { ratio } from "./near-value.ts";
import { role } from "./word.ts";

/** "after drying", "same tester 500 V", "two hours later": the same test, at another time. */
function isLater({ roles, text, unit }: Item): boolean {
  if ((roles & role.after) !== 0) return true;
  if (unit?.dimension === "time" || unit?.dimension === "voltage") return true;
  return /^(?:after|again|same|retest|later|dried|recheck)$/.test(text);
}

/** "and after: 14.8 14.9 14.6": the same row measured again. */
export function sameAgain(
  bare: readonly Draft[],
  last: readonly Reading[],
  { items, context }: { readonly items: readonly Item[]; readonly context: Context },
): boolean {
  const [one] = last;
  if (one === undefined || bare.some((draft) => draft.subject !== undefined)) return false;
  if (!last.every((reading) => reading.quantity === one.quantity && reading.rating === undefined))
    return false;
  const names = new Set(last.map(({ points }) => points?.join()));
  if (one.points !== undefined && names.size < last.length) return false;
  // windings that dry gain tenfold
  const dries = one.quantity === "insulation_resistance" && items.some(isLater);
  const turned = context.machine !== undefined && context.machine !== one.subject;
  // another machine's windings need not be as sound as the first one's
  const most = dries || (turned && one.quantity === "insulation_resistance") ? 20 : turned ? 3 : 2;
  const near = bare.every((draft, order) => {
    const far = ratio(draft.value, last[order] ?? one);
    return far > 1 / most && far < most;
  });
  if (near) for (const draft of bare) adopt(draft, one, context);
  return near;
}

/** "now 121 and 345" behind "suction 118 head 340", "60 Hz 12.1" behind "50 Hz 8.2 amps": the same again, in order. */
export function parallel(
  list: readonly Draft[],
  items: readonly Item[],
  context: Context,
): boolean {
  return setsBefore(context, list.length).some((last, back) =>
    likeSet(list, last, { items, context, back }),
  );
}

/** So many messages back a whole set is gone through again. Our choice, no source. */
const setsBack = 4;

/** The readings of the last messages that had so many, newest first. */
function setsBefore({ readings, counts, latest: own }: Context, size: number): Reading[][] {
  if (size < 2) return [];
  if (own === size) return [readings.slice(-own)];
  const sets: Reading[][] = [];
  let end = readings.length;
  for (const count of counts.slice(-setsBack).reverse()) {
    if (count === size && end >= count) sets.push(readings.slice(end - count, end));
    end -= count;
  }
  return sets;
}

/** An older set is meant only where all four of a circuit, or more, are gone through. */
const wholeSet = 4;

function likeSet(
  list: readonly Draft[],
  last: readonly Reading[],
  {
    items,
    context,
    back,
  }: { readonly items: readonly Item[]; readonly context: Context; readonly back: number },
): boolean {
  const older = back > 0 || context.latest !== list.length;
  if (last.length !== list.length || (older && list.length < wholeSet)) return false;
  let known = 0;
  const fits = list.every((draft, order) => {
    const reading = last[order];
    if (reading === undefined || reading.rating !== undefined || draft.rating !== undefined)
      return false;
    if (draft.quantity !== undefined) {
      known++;
      return draft.quantity === reading.quantity && draft.ownUnit;
    }
    const far = ratio(draft.value, reading);
    const free =
      draft.unit === undefined && draft.place === undefined && draft.points === undefined;
    const own = draft.subject === undefined || draft.subject === reading.subject;
    return free && own && far > 0.3 && far < 3;
  });
  const goes = items.some(
    (item) => (item.roles & role.now) !== 0 || /^(?:after|again|still|same|later)$/.test(item.text),
  );
  if (!fits || known === list.length || (known === 0 && !goes)) return false;
  if (known === 0 && new Set(last.map((reading) => `${reading.quantity} ${reading.at}`)).size < 2)
    return false;
  list.forEach((draft, order) => {
    const like = last[order];
    if (like === undefined || draft.quantity !== undefined) return;
    adopt(draft, like, context);
    draft.place = like.at;
  });
  return true;
}
