import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";

/** Share by which legs differ at most, from each other and from what they were before. Common practice, no source. */
const near = 0.15;

const joins = /^(?:\/|,|and|n|&|-|now|then)$/;
const units = { current: "A", voltage: "V" } as const;

const isClose = (one: number, other: number): boolean => Math.abs(one / other - 1) <= near;

const isBare = (draft: Draft): boolean =>
  draft.quantity === undefined &&
  draft.unit === undefined &&
  draft.named === undefined &&
  draft.place === undefined &&
  draft.points === undefined &&
  draft.action === undefined &&
  draft.rating === undefined &&
  draft.subject === undefined &&
  !draft.over;

function isEvenRow(row: readonly Draft[]): boolean {
  return row.every((one) => isBare(one) && isClose(one.value, row[0]?.value ?? Number.NaN));
}

/** Three figures told before of one quantity in one breath, the last of them that are near these. */
function threeBefore(context: Context, value: number): keyof typeof units | undefined {
  const { readings } = context;
  const alike = readings.filter(
    ({ figure, rating }) => rating === undefined && isClose(Number(figure.number), value),
  );
  const [first] = alike;
  if (first?.quantity !== "current" && first?.quantity !== "voltage") return undefined;
  if (alike.length < 3 || alike.some(({ quantity }) => quantity !== first.quantity))
    return undefined;
  const row = readings.findLastIndex((one) => alike.includes(one));
  const three = readings.slice(Math.max(0, row - 2), row + 1);
  return three.length === 3 && three.every((one) => alike.includes(one))
    ? first.quantity
    : undefined;
}

/**
 * "17.1 16.9 17.2", legs of 17.8 17.9 18.1 A some messages ago: three even figures are of the only quantity that
 * was told so before, where nothing else that was read is like them.
 */
export function rowAsBefore(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const [first, second, third] = drafts;
  if (first === undefined || second === undefined || third === undefined) return;
  if (drafts.length !== 3 || !isEvenRow(drafts)) return;
  const between = items.slice(first.index + 1, third.index);
  if (!between.every((item, at) => at === second.index - first.index - 1 || joins.test(item.text)))
    return;
  const quantity = threeBefore(context, second.value);
  if (quantity === undefined) return;
  for (const draft of drafts) {
    draft.quantity = quantity;
    draft.unit = unitCalled(units[quantity]);
    draft.assumedUnit = true;
  }
}

/** Share of the plate that legs draw. Common practice, no source. */
const ofPlate = { from: 0.3, to: 1.3 } as const;

const inShare = (value: number, plate: number): boolean =>
  value / plate >= ofPlate.from && value / plate <= ofPlate.to;

/** "blower 7.1 7.0 7.2, plate 8.4": three even figures of a motor beside one off its plate are what it draws. */
export function legsByPlate(drafts: readonly Draft[], items: readonly Item[]): void {
  const legs = drafts.slice(0, 3);
  const [first, plate] = [drafts[0], drafts[3]];
  if (first === undefined || plate === undefined || drafts.length !== 4 || !isEvenRow(legs)) return;
  if (!/^(?:plate|nameplate|np)$/.test(items[plate.index - 1]?.text ?? "")) return;
  if (plate.unit !== undefined && plate.unit.dimension !== "current") return;
  const motor = items
    .slice(Math.max(0, first.index - 3), first.index)
    .find(({ text }) => /^(?:blower|fan|pump|motor|inducer|comp|compressor)$/.test(text));
  if (motor === undefined || !inShare(Math.max(...legs.map(({ value }) => value)), plate.value))
    return;
  for (const draft of [...legs, plate]) {
    draft.quantity = "current";
    draft.named = undefined;
    draft.unit ??= unitCalled("A");
    draft.assumedUnit = true;
  }
  plate.rating = /^comp/.test(motor.text) ? "RLA" : "FLA";
}

/** The bare figures of one row that end right before the draft at `to`; only the first may say whose they are. */
function rowBefore(drafts: readonly Draft[], items: readonly Item[], to: number): readonly Draft[] {
  const row: Draft[] = [];
  for (let at = to - 1; at >= 0; at--) {
    const [draft, right] = [drafts[at], row[0]];
    if (draft === undefined || !isBare({ ...draft, subject: undefined })) break;
    const gap = right === undefined ? [] : items.slice(draft.index + 1, right.index);
    if (gap.length > 1 || gap.some(({ text }) => !joins.test(text))) break;
    if (right !== undefined && !isClose(draft.value, right.value)) break;
    row.unshift(draft);
  }
  return row;
}

/** "comp 3 14.8/15.1/14.6 rla 19": the legs of a motor, and right behind them what its plate allows. */
export function legsByRating(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((plate, at) => {
    const { rating, value } = plate;
    if (rating !== "RLA" && rating !== "FLA" && rating !== "MCC") return;
    if (plate.unit !== undefined && plate.unit.dimension !== "current") return;
    const legs = rowBefore(drafts, items, at);
    const [first, last] = [legs[0], legs[legs.length - 1]];
    if (first === undefined || last === undefined || legs.length > 3) return;
    if (legs.length < 3 && first.subject === undefined) return;
    const between = items.slice(last.index + 1, plate.index);
    if (!between.every(({ text, label }) => text === "," || label?.rating === rating)) return;
    if (!legs.every((leg) => inShare(leg.value, value))) return;
    for (const leg of legs) {
      leg.quantity = "current";
      leg.unit = unitCalled("A");
      leg.assumedUnit = true;
    }
  });
}
