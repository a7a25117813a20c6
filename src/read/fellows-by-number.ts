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

/** "3 3.0 4 3.1 5 0" behind fans 1 and 2: the message goes on with their fellows, each by its number. */
export function fellowsByNumber(items: readonly Item[], { readings }: Context): void {
  fellowsInRow(items);
  const last = readings.at(-1);
  const [, family, number] = /^(\D+ )(\d{1,2})$/.exec(last?.subject ?? "") ?? [];
  const told = Number(last?.figure.number);
  if (family === undefined || number === undefined || !(told > 0)) return;
  const names = namesOf(items, Number(number) + 1);
  const like = (name: Item): boolean =>
    isLike(items[items.indexOf(name) + 1]?.value ?? Number.NaN, told);
  if (names.length > 0 && names.every(like)) rename(names, family);
}
