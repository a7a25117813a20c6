import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { fileCode } from "./fault-reading.ts";
import { textAt } from "./near.ts";

interface Spelled {
  readonly letters: string;
  readonly dash: boolean;
  readonly digits: string;
  readonly end: number;
}

const words: ReadonlyMap<string, string> = new Map(
  "oh zero one two three four five six seven eight nine"
    .split(" ")
    .map((word, at) => [word, String(Math.max(0, at - 1))]),
);

function capital({ items, text }: Note, i: number): string {
  const item = items[i];
  const typed = item === undefined ? "" : text.slice(item.from, item.to);
  return item?.owner === undefined && /^[A-Z]$/.test(typed) ? typed : "";
}

/** The figures of one item as they were said: "oh", "four", "twelve", "four one". */
function figuresOf({ plain }: Note, item: Item | undefined): string {
  if (item === undefined || item.owner !== undefined) return "";
  const said = plain.slice(item.from, item.to).split(" ");
  if (said.every((word) => words.has(word))) return said.map((word) => words.get(word)).join("");
  const whole = item.kind === itemKind.number && item.spoken && Number.isInteger(item.value);
  return whole && item.unit === undefined && item.value <= 199 ? String(item.value) : "";
}

function spelledAt(note: Note, i: number): Spelled | undefined {
  const { items } = note;
  const letters = capital(note, i) + (capital(note, i) === "" ? "" : capital(note, i + 1));
  if (letters === "" || capital(note, i - 1) !== "") return undefined;
  let at = i + letters.length;
  const dash = textAt(items, at) === "dash" || textAt(items, at) === "-";
  if (dash) at++;
  let digits = "";
  for (let said = figuresOf(note, items[at]); said !== ""; said = figuresOf(note, items[at])) {
    digits += said;
    at++;
    if (!digits.startsWith("0")) break;
  }
  return digits === "" || digits.length > 4 ? undefined : { letters, dash, digits, end: at };
}

const places = /^(?:room|suite|panel|box|unit|building|zone|bay|dock|door|gate|floor|wing|row)$/;
const leads =
  /^(?:a|an|got|gets|show|shows|showing|say|says|flashing|reads|display|displays|displaying|code|codes|has|had|threw|throws|throwing|on|and|then)$/;
const gives =
  /^(?:got|has|had|have|having|threw|throws|throwing|shows|showing|gave|gives|giving|saw|seeing|cleared|clear)$/;
/** What stands behind a letter and a figure that name a part. */
const parts =
  /^(?:to|panel|plug|clip|trap|wire|terminal|relay|contactor|valve|connector|fuse|breaker|belt|belts|filter|bearing|room|unit)$/;

function onMachine(items: readonly Item[], from: number): boolean {
  const at = textAt(items, from) === "the" ? from + 1 : from;
  const machine = /^(?:indoor|outdoor|unit|board|remote|stat|thermostat|head|drive|display)$/;
  return machine.test(textAt(items, at)) || items[at]?.subject !== undefined;
}

/** Is it a code, by its zero, its dash or what gives it? */
function isCode({ items, readings }: Note, i: number, one: Spelled): boolean {
  const next = items[one.end];
  if (next?.kind === itemKind.unit || next?.kind === itemKind.number) return false;
  if (parts.test(next?.text ?? "")) return false;
  const [far, before] = [textAt(items, i - 2), textAt(items, i - 1)];
  if (places.test(before)) return false;
  // nobody says a zero before a size or a point's number
  if (one.digits.startsWith("0") && one.digits.length > 1) return true;
  if (one.dash) return leads.test(before);
  // "E seven on indoor two"
  const shown = /^(?:on|at)$/.test(next?.text ?? "") && i === 0 && onMachine(items, one.end + 1);
  if (shown && /^[EFHJPU]$/.test(one.letters)) return true;
  if (one.letters.length > 1 || !/^[ACEFHJPUZ]$/.test(one.letters)) return false;
  const again = far === "and" && readings.some(({ quantity }) => quantity === "fault_code");
  return /^an?$/.test(before) && (gives.test(far) || again);
}

/** "a P oh one", "E dash four one", "got a U four": a code by its letters, though nothing calls it one. */
export const spelledCodes: Rule = {
  name: "<letter> oh <digit>",
  needs: "number",
  apply: (note) => {
    for (let i = 0; i < note.items.length; i++) {
      const one = spelledAt(note, i);
      if (one === undefined || !isCode(note, i, one)) continue;
      for (const item of note.items.slice(i, one.end)) item.owner = spelledCodes.name;
      const span = [note.items[i]?.from ?? 0, note.items[one.end - 1]?.to ?? 0] as const;
      fileCode(note, `${one.letters}${one.dash ? "-" : ""}${one.digits}`, {
        span,
        rule: spelledCodes.name,
      });
      i = one.end - 1;
    }
  },
};
