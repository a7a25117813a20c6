import type { Context } from "./context.ts";
import { type Item, itemKind } from "./item.ts";

/** How far a fellow's figure lies from the last one's at most; a machine that stands shows nothing. Our choice, no source. */
const apart = 5;

function isFigure(item: Item | undefined): item is Item {
  return item?.kind === itemKind.number && item.unit === undefined && !item.colon;
}

/** The numbers that stand before each value: as many as there are, each the next one. */
function namesOf(items: readonly Item[], next: number): readonly Item[] {
  const figures = items.filter(({ kind }) => kind === itemKind.number);
  const rest = items.filter((item) => !figures.includes(item));
  if (figures.length < 4 || figures.length % 2 !== 0 || !figures.every(isFigure)) return [];
  if (!rest.every(({ text, kind }) => text === "," || kind === itemKind.line)) return [];
  const names = figures.filter((_, at) => at % 2 === 0);
  const counted = names.every(
    ({ value, text }, at) => value === next + at && /^\d{1,2}$/.test(text),
  );
  return counted ? names : [];
}

function isLike(value: number, told: number): boolean {
  return value === 0 || (value / told < apart && told / value < apart);
}

function rename(names: readonly Item[], family: string): void {
  for (const name of names) {
    name.kind = itemKind.subject;
    name.subject = `${family}${name.value}`;
  }
}

/** "fan 1 3.2a 2 3.2 3 3.1 4 3.3": behind the first machine and its figure two fellows at least, each by its number. */
function fellowsInRow(items: readonly Item[]): void {
  items.forEach((item, at) => {
    const [, family, number] = /^(\D+ )(\d{1,2})$/.exec(item.subject ?? "") ?? [];
    const told = items[at + 1];
    if (family === undefined || item.kind !== itemKind.subject) return;
    if (told?.kind !== itemKind.number || !(told.value > 0)) return;
    let end = at + 2;
    while (items[end]?.kind === itemKind.number || items[end]?.text === ",") end++;
    const names = namesOf(items.slice(at + 2, end), Number(number) + 1);
    const like = (name: Item): boolean =>
      isLike(items[items.indexOf(name) + 1]?.value ?? Number.NaN, told.value);
    if (names.length > 0 && names.every(like)) rename(names, family);
  });
}

const turnsTo = /^(?:now|next|then|and|on)$/;

/** "now 3 14.9 14.8 15.2" behind compressor 2 at 15.1: the next one, and then a row of its figures. */
function fellowThenRow(items: readonly Item[], next: number, told: number): Item | undefined {
  const [turn, name, ...rest] = items;
  if (!turnsTo.test(turn?.text ?? "") || name === undefined || !isFigure(name)) return undefined;
  if (name.value !== next) return undefined;
  const figures = rest.filter(({ kind }) => kind === itemKind.number);
  const fine = figures.length > 2 && figures.every(({ value }) => !Number.isInteger(value));
  if (isLike(next, told) && !fine) return undefined;
  const row =
    figures.length > 1 && figures.every((one) => isFigure(one) && isLike(one.value, told));
  const bare = rest.every(({ kind, text }) => kind === itemKind.number || /^[,/]$/.test(text));
  return row && bare ? name : undefined;
}

/** "3 3.0 4 3.1 5 0" behind fans 1 and 2: the message goes on with their fellows, each by its number. */
export function fellowsByNumber(items: readonly Item[], { readings }: Context): void {
  fellowsInRow(items);
  const last = readings.at(-1);
  const [, family, number] = /^(\D+ )(\d{1,2})$/.exec(last?.subject ?? "") ?? [];
  const told = Number(last?.figure.number);
  if (family === undefined || number === undefined || !(told > 0)) return;
  const fellow = fellowThenRow(items, Number(number) + 1, told);
  if (fellow !== undefined) {
    rename([fellow], family);
    return;
  }
  const names = namesOf(items, Number(number) + 1);
  const like = (name: Item): boolean =>
    isLike(items[items.indexOf(name) + 1]?.value ?? Number.NaN, told);
  if (names.length > 0 && names.every(like)) rename(names, family);
}
