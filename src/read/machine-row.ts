import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { between } from "./relate.ts";

const kindOf = (subject: string | undefined): string => subject?.replace(/[ -]?\S+$/, "") ?? "";

/** How far a machine's figure may lie from the one before's at the same place; our choice, no source. */
const apart = 1.67;

/** The values of each machine, one after the other. */
function groupsOf(list: readonly Draft[]): Draft[][] {
  const groups: Draft[][] = [];
  for (const draft of list) {
    const last = groups.at(-1);
    const own = draft.subject !== undefined && draft.subject !== last?.[0]?.subject;
    if (last === undefined || own) groups.push([draft]);
    else last.push(draft);
  }
  return groups;
}

/** Nothing says where or what it is; of a case "box" is only what is taken for it. */
function isBare(draft: Draft): boolean {
  const { ownUnit, named, points, rating, place, series, after } = draft;
  const told = named ?? points ?? rating ?? series ?? after;
  return told === undefined && !ownUnit && !draft.over && (place === undefined || place === "box");
}

/** What it is and where; "" where neither was told. */
function keyOf({ place, named, unit }: Draft): string {
  const what = named ?? unit?.dimension;
  return place === undefined && what === undefined ? "" : `${place ?? ""} ${what ?? ""}`;
}

function alike(items: readonly Item[], before: readonly Draft[], row: readonly Draft[]): boolean {
  return row.every((draft, at) => {
    const like = before[at];
    const left = row[at - 1];
    if (like === undefined || !isBare(draft)) return false;
    const gap = left === undefined ? undefined : between(items, left, draft);
    if (gap !== undefined && !gap.list && !gap.empty) return false;
    const share = draft.value / like.value;
    return share > 1 / apart && share < apart;
  });
}

/** "AHU 1 supply 55 return 75, AHU 2 57 and 76": the next machine's values, at the same places in the same order. */
export function machineRow(list: readonly Draft[], items: readonly Item[]): void {
  const groups = groupsOf(list.filter(({ gone }) => !gone));
  groups.forEach((group, order) => {
    const before = groups[order - 1];
    if (before === undefined || before.length < 2) return;
    const row = group.slice(0, before.length);
    if (row.length < before.length || group.slice(row.length).some(isBare)) return;
    const kind = kindOf(row[0]?.subject);
    if (kind === "" || kind !== kindOf(before[0]?.subject)) return;
    const keys = new Set(before.map(keyOf));
    if (keys.has("") || keys.size < row.length || before.some(({ points }) => points)) return;
    if (!alike(items, before, row)) return;
    row.forEach((draft, at) => {
      const like = before[at];
      if (like === undefined) return;
      draft.place = like.place;
      draft.named = like.named;
      draft.hint = like.hint;
      draft.unit = like.unit;
      draft.assumedUnit = like.unit !== undefined;
      draft.subject = row[0]?.subject;
    });
  });
}
