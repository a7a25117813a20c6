import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { isOrdinalUpTo } from "./near.ts";

const joint = /^(?:and|&|,|n|\+|are|is|read|reads|was|were|both|all|on|for|at|with)$/;
const clauseEnd = /^[,.;]$/;

const isDigit = (item: Item | undefined): item is Item => isOrdinalUpTo(item, 9);

/** Indexes of the digits next to `at` in one direction; none where a digit stands there without being led to. */
function digitsFrom(items: readonly Item[], at: number, step: 1 | -1): readonly number[] {
  const found: number[] = [];
  let i = at + step;
  for (; isDigit(items[i]) || joint.test(items[i]?.text ?? ""); i += step)
    if (isDigit(items[i])) found.push(i);
  // the comma, or the stop, ends what was said before: "at 500, 1 and 3 same"
  const edge = items[(found.at(-1) ?? at) + step];
  const clear =
    edge === undefined || edge.kind === itemKind.line || clauseEnd.test(edge.text) || step === 1;
  return clear ? found.toSorted((a, b) => a - b) : [];
}

/** How the row goes on that was named last before `at`: "lead 2", "L1", "comp 1". */
function nameOf(items: readonly Item[], at: number): ((digit: Item) => boolean) | undefined {
  const last = items
    .slice(0, at)
    .findLast(({ kind }) => kind === itemKind.points || kind === itemKind.subject);
  const points = last?.points?.length === 1 ? last.points[0] : undefined;
  const lead = /^(lead |phase |L|T)([1-3])$/.exec(points?.[0] ?? "");
  const machine = points === undefined ? /^([a-z][a-z ]* )(\d)$/.exec(last?.subject ?? "") : null;
  const [, family, own] = lead ?? machine ?? [];
  if (family === undefined) return undefined;
  return (digit) => {
    if (String(digit.value) === own || (lead !== null && digit.value > 3)) return false;
    if (lead === null) {
      digit.kind = itemKind.subject;
      digit.subject = `${family}${digit.value}`;
    } else {
      digit.kind = itemKind.points;
      digit.points = [[`${family}${digit.value}`, ...(points ?? []).slice(1)]];
    }
    return true;
  };
}

/** The points of all in the item next to "same", so that it is of each. */
function gather(note: Note, digits: readonly number[]): void {
  const [first, ...rest] = digits.map((at) => note.items[at]);
  if (first?.points === undefined) return;
  first.points = [first, ...rest].flatMap((item) => item?.points ?? []).sort();
  for (const item of rest) {
    if (item === undefined) continue;
    item.kind = itemKind.number;
    item.points = undefined;
    const at = note.items.indexOf(item);
    state(note, sameByNumber.name, [at, at + 1], { kind: "note", about: "place" });
  }
}

/** "lead 2 84 meg at 500, 1 and 3 same", "comp 1 84 meg, same on 2": the next of the row by number alone. */
export const sameByNumber: Rule = {
  name: "<row> <value>, <numbers> same",
  heads: "same|ditto|dito|sme|identical|likewise|samesies|well",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    for (let at = 0; at < items.length; at++) {
      if (((items[at]?.roles ?? 0) & role.same) === 0) continue;
      const before = digitsFrom(items, at, -1);
      const led = /^(?:on|for|at|with)$/.test(items[at + 1]?.text ?? "");
      const digits = before.length > 0 ? before : led ? digitsFrom(items, at, 1) : [];
      const name = digits.length === 0 ? undefined : nameOf(items, Math.min(at, ...digits));
      if (name === undefined) continue;
      const named = digits.map((i) => items[i]).filter((item) => item !== undefined);
      if (named.every(name)) gather(note, before.length > 0 ? digits.toReversed() : digits);
    }
  },
};
