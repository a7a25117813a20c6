import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { closesWith, elsewhere, farewell, HOURS_OF_EACH, machineTime } from "./labor-farewell.ts";
import { freeNumber, textAt } from "./near.ts";
import { STATUS, statusOf } from "./status-words.ts";

/** Hours at most that one man spends at one machine in a day, and what they are counted in. Our choice, no source. */
const most = 14;
const step = 0.25;
const machine =
  /^(?:cooler|freezer|walkin|walk|wic|wif|reach|rack|case|cases|chiller|boiler|tower|rooftop|rtu|ahu|ice|unit|prep|split|box|coil|line|first|second|other)$/;
const people = /^(?:me|mine|myself|him|her|helper|us)$/;

/** `bare`: one that has no unit of its own, where what stands before says that hours follow. */
function isHours(item: Item | undefined, bare: boolean): item is Item {
  if (!freeNumber(item) || item.value <= 0 || item.value > most) return false;
  if (item.value % step !== 0) return false;
  return item.unit === undefined ? bare : item.unit.figure === "h";
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

/** One word that nothing here knows, as a name is. */
function isUnknown(item: Item | undefined): boolean {
  return item?.kind === itemKind.word && item.roles === 0 && !item.label && !item.signs;
}

/** "me", or a name. */
const isMan = (item: Item | undefined): boolean => people.test(item?.text ?? "") || isUnknown(item);

/** Does what was told end before it, or go on to the next man's? */
function endsBefore(next: Item | undefined): boolean {
  return next === undefined || next.kind !== itemKind.word || /^(?:and|n)$/.test(next.text);
}

/** Where the man's name behind hours ends: "me", or one word that nothing here knows. */
function ofMan(items: readonly Item[], i: number): number {
  return isMan(items[i + 1]) && endsBefore(items[i + 2]) ? i + 2 : 0;
}

const had = /^(?:had|has|did|put|was|were|got|in)$/;
const noMan = /^(?:travel|drive|driving|lunch|shop|wait|waiting|total|labor|labour|overtime|ot)$/;

/** "… hours Wren two and a quarter", ", isolde 2 h": where the hours of the man stand who is named before them; -1 where none do. */
function manThenHours(note: Note, from: number): number {
  const { items } = note;
  let at = from;
  while (/^(?:,|and|n|&|;)$/.test(textAt(items, at))) at++;
  const name = items[at];
  if (!isMan(name) || elsewhere.test(name?.text ?? "") || noMan.test(name?.text ?? "")) return -1;
  at++;
  const verb = had.test(textAt(items, at));
  while (had.test(textAt(items, at))) at++;
  const hours = items[at];
  if (!isHours(hours, true)) return -1;
  // a bare figure needs a name that is written as one, or his verb
  const capital = /^[A-Z]/.test(note.text.slice(name?.from, name?.to));
  const sure = hours.unit !== undefined || capital || verb;
  return sure && endsBefore(items[at + 1]) ? at : -1;
}

/** "I was here 3.5 hours Wren 2.25", "5.5 h, isolde 2 h": the speaker's own first, and then a man before his. */
function rowOfMen(note: Note): readonly number[] {
  const first = note.items.findIndex((item) => isHours(item, false));
  const found = [first];
  let next = first < 0 ? -1 : manThenHours(note, first + 1);
  for (; next >= 0; next = manThenHours(note, next + 1)) found.push(next);
  const own = note.items.slice(0, Math.max(0, first));
  const ran = /^(?:held|hold|holding|ran|run|running|since|after|until|till)$/;
  const other = own.some(({ text }) => machineTime.test(text) || ran.test(text));
  return found.length > 1 && !other ? found : [];
}

/** "leaving. 3.5 me 2.75 tamsin": said with a farewell, each with its man behind it, hours need no word. */
function partingRow(items: readonly Item[]): readonly number[] {
  if (!/^(?:leaving|left)$/.test(textAt(items, 0))) return [];
  let at = /^[,.]$/.test(textAt(items, 1)) ? 2 : 1;
  const found: number[] = [];
  while (isHours(items[at], true) && ofMan(items, at) > 0) {
    found.push(at);
    at = ofMan(items, at);
    while (/^(?:,|and|n|&|plus)$/.test(textAt(items, at))) at++;
  }
  const own = found.some((one) => people.test(textAt(items, one + 1)));
  return found.length > 1 && own && at >= items.length ? found : [];
}

type Ends = (items: readonly Item[], i: number) => number;

/** Two or more hours in a row, each with whose or what they are behind it. */
function rowFrom(
  items: readonly Item[],
  from: number,
  { ends, bare }: { readonly ends: Ends; readonly bare: boolean },
): readonly number[] {
  const found: number[] = [];
  let at = from;
  while (isHours(items[at], bare || found.length > 0)) {
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
    const end = ends(note.items, at);
    const name = ends === ofMan ? textAt(note.items, end - 1) : "";
    const whose = name === "" || people.test(name) ? {} : { whose: name };
    state(note, hoursOfEach.name, [at, end], { kind: "labor", hours, ...whose });
  }
}

/** Behind a farewell, or as all that is told, a row of hours needs no unit: "done here. 5.5 me 1 kit". */
function isBareRow(items: readonly Item[], i: number): boolean {
  // no farewell is so far from its hours
  const before = items.slice(Math.max(0, i - 12), i);
  const bye = before.some((one) => one.owner === STATUS && farewell.has(statusOf(one) ?? ""));
  const last = before.at(-1);
  return last === undefined || (bye && isStrongBreak(last));
}

/** "done. 2h 15 on site. kit 1.5": behind somebody's own hours a colleague's, his name first. */
function colleagueAfter(note: Note): void {
  const { items } = note;
  const own = items.findIndex(({ owner, unit }) => owner === undefined && unit?.figure === "h");
  const name = items.at(-2);
  const hours = items.at(-1);
  if (own < 0 || items.length - own < 3 || name === undefined || hours === undefined) return;
  const parted = /^[.,;]$/.test(items.at(-3)?.text ?? "");
  if (!parted || !isUnknown(name) || !isHours(hours, true) || !closesWith(items.slice(0, -3), own))
    return;
  state(note, hoursOfEach.name, [items.length - 2, items.length], {
    kind: "labor",
    hours: hours.value,
    whose: name.text,
  });
}

/** "two hours on the cooler one and a half on the freezer", "3 hours me 2.5 noor": the word is said once for both. */
export const hoursOfEach: Rule = {
  name: HOURS_OF_EACH,
  heads: "h|hr|hrs|hour|hours|leaving|left|me|mine|myself|him|her|helper|us",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    colleagueAfter(note);
    const bare = partingRow(items);
    if (bare.length > 0) {
      if (items[0]?.owner === undefined)
        state(note, hoursOfEach.name, [0, 1], { kind: "status", status: "left_site" });
      stateAll(note, bare, ofMan);
      return;
    }
    const named = rowOfMen(note);
    if (named.length > 0) {
      stateAll(note, named, (_, at) => at + 1);
      return;
    }
    for (let i = 0; i < items.length; i++) {
      const machines = rowFrom(items, i, { ends: onMachine, bare: false });
      if (machines.length > 0) {
        stateAll(note, machines, onMachine);
        return;
      }
      const men = rowFrom(items, i, {
        ends: ofMan,
        bare: ofMan(items, i) > 0 && isBareRow(items, i),
      });
      if (men.length > 0 && men.some((at) => people.test(textAt(items, at + 1)))) {
        stateAll(note, men, ofMan);
        return;
      }
    }
  },
};
