import { isStrongBreak } from "../breaks.ts";
import { itemKind } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { role } from "../word.ts";
import { freeNumber, gluedEnd } from "./near.ts";

/** "dip 3 on, 4 off": the switches behind the first go by their numbers alone. */
function switchesOn(note: Note, i: number): void {
  const { items } = note;
  for (let at = i + 1; at < items.length; at++) {
    const item = items[at];
    if (/^(?:on|off|up|down|,|and|&)$/.test(item?.text ?? "")) continue;
    if (!freeNumber(item) || item.unit !== undefined) return;
    if (!/^(?:on|off|up|down|,|and|&)$/.test(items[at + 1]?.text ?? "")) return;
    state(note, asideNumbers.name, [at, at + 1], { kind: "note", about: "place" });
  }
}

const cylinders = /^(?:cylinder|cyl|bottle|tank|drum)\b/;

/** "cylinder 44 and virgin from 51": where nothing is weighed, the figures behind are cylinders too. */
function otherCylinders(note: Note, i: number): void {
  const { items } = note;
  if (items.some(({ unit }) => unit !== undefined)) return;
  for (let at = i + 1; at < items.length; at++) {
    const item = items[at];
    if (!freeNumber(item) || !/^\d{1,4}$/.test(item.text)) continue;
    if (!/^(?:and|&|,|from|into|to|new|virgin|cylinder|cyl)$/.test(items[at - 1]?.text ?? ""))
      return;
    state(note, asideNumbers.name, [at, at + 1], { kind: "note", about: "cylinder" });
  }
}

/** "zone 1 is 70, 2 is 71": the next places go by their numbers alone, each with its own verb. */
function nextPlaces(note: Note, i: number): void {
  const { items } = note;
  const said = note.plain.slice(items[i]?.from, items[i]?.to);
  const typed = /(\d+)$/.exec(said)?.[1];
  let last = typed === undefined ? words.indexOf(said.split(" ")[1] ?? "") : Number(typed);
  if (!(last > 0)) return;
  for (let at = i + 1; at < items.length; at++) {
    const [before, item, verb] = items.slice(at - 1, at + 2);
    if (item === undefined || isStrongBreak(item)) return;
    const parted = before?.kind === itemKind.number || /^(?:,|and|&)$/.test(before?.text ?? "");
    const is = ((verb?.roles ?? 0) & role.is) !== 0 && freeNumber(items[at + 2]);
    if (!parted || !is || !freeNumber(item) || item.unit !== undefined) continue;
    if (item.value !== last + 1) continue;
    last = item.value;
    state(note, asideNumbers.name, [at, at + 1], { kind: "note", about: "place" });
  }
}

const words = ["", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

/** "room 412", "panel 2B", "gate code 7719#": a name keeps its number. */
export const asideNumbers: Rule = {
  name: "<place name> <number>",
  needs: "aside",
  apply: (note) => {
    note.items.forEach((item, i) => {
      if (
        item.kind !== itemKind.subject ||
        (item.roles & role.clock) === 0 ||
        item.owner !== undefined
      )
        return;
      if (/^dips?\b/.test(item.text)) switchesOn(note, i);
      const isCylinder = cylinders.test(note.plain.slice(item.from));
      state(note, asideNumbers.name, [i, gluedEnd(note.items, i)], {
        kind: "note",
        about: isCylinder ? "cylinder" : "place",
      });
      if (isCylinder) otherCylinders(note, i);
      else nextPlaces(note, i);
    });
  },
};
