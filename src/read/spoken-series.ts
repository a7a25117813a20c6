import { type Item, itemKind } from "./item.ts";
import { isNitrogen } from "./nitrogen-name.ts";

/** Minutes since midnight of "two thirty", or NaN where it is no clock's face. */
function faceOf(item: Item | undefined): number {
  if (item?.kind !== itemKind.number || !item.spoken || item.unit !== undefined) return Number.NaN;
  const { value } = item;
  if (!Number.isInteger(value) || value < 100 || value >= 1260 || value % 5 !== 0)
    return Number.NaN;
  return value % 100 < 60 ? Math.floor(value / 100) * 60 + (value % 100) : Number.NaN;
}

/** Minutes between two looks at the same thing; common practice, no source. */
const apart = { least: 5, most: 240 } as const;

const lead = /^(?:it|its|it's|is|now|so|ok|okay|and|at|'|s)$/;
const goesOn = /^(?:and|we|were|we're|are|it|its|it's|is|at|reading|reads|now|down|to|,|'|s|re)$/;

/** "it's two forty and we're at seven eighty": the hour first, and then what the gauge shows. */
function hourThenShown(items: readonly Item[], from: number): boolean {
  let at = from + 1;
  while (goesOn.test(items[at]?.text ?? "")) at++;
  const joint = at > from + 1 && items.slice(from + 1, at).some(({ text }) => text === "and");
  const numbers = items.filter(({ kind }) => kind === itemKind.number);
  return joint && numbers.length === 2 && numbers[1] === items[at];
}

/** "two forty seven eighty": the digit behind the tens of a clock begins what was read, 7 and 80. */
function clockParted(items: readonly Item[], from: number): void {
  const [clock, rest] = items.slice(from, from + 2);
  const bare = [clock, rest].every(
    (one) => one?.kind === itemKind.number && one.spoken && one.unit === undefined,
  );
  if (!bare || clock === undefined || rest === undefined) return;
  const digit = clock.value % 10;
  const whole = Number.isInteger(clock.value) && clock.value > 100 && clock.value < 1260;
  if (!whole || digit === 0 || clock.value % 100 < 20 || clock.value % 100 > 59) return;
  if (!Number.isInteger(rest.value) || rest.value < 10 || rest.value > 99) return;
  clock.value -= digit;
  clock.colon = true;
  rest.value += digit * 100;
}

/** "three twenty five hundred and it's staying" behind microns: when it was looked at, and then what was read. */
function clockAhead(items: readonly Item[]): void {
  let from = 0;
  while (lead.test(items[from]?.text ?? "")) from++;
  const told = items[from];
  clockParted(items, from);
  if (told !== undefined && !Number.isNaN(faceOf(told)) && hourThenShown(items, from))
    told.colon = true;
  const [first, next, after] = items;
  if (first === undefined || Number.isNaN(faceOf(first)) || next?.kind !== itemKind.number) return;
  if (next.unit !== undefined && next.unit.figure !== "micron") return;
  if (after?.kind === itemKind.number) inTurn(items);
  else first.colon = true;
}

/** "three ten three fifty three thirty four hundred": a clock, what was read, the next clock, what was read then. */
function inTurn(items: readonly Item[]): void {
  const numbers = items.filter(({ kind }) => kind === itemKind.number);
  const clocks = numbers.filter((_, i) => i % 2 === 0);
  const rises = clocks.every((item, i) => {
    const before = clocks[i - 1];
    const gap = before === undefined ? apart.least : faceOf(item) - faceOf(before);
    return gap >= apart.least && gap <= apart.most;
  });
  if (numbers.length % 2 !== 0 || !rises || Number.isNaN(faceOf(clocks[0]))) return;
  for (const item of clocks) item.colon = true;
}

/** "nine fifteen two hundred psi nitrogen on", "200 pounds of nitrogen on it at nine fifteen": when, beside a gas that has its own unit. */
function clockOfGas(items: readonly Item[]): void {
  if (!items.some(isNitrogen)) return;
  const held = items.findIndex(
    ({ unit }) => unit?.dimension === "pressure" || unit?.figure === "lb",
  );
  items.forEach((item, i) => {
    if (held < 0 || Number.isNaN(faceOf(item))) return;
    const ahead = i === 0 && held === 1;
    const behind =
      held < i && /^(?:at|@)$/.test(items[i - 1]?.text ?? "") && i === items.length - 1;
    if (ahead || behind) item.colon = true;
  });
}

/**
 * "two thirty box twelve three thirty box is two": two spoken clocks, each before the same word and its
 * figure, are when it was looked at.
 */
export function spokenSeries(items: readonly Item[], vacuum: boolean): void {
  if (vacuum) clockAhead(items);
  clockOfGas(items);
  const faces = items.flatMap((item, i) => {
    const next = items[i + 1];
    const label = next?.label?.place ?? next?.label?.quantity;
    const is = /^(?:is|was|at|now)$/.test(items[i + 2]?.text ?? "");
    const told = items[is ? i + 3 : i + 2]?.kind === itemKind.number;
    const minutes = faceOf(item);
    return Number.isNaN(minutes) || label === undefined || !told ? [] : [{ item, label, minutes }];
  });
  faces.forEach(({ item, label, minutes }, at) => {
    const next = faces[at + 1];
    if (next === undefined || next.label !== label) return;
    const gap = next.minutes - minutes;
    if (gap < apart.least || gap > apart.most) return;
    item.colon = true;
    next.item.colon = true;
  });
}
