import type { Reading } from "../model.ts";
import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { legByLeg } from "./leg-by-leg.ts";

/** So many messages back a row of points is gone through again. Our choice, no source. */
const setsBack = 4;

/** How far the greatest of a row may lie from the greatest of the row before: legs to ground are no pairs. Our choice. */
const near = { from: 0.6, to: 1.67 } as const;

const rows: ReadonlySet<string> = new Set([
  "current",
  "voltage",
  "winding_resistance",
  "insulation_resistance",
]);

const pointsOf = ({ points }: Reading): string => points?.join() ?? "";

/** The last message's readings of a quantity, those of its last machine, where each has points of its own. */
function rowBefore(quantity: string, context: Context): readonly Reading[] {
  const { readings, counts } = context;
  const spread = legByLeg(context);
  if (spread[0]?.quantity === quantity) return spread;
  let end = readings.length;
  for (const count of counts.slice(-setsBack).reverse()) {
    const set = readings.slice(Math.max(0, end - count), end);
    end -= count;
    const like = set.filter((one) => one.quantity === quantity && one.rating === undefined);
    const last = like.at(-1);
    if (last === undefined) continue;
    const row = like.filter(
      ({ subject, after_s }) => subject === last.subject && after_s === last.after_s,
    );
    const distinct = new Set(row.map(pointsOf)).size === row.length;
    return distinct && row.every(({ points }) => points !== undefined) ? row : [];
  }
  return [];
}

/** Is it a value alone: no point, no plate's, no other visit's? */
function isAlone(draft: Draft): boolean {
  return (
    draft.points === undefined &&
    draft.rating === undefined &&
    !draft.earlier &&
    !draft.grounded &&
    !draft.corrects &&
    draft.count === 1 &&
    draft.stat === undefined &&
    draft.state !== "start" &&
    draft.place === undefined
  );
}

/** Values of one kind that stand together, machine by machine. */
function groupsOf(drafts: readonly Draft[]): Draft[][] {
  const groups: Draft[][] = [];
  for (const draft of drafts) {
    const group = groups[groups.length - 1];
    const left = group?.at(-1);
    const same = left?.quantity === draft.quantity && left?.subject === draft.subject;
    if (group !== undefined && same && left?.kind === draft.kind) group.push(draft);
    else groups.push([draft]);
  }
  return groups;
}

/** "comp 2 .9 .9 1.4" behind three pairs of compressor 1, "after drying 820 870 850": the same points, in their order. */
export function carryRow(drafts: readonly Draft[], context: Context): void {
  if (context.readings.length === 0) return;
  const list = drafts.filter((draft) => !draft.gone && draft.question === undefined);
  const told = new Set(list.flatMap(({ quantity, points }) => (points ? [quantity] : [])));
  for (const group of groupsOf(list)) {
    const [first] = group;
    if (first?.quantity === undefined || group.length < 2 || !rows.has(first.quantity)) continue;
    if (!group.every(isAlone)) continue;
    if (told.has(first.quantity)) continue;
    const row = rowBefore(first.quantity, context);
    if (row.length !== group.length || row[0]?.at !== first.place) continue;
    const [now, was] = [group.map(({ value }) => value), row.map(({ value }) => Number(value))];
    const ratio = canonicalRatio(first, Math.max(...now), Math.max(...was));
    const wide = first.quantity === "insulation_resistance";
    if (!wide && !(ratio > near.from && ratio < near.to)) continue;
    group.forEach((draft, order) => {
      const points = row[order]?.points;
      if (points === undefined) return;
      draft.points = [points];
      draft.assumedPoints = true;
    });
  }
}

function canonicalRatio({ unit }: Draft, now: number, was: number): number {
  return (now * (unit?.factor ?? 1)) / was;
}
