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

/** "3 3.0 4 3.1 5 0" behind fans 1 and 2: the message goes on with their fellows, each by its number. */
export function fellowsByNumber(items: readonly Item[], { readings }: Context): void {
  const last = readings.at(-1);
  const [, family, number] = /^(\D+ )(\d{1,2})$/.exec(last?.subject ?? "") ?? [];
  const told = Number(last?.figure.number);
  if (family === undefined || number === undefined || !(told > 0)) return;
  const names = namesOf(items, Number(number) + 1);
  const like = (name: Item): boolean => {
    const value = items[items.indexOf(name) + 1]?.value ?? Number.NaN;
    return value === 0 || (value / told < apart && told / value < apart);
  };
  if (names.length === 0 || !names.every(like)) return;
  for (const name of names) {
    name.kind = itemKind.subject;
    name.subject = `${family}${name.value}`;
  }
}
