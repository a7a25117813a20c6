import type { Item } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, isOrdinalUpTo, textAt } from "./near.ts";

/** Places that are told apart by a number behind them. */
const nouns = /^(?:box|space|case|head|indoor)$/;
/** So many boxes or heads hang on one unit at most; common practice, no source. */
const most = 64;

function numberOf(items: readonly Item[], i: number): number | undefined {
  const number = items[i + 1];
  if (!nouns.test(textAt(items, i)) || items[i]?.label?.place === undefined) return undefined;
  if (!freeNumber(number) || number.unit !== undefined || number.fraction) return undefined;
  const whole = Number.isInteger(number.value) && !number.text.includes(".");
  return whole && number.value >= 1 && number.value <= most ? number.value : undefined;
}

/** "space 4 is 81": the value comes behind the verb. */
function valueBehind(items: readonly Item[], i: number): boolean {
  return /^(?:is|reads|shows|sits|has)$/.test(textAt(items, i + 2)) && freeNumber(items[i + 3]);
}

/** "box 1 sc 9 box 2 sc 2": the same noun with the next number, and of each a value with its label. */
function counted(items: readonly Item[], i: number): boolean {
  const own = numberOf(items, i);
  const rowed = (at: number): boolean =>
    items[at + 2]?.label !== undefined && freeNumber(items[at + 3]);
  if (own === undefined || !rowed(i)) return false;
  return items.some(({ text }, at) => {
    if (at === i || text !== textAt(items, i) || !rowed(at)) return false;
    const other = numberOf(items, at);
    return other !== undefined && Math.abs(other - own) === 1;
  });
}

const through = /^(?:thru|through)$/;
const joint = /^(?:,|and|&|-|to|thru|through)$/;
/** What is told of cases behind their numbers; behind degrees nothing of it is. */
const told =
  /^(?:are|is|all|at|warm|hot|cold|high|down|off|out|iced|icing|frozen|dead|bad|good|fine|ok|okay|not|wont|have|has|in|with|reading|reads|running|run)$/;

/** "cases 14 thru 18 warm", "cases 3, 4 and 5 are down": where the numbers of a row of cases end. */
function casesEnd(items: readonly Item[], i: number): number {
  if (textAt(items, i) !== "cases" || items[i]?.label?.place !== "box") return i;
  let end = i + 1;
  let count = 0;
  let range = false;
  for (let at = end; at < items.length; at++) {
    if (isOrdinalUpTo(items[at], most)) {
      end = at + 1;
      count++;
    } else if (count === 0 || !joint.test(textAt(items, at))) break;
    else range ||= through.test(textAt(items, at));
  }
  return count > 1 && (range || told.test(textAt(items, end))) ? end : i;
}

/** A place by its number, where that is no value of it. */
export const numberedPlaces: Rule = {
  name: "<place> <number> is <value>",
  heads: "box|space|case|cases|head|indoor",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    const named = items.flatMap((_, i) => (counted(items, i) ? [i] : []));
    for (const i of named)
      state(note, numberedPlaces.name, [i, i + 2], { kind: "note", about: "place" });
    items.forEach((_, i) => {
      const end = casesEnd(items, i);
      if (end > i) state(note, numberedPlaces.name, [i + 1, end], { kind: "note", about: "place" });
      if (numberOf(items, i) === undefined || !valueBehind(items, i)) return;
      state(note, numberedPlaces.name, [i + 1, i + 2], { kind: "note", about: "place" });
    });
  },
};
