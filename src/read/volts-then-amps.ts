import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { isLineVolts, lineVolts } from "./line-volts.ts";
import { recast } from "./recast.ts";

/** Share by which three volts of one supply lie apart at most. Common practice, no source. */
const apart = 0.12;
/** The share of volts that amps of the same motor are at most, where both are rows of three. Our choice, no source. */
const share = 0.3;

const isAmps = (draft: Draft): boolean =>
  draft.quantity === "current" && draft.rating === undefined;

/** Told as amps, or as nothing. */
const mayBeAmps = (draft: Draft): boolean =>
  isAmps(draft) ||
  (draft.quantity === undefined && draft.unit === undefined && draft.rating === undefined);

/** Its unit was not said of it: "461 amps 17.8" names what follows. */
function isBare(draft: Draft, items: readonly Item[]): boolean {
  if (!draft.ownUnit) return true;
  return (
    items[draft.index + 1]?.kind === itemKind.number ||
    items[draft.index + 2]?.kind === itemKind.number
  );
}

/** Every three values in a row, and the three behind them. */
function rowsOfThree(
  list: readonly Draft[],
): readonly { readonly row: readonly Draft[]; readonly next: readonly Draft[] }[] {
  const alive = list.filter((draft) => !draft.gone);
  return alive.flatMap((_, at) => {
    const next = alive.slice(at + 3, at + 6);
    return next.length < 3 ? [] : [{ row: alive.slice(at, at + 3), next }];
  });
}

/** "output at 30 hz 228 229 227, amps 9.8 9.9 9.7": the row that no motor of the other draws is its volts. */
export function voltsThenAmps(list: readonly Draft[], items: readonly Item[]): void {
  for (const { row, next } of rowsOfThree(list)) {
    if (!row.every(isAmps) || !next.every(mayBeAmps)) continue;
    const values = row.map(({ value }) => value);
    const [low, high] = [Math.min(...values), Math.max(...values)];
    if (!isLineVolts(low) || !isLineVolts(high) || high - low > apart * low) continue;
    if (
      next.some(({ value }) => value > share * low) ||
      !row.every((draft) => isBare(draft, items))
    )
      continue;
    for (const draft of row) recast(draft, "voltage", "V");
    for (const draft of next) {
      draft.question = undefined;
      recast(draft, "current", "A");
    }
  }
}

/** "line side is 12.8 10.4 11.9 at light load, 466 462 464 V": a row that no supply has, beside one that a supply has, is drawn. */
export function ampsThenVolts(list: readonly Draft[]): void {
  for (const { row, next } of rowsOfThree(list)) {
    const bare = row.every(
      (one) => one.quantity === "voltage" && !one.ownUnit && one.rating === undefined,
    );
    const volts = next.every((one) => one.quantity === "voltage" && one.value >= lineVolts.least);
    if (!bare || !volts || row.some(({ value }) => value >= lineVolts.least)) continue;
    for (const draft of row) {
      recast(draft, "current", "A");
      draft.place = undefined;
    }
  }
}

/** Share by which the volts of one supply differ at most, well and badly. Common practice, no source. */
const even = 0.04;

/** "three ten three fifty three eighty" while the pump's vacuum is watched: nobody reads volts there, and nobody can tell what it is. */
export function voltsInVacuum(
  list: readonly Draft[],
  items: readonly Item[],
  { readings, testing }: Context,
): void {
  const vacuum = testing === "vacuum" || readings.at(-1)?.quantity === "vacuum";
  if (!vacuum || items.some(({ kind }) => kind !== itemKind.number && kind !== itemKind.sign))
    return;
  const volts = list.filter((draft) => draft.quantity === "voltage" && !draft.ownUnit);
  const values = volts.map(({ value }) => value);
  // three of a supply lie close together
  if (Math.max(...values) - Math.min(...values) <= even * Math.min(...values)) return;
  for (const draft of volts) draft.question = "quantity";
}
