import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Hours at most that one man spends at one machine in a day, and what they are counted in. Our choice, no source. */
const most = 14;
const step = 0.25;
const machine =
  /^(?:cooler|freezer|walkin|walk|wic|wif|reach|rack|case|cases|chiller|boiler|tower|rooftop|rtu|ahu|ice|unit|prep|split|box|coil|line|first|second|other)$/;
const people = /^(?:me|mine|myself|him|her|helper|us)$/;

function isHours(item: Item | undefined, first: boolean): item is Item {
  if (!freeNumber(item) || item.value <= 0 || item.value > most) return false;
  if (item.value % step !== 0) return false;
  return item.unit === undefined ? !first : item.unit.figure === "h";
}

/** Where the machine's name behind "on" ends; 0 where none stands there. */
function onMachine(items: readonly Item[], i: number): number {
  if (textAt(items, i + 1) !== "on") return 0;
  const at = textAt(items, i + 2) === "the" ? i + 3 : i + 2;
  const name = items[at];
  if (name === undefined || name.kind === itemKind.number) return 0;
  if (name.kind !== itemKind.subject && !machine.test(name.text)) return 0;
  return at + 1;
}

/** Where the man's name behind hours ends: "me", or one word that nothing here knows. */
function ofMan(items: readonly Item[], i: number): number {
  const name = items[i + 1];
  const next = items[i + 2];
  const known = people.test(name?.text ?? "");
  const unknown =
    name?.kind === itemKind.word && name.roles === 0 && name.label === undefined && !name.signs;
  const ends = next === undefined || next.kind !== itemKind.word || /^(?:and|n)$/.test(next.text);
  return (known || unknown) && ends ? i + 2 : 0;
}

type Ends = (items: readonly Item[], i: number) => number;

/** Two or more hours in a row, each with whose or what they are behind it. */
function rowFrom(items: readonly Item[], from: number, ends: Ends): readonly number[] {
  const found: number[] = [];
  let at = from;
  while (isHours(items[at], found.length === 0)) {
    const end = ends(items, at);
    if (end === 0) break;
    found.push(at);
    at = end;
    while (/^(?:,|and|n|&|plus)$/.test(textAt(items, at))) at++;
  }
  return found.length > 1 ? found : [];
}

function stateAll(note: Note, row: readonly number[], ends: Ends): void {
  for (const at of row) {
    const hours = note.items[at]?.value ?? 0;
    state(note, hoursOfEach.name, [at, ends(note.items, at)], { kind: "labor", hours });
  }
}

/** "two hours on the cooler one and a half on the freezer", "3 hours me 2.5 noor": the word is said once for both. */
export const hoursOfEach: Rule = {
  name: "<hours> <whose>, <number> <whose>",
  heads: "h|hr|hrs|hour|hours",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    for (let i = 0; i < items.length; i++) {
      const machines = rowFrom(items, i, onMachine);
      if (machines.length > 0) {
        stateAll(note, machines, onMachine);
        return;
      }
      const men = rowFrom(items, i, ofMan);
      if (men.length > 0 && men.some((at) => people.test(textAt(items, at + 1)))) {
        stateAll(note, men, ofMan);
        return;
      }
    }
  },
};
