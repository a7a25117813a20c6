import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber, isOrdinalUpTo, textAt } from "./near.ts";

/** Circuits, compressors or units that are told apart by a digit; common practice, no source. */
const most = 8;
/** How far the same thing on the next machine lies from the first at most; our choice, no source. */
const apart = 3;

/** One thing by its name and a machine's number, and the value behind them. */
interface Told {
  readonly name: string;
  readonly at: number;
  readonly number: number;
  readonly value: number;
}

/** What is measured by its name: "suct", "sh", "liq line", "amps"; "" for what is none, or a part of a machine. */
function nameOf(item: Item | undefined): string {
  if (item === undefined || item.owner !== undefined) return "";
  if (item.kind === itemKind.unit) return item.unit?.dimension ?? "";
  if (item.kind !== itemKind.label || item.label === undefined) return "";
  const { quantity, place, hint, rating, component } = item.label;
  // the parts of a machine have names of their own
  if (component === true || rating !== undefined || quantity === "capacitance") return "";
  return quantity === undefined && place === undefined ? "" : [quantity, place, hint].join();
}

function toldAt({ items }: Note, i: number): Told | undefined {
  const name = nameOf(items[i]);
  const number = items[i + 1];
  if (name === "" || !isOrdinalUpTo(number, most) || number.text.includes(".")) return undefined;
  let at = i + 2;
  while (((items[at]?.roles ?? 0) & role.is) !== 0 || /^(?:at|@|:|=)$/.test(textAt(items, at)))
    at++;
  const value = items[at];
  if (at > i + 4 || !freeNumber(value) || value.value === 0) return undefined;
  return { name, at: i + 1, number: number.value, value: value.value };
}

/** The next of the same name, by the next number, with a value that is like the first's. */
function isNext(one: Told, other: Told): boolean {
  if (one.name !== other.name || other.number !== one.number + 1 || other.at < one.at) return false;
  const far = other.value / one.value;
  return far > 0 ? far < apart && far > 1 / apart : Math.abs(other.value - one.value) < 30;
}

/** Names that the same digit stands behind, each before a value, so that it tells the machine: "suct 1 118 head 1 340 sh 1 12". */
const namesOfOne = 3;

/**
 * "suct 1 118 suct 2 121", "sh 1 is 12, sh 2 is 14": the same name twice, each with the next digit and a
 * value of its own, so the digits tell the machines; then those of the other names do, too.
 */
export const numberedAgain: Rule = {
  name: "<thing> <number> <value>, <thing> <number> <value>",
  needs: "number",
  apply: (note) => {
    const told = note.items.flatMap((_, i) => toldAt(note, i) ?? []);
    const numbers = new Set<number>();
    for (const one of told)
      for (const other of told)
        if (isNext(one, other)) {
          numbers.add(one.number);
          numbers.add(other.number);
        }
    for (const { number } of told) {
      const names = told.filter((one) => one.number === number).map(({ name }) => name);
      if (new Set(names).size >= namesOfOne) numbers.add(number);
    }
    for (const { at, number } of told)
      if (numbers.has(number))
        state(note, numberedAgain.name, [at, at + 1], { kind: "note", about: "place" });
  },
};
