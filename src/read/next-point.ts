import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { leads, legRows } from "./leg-rows.ts";
import { nth } from "./nth.ts";
import { role } from "./word.ts";

const nouns = /^(?:one|lead|leg|phase|terminal|winding)$/;
const small = /^(?:and|the|on|is|reads|at|,|now|then|\.|&|so|it's|its|was)$/;

/** Where a row of points that was being measured goes on: "lead 3" to ground behind "lead 2". */
interface Row {
  readonly names: readonly string[];
  readonly last: number;
  readonly grounded: boolean;
}

function rowOf(context: Context): Row | undefined {
  const points = context.readings[context.readings.length - 1]?.points;
  const grounded = points?.[1] === "ground";
  if (points?.length === 2 && !grounded) return undefined;
  for (const names of [...legRows, leads]) {
    const last = names.indexOf(points?.[0] ?? "") + 1;
    if (last > 0) return { names, last, grounded };
  }
  return undefined;
}

function isDone(context: Context, row: Row, number: number): boolean {
  const last = context.readings[context.readings.length - 1];
  return context.readings
    .slice(-3)
    .some((one) => one.quantity === last?.quantity && one.points?.[0] === row.names[number - 1]);
}

/** The number of the point that the words name, and the items that name it. */
function named(
  items: readonly Item[],
  row: Row,
): { readonly number: number; readonly used: readonly number[] } | undefined {
  for (let i = 0; i < items.length; i++) {
    const text = items[i]?.text ?? "";
    const number = text === "next" ? row.last + 1 : text === "last" ? 3 : nth.get(text);
    if (number === undefined || items[i]?.label !== undefined) continue;
    const noun = nouns.test(items[i + 1]?.text ?? "");
    return { number, used: noun ? [i, i + 1] : [i] };
  }
  return undefined;
}

/** "and 3 is 12": a digit, a verb, a value. */
function byDigit(list: readonly Draft[], items: readonly Item[], row: Row): number | undefined {
  const [digit, value] = list;
  if (digit === undefined || value === undefined || list.length !== 2) return undefined;
  const verb = items[digit.index + 1];
  const said =
    verb !== undefined && (verb.roles & role.is) !== 0 && value.index === digit.index + 2;
  if (!said || digit.unit !== undefined || digit.value !== row.last + 1) return undefined;
  return digit.value;
}

/** Nothing else is said than the point and its value. */
function onlyThat(items: readonly Item[], used: readonly number[], value: number): boolean {
  return items.every(
    (item, i) =>
      i === value ||
      used.includes(i) ||
      item.kind === itemKind.sign ||
      small.test(item.text) ||
      item.kind === itemKind.unit,
  );
}

/** How far from the value before a leg's or a lead's next one may lie to be taken for it; common practice, no source. */
const apart = 2.5;

/** "17.5 and 18.1" behind L1, "and 19.6" behind L1 and L2: as many bare figures as points are left. */
function theRest(
  list: readonly Draft[],
  items: readonly Item[],
  context: Context,
  row: Row,
): boolean {
  const last = context.readings[context.readings.length - 1];
  const left = 3 - row.last;
  if (list.length !== left || left === 0 || typeof last?.value !== "number") return false;
  if (left === 1 && items[0]?.text !== "and") return false;
  if (row.last === 2 && !isDone(context, row, 1)) return false;
  const bare = list.every((draft) => {
    const { points, subject, place, named, hint, rating, unit, earlier, after, over } = draft;
    const said = points ?? subject ?? place ?? named ?? hint ?? rating ?? after;
    const like = unit === undefined || unit.figure === last.figure.unit;
    const ratio = draft.value / Number(last.figure.number);
    return said === undefined && like && !earlier && !over && ratio > 1 / apart && ratio < apart;
  });
  const used = list.map(({ index }) => index);
  if (!bare || !onlyThat(items, used, -1)) return false;
  list.forEach((draft, order) => {
    const point = row.names[row.last + order] ?? "";
    draft.points = [row.grounded ? [point, "ground"] : [point]];
    draft.assumedPoints = true;
  });
  return true;
}

/**
 * "next one 88", "third 88 meg", "and 3 is 12" behind leads 1 and 2: the next point of the row that
 * is being measured, where nothing else is said and it has no value yet.
 */
export function nextPoint(list: readonly Draft[], items: readonly Item[], context: Context): void {
  const row = rowOf(context);
  if (row === undefined) return;
  if (theRest(list, items, context, row)) return;
  const digit = byDigit(list, items, row);
  const [first, second] = list;
  const draft = digit === undefined ? first : second;
  if (draft === undefined || draft.points !== undefined || draft.subject !== undefined) return;
  // "last month 12M": the same point, at another visit
  if (draft.place !== undefined || draft.named !== undefined || draft.earlier) return;
  if (draft.unit !== undefined && !/^(?:resistance|current|voltage)$/.test(draft.unit.dimension))
    return;
  const words =
    digit === undefined ? named(items, row) : { number: digit, used: [first?.index ?? 0] };
  if (words === undefined || (digit === undefined && list.length !== 1)) return;
  const { number, used } = words;
  if (number > 3 || isDone(context, row, number) || !onlyThat(items, used, draft.index)) return;
  draft.points = [
    row.grounded ? [row.names[number - 1] ?? "", "ground"] : [row.names[number - 1] ?? ""],
  ];
  draft.before = [...used, ...draft.before];
  if (digit === undefined || first === undefined) return;
  first.gone = true;
  const item = items[first.index];
  if (item !== undefined) item.owner = "<row> <value>";
}
