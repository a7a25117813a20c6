import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { fileCode } from "./fault-reading.ts";
import { textAt } from "./near.ts";

/** Lights and displays do this to a code. */
const acts = /^(?:flashing|flashes|flashed|blinking|blinks|blinked)$/;
const stands = /^(?:showing|displayed|up|lit|cleared|gone)$/;
const returns = /^(?:came|comes)$/;
const alarms = /^(?:alarms?|fault|error|err)$/;
const shows = /^(?:shows|show|showing|displays|displaying|reads|says|flashing|blinking)$/;

/** Names of machines look like codes: "OU3 showing low", "AC2 flashing". */
const machines =
  /^(?:OU|OD|ID|IU|AC|AH|FC|CU|HP|EF|SF|RF|BB|BS|DS|LED|TB|CN|CR|TX|L|T|R|V|N|X)-?\d/;
const shape = /^(?:[A-Z]{1,2}-?\d{1,3}|[A-Z]\d{4}|[A-Z]{1,2}\d{1,2}-\d{1,3})$/;

/** Behind the code at `i`, with what is glued to it by a dash: "E7-04". */
function runTo({ items }: Note, i: number): number {
  const [dash, number] = [items[i + 1], items[i + 2]];
  const glued = dash?.text === "-" && dash.glued && number?.glued === true;
  return glued && number.kind === itemKind.number && number.unit === undefined ? i + 3 : i + 1;
}

function codeOf(note: Note, i: number): string | undefined {
  const item = note.items[i];
  if (item === undefined || item.owner !== undefined) return undefined;
  const end = runTo(note, i);
  const typed = note.text.slice(item.from, note.items[end - 1]?.to ?? item.to);
  const code = typed.toUpperCase();
  // "E-17" in capitals is a code of three items, "in-10" is none
  if (item.kind !== itemKind.code && (end < i + 3 || item.glued || typed !== code))
    return undefined;
  return shape.test(code) && !machines.test(code) ? code : undefined;
}

function ends(item: Item | undefined): boolean {
  return item === undefined || isStrongBreak(item) || /^(?:,|-|and|n|now|again)$/.test(item.text);
}

/** "E4 flashing", "E4 blinking 3x", "H7 showing.": nothing that is shown stands behind the verb. */
function shownBehind(note: Note, i: number): boolean {
  const { items } = note;
  const end = runTo(note, i);
  const verb = textAt(items, end);
  if (stands.test(verb)) return ends(items[end + 1]);
  if (returns.test(verb)) return /^(?:back|right|up)$/.test(textAt(items, end + 1));
  if (alarms.test(verb)) return !parts.test(codeOf(note, i) ?? "");
  return acts.test(verb) && codeOf(note, end + 1) === undefined;
}

const log = /^(?:in|from|on) (?:the |its )?(?:log|history|memory|fault|alarm|error|event)/;

/** "E4 then H2 in the log": codes in a row, and then where they are kept. */
function keptBehind(note: Note, i: number): boolean {
  const { items } = note;
  let at = runTo(note, i);
  for (;;) {
    const next = /^(?:,|and|then|&|n|\+|plus)$/.test(textAt(items, at)) ? at + 1 : at;
    if (codeOf(note, next) === undefined) break;
    at = runTo(note, next);
  }
  while (
    /^(?:is|are|was|were|both|stored|logged|saved|once|twice|\d?x\d?)$/.test(textAt(items, at))
  )
    at++;
  const item = items[at];
  return item !== undefined && log.test(note.plain.slice(item.from, item.from + 20));
}

const drives =
  /^(?:vfd|drive|inverter|controller|display|remote|keypad|outdoor|indoor|odu|idu|condenser)$/;
/** A belt, a circuit and a fuse are called so too. */
const parts = /^(?:[ABCDMX][A-Z]?-?\d{1,3}|F\d)$/;

