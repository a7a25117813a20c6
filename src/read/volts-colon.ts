import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { testerVolts } from "./tester-volts.ts";

/** As many values as points before the colon: each is of its own. */
export function onePointEach(behind: readonly Draft[], taken: Draft): boolean {
  const points = taken.points ?? [];
  const values = behind.filter(
    ({ gone, points: own, place, unit }) =>
      !gone &&
      own === undefined &&
      // "…, suct 118"
      place === undefined &&
      (unit === undefined || unit.dimension === "resistance"),
  );
  if (points.length < 2 || values.length !== points.length) return false;
  for (const [at, draft] of values.entries()) draft.points = points.slice(at, at + 1);
  return true;
}

/** "U V W lifted, 500 volts: 0.18 0.18 0.19 megohms": set before the colon, read behind it in megohms. */
export function voltsColon(draft: Draft, items: readonly Item[]): boolean {
  if (draft.unit?.figure !== "V" || !testerVolts.has(draft.value)) return false;
  if (!/^[:,]$/.test(items[draft.index + 1]?.text ?? "")) return false;
  if (items[draft.index + 2]?.kind !== itemKind.number) return false;
  const behind = items.slice(draft.index + 2).filter(({ kind }) => kind === itemKind.number);
  const united = behind.find(({ unit }) => unit !== undefined);
  return united?.unit?.dimension === "resistance" && united.unit.factor >= 1e6;
}
