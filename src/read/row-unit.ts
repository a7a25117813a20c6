import type { Draft } from "./draft.ts";
import { sameDimension } from "./inherit.ts";
import type { Item } from "./item.ts";
import { itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { between } from "./relate.ts";

/** "megohms to grd 1.2 1.4 1.1 gig": the unit behind a row's last value holds for the row, whatever its head says. */
export function rowUnit(drafts: readonly Draft[], items: readonly Item[]): void {
  for (let last = drafts.length - 1; last > 0; last--) {
    const end = drafts[last];
    if (end?.ownUnit !== true || end.unit === undefined) continue;
    for (let i = last - 1; i >= 0; i--) {
      const [left, right] = [drafts[i], drafts[i + 1]];
      if (left === undefined || right === undefined || left.ownUnit || left.over) break;
      const gap = between(items, left, right);
      if (!gap.list && !gap.empty) break;
      const ratio = left.value / end.value;
      if (!(ratio > 0.2 && ratio < 5)) break;
      if (left.unit !== undefined && sameDimension(left, end)) left.unit = end.unit;
    }
  }
  legsUnit(drafts);
  testUnit(drafts);
}

/** "meg'd to ground A 3.2 B 3.1 C 3.2 gig": the unit behind the last leg of a test is each one's. */
function testUnit(drafts: readonly Draft[]): void {
  const leg = /^(?:phase [ABC]|lead \d|[LT]\d|[UVW])$/;
  drafts.forEach((end, order) => {
    const row = drafts.slice(Math.max(0, order - 2), order + 1);
    if (row.length < 3 || !end.ownUnit || (end.unit?.factor ?? 0) < 1e6) return;
    if (end.unit?.dimension !== "resistance") return;
    const names = row.map(({ points }) => (points?.length === 1 ? points[0]?.[0] : undefined));
    if (!names.every((name) => leg.test(name ?? "")) || new Set(names).size < 3) return;
    const free = row.slice(0, 2).every((one) => one.unit === undefined && !one.over);
    const like = row.every(({ value }) => value > end.value / 5 && value < end.value * 5);
    if (free && like) for (const one of row) one.unit = end.unit;
  });
}

const legs: readonly (readonly string[])[] = [
  ["U", "V", "W"],
  ["T1", "T2", "T3"],
];

/** "bus 337 u 6.1 v 6.0 w 6.2a": amps behind the last of a motor's legs are of each, whatever volts were told before. */
function legsUnit(drafts: readonly Draft[]): void {
  drafts.forEach((end, order) => {
    const row = drafts.slice(Math.max(0, order - 2), order + 1);
    const names = row.map(({ points }) => (points?.length === 1 ? points[0]?.join() : undefined));
    if (!legs.some((all) => all.join() === names.join())) return;
    if (!end.ownUnit || end.unit?.dimension !== "current") return;
    const free = row.slice(0, 2).every((one) => !one.ownUnit && one.named === undefined);
    const like = row.every(({ value }) => value > end.value / 5 && value < end.value * 5);
    if (free && like) for (const one of row) one.unit = end.unit;
    // "u 228 v 230 w 6.2a": no leg draws a share of the others so small, so those are no amps
    else if (free && row.slice(0, 2).every(({ value }) => value > end.value * 10))
      for (const one of row.slice(0, 2)) one.question = "quantity";
  });
}

const sizes: ReadonlySet<string> = new Set(["<number> <size of a thing>", "<number> amp breaker"]);

/** "24v xfmr 26.8", "5v rail 4.9": what it gives, behind the volts that it is called by. */
export function ofItsRail(draft: Draft, items: readonly Item[]): void {
  if (draft.unit !== undefined || draft.named !== undefined || draft.points !== undefined) return;
  for (let i = draft.index - 1; i >= 0 && i >= draft.index - 4; i--) {
    const item = items[i];
    if (item === undefined || item.kind === itemKind.sign) return;
    if (item.kind !== itemKind.number) continue;
    // "0-10v 6.2" may be what it is called by and no more
    if (items[i - 1]?.text === "-") return;
    const ratio = draft.value / item.value;
    const named =
      sizes.has(item.owner ?? "") && item.unit?.dimension === "voltage" && item.value <= 30;
    if (!named || !(draft.value === 0 || (ratio > 0.5 && ratio < 1.5))) return;
    draft.named = "voltage";
    draft.hint = undefined;
    draft.place = undefined;
    draft.unit = unitCalled("V");
    draft.assumedUnit = true;
    return;
  }
}