/** "E7-04 on ODU1", "U4 on idu 3", "P8 on the outdoor": where the code stands, said behind it. */
function onMachine(note: Note, i: number, code: string): boolean {
  const { items } = note;
  const on = runTo(note, i);
  // "E3 and E5 on odu 2"
  if (/^(?:and|n|&|,|\+)$/.test(textAt(items, on)) && !parts.test(code)) {
    const next = codeOf(note, on + 1);
    return next !== undefined && onMachine(note, on + 1, next);
  }
  if (!/^(?:on|at)$/.test(textAt(items, on)) || parts.test(code)) return false;
  const the = /^(?:the|a|this|that)$/.test(textAt(items, on + 1));
  const machine = items[on + (the ? 2 : 1)];
  if (machine?.kind === itemKind.subject)
    return /^(?:odu|idu|ou|iu|head|fcu|indoor|outdoor|rtu|vrf|unit|inverter|drive|vfd)\b/i.test(
      machine.subject?.replace(/\d/g, " ") ?? "",
    );
  return drives.test(machine?.text ?? "");
}

const onLine = /^(?:odu|idu|outdoor|indoor)$/;

/** "hd 2 E6 odu U4": right behind the unit of a split, and nothing more is said of it. */
function behindUnit(note: Note, i: number, code: string): boolean {
  const { items } = note;
  const unit = (item: Item | undefined): boolean =>
    item?.kind === itemKind.subject
      ? /^(?:head|odu|idu) ?\d/i.test(item.subject ?? "")
      : onLine.test(item?.text ?? "");
  if (parts.test(code) || /^F/.test(code) || !unit(items[i - 1])) return false;
  const next = items[runTo(note, i)];
  return ends(next) || unit(next) || acts.test(next?.text ?? "");
}

/** "indoor shows E4", "display says H7" */
function shownBefore(note: Note, i: number): boolean {
  const { items } = note;
  // "vfd F0003", "drive tripped F0004"
  const tripped = textAt(items, i - 1) === "tripped" ? i - 2 : i - 1;
  if (/^(?:vfd|drive|inverter)$/.test(textAt(items, tripped)) && /\d{2}$/.test(textAt(items, i)))
    return true;
  // "fc E5 x3", "flt hist E5 E7"
  const led = /^(?:fc|flt|hist|history|log|logs)$/;
  const past = /^(?::|shows?|says|has|had)$/.test(textAt(items, i - 1)) ? i - 2 : i - 1;
  const next = /^(?:and|n|&|,|\+)$/.test(textAt(items, i - 1)) ? i - 2 : i - 1;
  if (led.test(textAt(items, past)) || items[next]?.owner === codesShown.name) return true;
  // "vfd showing F0021"
  const begun = i > 1 || (i === 1 && drives.test(textAt(items, 0)));
  return shows.test(textAt(items, i - 1)) && begun && ends(items[runTo(note, i)]);
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

function take(note: Note, i: number, code: string): void {
  const last = runTo(note, i);
  const [first, end] = [note.items[i], note.items[last - 1]];
  if (first === undefined || end === undefined) return;
  for (const one of note.items.slice(i, last)) one.owner = codesShown.name;
  fileCode(note, code, { span: [first.from, end.to], rule: codesShown.name });
}

/** A code that a light or a display shows, without a word for what it is. */
export const codesShown: Rule = {
  name: "<letter and digits> flashing",
  heads:
    "flashing|flashes|flashed|blinking|blinks|blinked|showing|shows|show|displayed|displays|displaying|up|lit|reads|says|also|now|plus|and|then|came|comes|cleared|gone|reset|again|on|at|in|from|odu|idu|head|hd|outdoor|indoor|vfd|drive|inverter|fc|flt|hist|history|log|logs|alarm|alarms|fault|error|err",
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
      if (onMachine(note, i, code) || behindUnit(note, i, code) || keptBehind(note, i)) {
        take(note, i, code);
        return;
      }
      if (!(behind || shownBefore(note, i) || another(note, i))) return;
      const last = runTo(note, i);
      const other = note.items[behind ? last : i - 1];
      for (const one of note.items.slice(i, last)) one.owner = codesShown.name;
      if (other !== undefined) other.owner = codesShown.name;
      const from = Math.min(item.from, other?.from ?? item.from);
      const to = Math.max(note.items[last - 1]?.to ?? item.to, other?.to ?? item.to);
      fileCode(note, code, { span: [from, to], rule: codesShown.name });
    });
  },
};
