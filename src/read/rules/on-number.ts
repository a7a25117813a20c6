import { endsClause } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber, textAt } from "./near.ts";

/** Machines or parts of one kind that are told apart by a number; common practice, no source. */
const most = 12;

function isName(item: Item | undefined): boolean {
  return (
    freeNumber(item) &&
    item.unit === undefined &&
    !item.fraction &&
    !item.colon &&
    Number.isNaN(item.high) &&
    Number.isInteger(item.value) &&
    item.value >= 1 &&
    item.value <= most &&
    !item.text.includes(".")
  );
}

/** Is a value of its own said behind it: "on three are eighteen", "on 2: 38", "on three it was packed"? */
function toldBehind({ items }: Note, i: number): boolean {
  const next = items[i + 1];
  if (next === undefined || endsClause(next)) return false;
  if (next.kind === itemKind.number || next.kind === itemKind.unit) return false;
  if ((next.roles & role.is) !== 0 || next.text === ":") return items[i + 2] !== undefined;
  if (goesOn.test(next.text)) return true;
  return next.kind === itemKind.word && next.label === undefined && next.roles === 0;
}

const months = /^(?:jan|feb|mar|apr|may|jun|jul|aug|sept?|oct|nov|dec)(?:[a-z]{0,6})$/;
const goesOn = /^(?:it|its|it's|they|which|that|but|so|now|at)$/;

/** Does nothing that could have such a value stand before it? "half glass on three" */
function nothingBefore({ items }: Note, i: number): boolean {
  const { label, roles, kind } = items[i - 2] ?? {};
  return kind === itemKind.word && label === undefined && roles === 0;
}

/** "amps on three are eighteen", "oil strainer on 3 was packed": which of the machines, no value. */
export const onNumber: Rule = {
  name: "<thing> on <number>",
  heads: "on",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (textAt(items, i - 1) !== "on" || !isName(item)) return;
      // "a price on 2 x 5 kW splits", "went in on 4 April"
      if (/^(?:x|by|of)$/.test(textAt(items, i + 1)) || months.test(textAt(items, i + 1))) return;
      if (!toldBehind(note, i) && !nothingBefore(note, i)) return;
      state(note, onNumber.name, [i, i + 1], { kind: "note", about: "place" });
    });
  },
};
