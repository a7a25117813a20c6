import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { fileCode } from "./fault-reading.ts";
import { textAt } from "./near.ts";

/** Lights and displays do this to a code. */
const acts = /^(?:flashing|flashes|flashed|blinking|blinks|blinked)$/;
const stands = /^(?:showing|displayed|up|lit|cleared|gone)$/;
const returns = /^(?:came|comes)$/;
const shows = /^(?:shows|show|showing|displays|displaying|reads|says|flashing|blinking)$/;

/** Names of machines look like codes: "OU3 showing low", "AC2 flashing". */
const machines = /^(?:OU|OD|ID|IU|AC|AH|FC|CU|HP|EF|SF|RF|BB|BS|DS|LED|TB|CN|CR|TX|L|T|R|V|N)-?\d/;
const shape = /^[A-Z]{1,2}-?\d{1,3}$/;

function codeOf(note: Note, i: number): string | undefined {
  const item = note.items[i];
  if (item?.kind !== itemKind.code || item.owner !== undefined) return undefined;
  const code = note.text.slice(item.from, item.to).toUpperCase();
  return shape.test(code) && !machines.test(code) ? code : undefined;
}

function ends(item: Item | undefined): boolean {
  return item === undefined || isStrongBreak(item) || /^(?:,|-|and|n|now|again)$/.test(item.text);
}

/** "E4 flashing", "E4 blinking 3x", "H7 showing.": nothing that is shown stands behind the verb. */
function shownBehind(note: Note, i: number): boolean {
  const { items } = note;
  const verb = textAt(items, i + 1);
  if (stands.test(verb)) return ends(items[i + 2]);
  if (returns.test(verb)) return /^(?:back|right|up)$/.test(textAt(items, i + 2));
  return acts.test(verb) && codeOf(note, i + 2) === undefined;
}

/** "indoor shows E4", "display says H7" */
function shownBefore(note: Note, i: number): boolean {
  const { items } = note;
  return shows.test(textAt(items, i - 1)) && i > 1 && ends(items[i + 1]);
}

/** "after reset U2", "E4 then after reset U2": what a reset clears or brings up is a code. */
function aboutReset(note: Note, i: number): boolean {
  const { items } = note;
  if (textAt(items, i - 1) === "reset")
    return textAt(items, i - 2) === "after" && ends(items[i + 1]);
  return (
    textAt(items, i + 1) === "then" &&
    items.slice(i + 2, i + 5).some((item) => item.text === "reset")
  );
}

/** "also E7", "now E7" behind a message that gave a code */
function another(note: Note, i: number): boolean {
  const { items, context } = note;
  if (context.readings[context.readings.length - 1]?.quantity !== "fault_code") return false;
  // "E4 again + E9"
  const said = codeOf(note, i);
  const known = context.readings.some((one) => one.quantity === "fault_code" && one.value === said);
  if (known && textAt(items, i + 1) === "again") return true;
  const joined = /^(?:\+|and|&|n|plus)$/.test(textAt(items, i - 1));
  if (joined && items.slice(0, i - 1).some(({ owner }) => owner === codesShown.name)) return true;
  return i === 1 && /^(?:also|now|plus|and|then)$/.test(textAt(items, 0)) && ends(items[2]);
}

/** A code that a light or a display shows, without a word for what it is. */
export const codesShown: Rule = {
  name: "<letter and digits> flashing",
  heads:
    "flashing|flashes|flashed|blinking|blinks|blinked|showing|shows|show|displayed|displays|displaying|up|lit|reads|says|also|now|plus|and|then|came|comes|cleared|gone|reset|again",
  apply: (note) => {
    note.items.forEach((item, i) => {
      const code = codeOf(note, i);
      const behind = code !== undefined && shownBehind(note, i);
      if (code === undefined) return;
      if (aboutReset(note, i)) {
        item.owner = codesShown.name;
        fileCode(note, code, { span: [item.from, item.to], rule: codesShown.name });
        return;
      }
      if (!(behind || shownBefore(note, i) || another(note, i))) return;
      const other = note.items[behind ? i + 1 : i - 1];
      item.owner = codesShown.name;
      if (other !== undefined) other.owner = codesShown.name;
      const from = Math.min(item.from, other?.from ?? item.from);
      const to = Math.max(item.to, other?.to ?? item.to);
      fileCode(note, code, { span: [from, to], rule: codesShown.name });
    });
  },
};
