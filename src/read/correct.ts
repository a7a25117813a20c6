import type { Reading } from "../model.ts";
import type { Draft } from "./draft.ts";
import { itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { canonical } from "./make.ts";
import type { Note } from "./note.ts";
import { role } from "./word.ts";

/** Does the message say that it replaces something: "no", "make that", "typo"? */
function announces(note: Note, drafts: readonly Draft[]): boolean {
  const first = note.items.find(
    (item) => item.kind === itemKind.word || item.kind === itemKind.sign,
  );
  const start = note.items[0];
  if (start?.text === "no" && drafts[0]?.zero !== true) return true;
  if (start?.text === "*") return true;
  if (
    start !== undefined &&
    (start.roles & role.correct) !== 0 &&
    start.text !== "not" &&
    start.text !== "wrong"
  )
    return true;
  if (first?.text === "no" && first === note.items[1]) return true;
  const end = note.items[note.items.length - 1];
  if (end?.text === "actually" && note.items.length <= 4) return true;
  return note.items.some(
    (item) =>
      (item.roles & role.correct) !== 0 &&
      !(item.text === "that" && item !== start) &&
      item.text !== "not" &&
      item.text !== "wait" &&
      item.text !== "rather" &&
      item.text !== "no" &&
      item.text !== "hold" &&
      item.owner === undefined,
  );
}

function matches(draft: Draft, reading: Reading): boolean {
  if (reading.rating !== undefined && draft.rating === undefined) return false;
  const points = draft.points?.[0];
  if (points !== undefined) {
    if (reading.points === undefined) return false;
    const same = points.every((point) => reading.points?.includes(point) === true);
    if (
      !same ||
      (points.length === 2 &&
        reading.points.length === 2 &&
        !reading.points.every((point) => points.includes(point)))
    )
      return false;
    if (
      points.length === 1 &&
      reading.points.length === 2 &&
      reading.points[1] !== "ground" &&
      reading.points[0] !== points[0]
    )
      return false;
  }
  if (draft.place !== undefined && reading.at !== draft.place) return false;
  if (draft.subject !== undefined && reading.subject !== draft.subject) return false;
  const named = draft.named;
  if (
    named !== undefined &&
    reading.quantity !== named &&
    !(named === "resistance" && reading.unit === "Ohm")
  )
    return false;
  if (
    draft.unit !== undefined &&
    unitCalled(reading.figure.unit)?.dimension !== draft.unit.dimension &&
    reading.figure.unit !== ""
  )
    return false;
  return true;
}

/** How far a correction's value is from the reading's, on a logarithmic scale. */
function distance(draft: Draft, reading: Reading): number {
  const figure = Number(reading.figure.number);
  if (Number.isNaN(figure) || figure <= 0 || draft.value <= 0) return 0;
  return Math.abs(Math.log(draft.value / figure));
}

/** Is one number the other with a digit changed or two swapped: what a slip of the thumb makes? */
function oneDigitOff(value: number, figure: string): boolean {
  const [a, b] = [String(value), String(Number(figure))];
  if (a.length !== b.length || a === b) return false;
  const off = [...a].map((digit, at) => (digit === b[at] ? -1 : at)).filter((at) => at >= 0);
  if (off.length === 1) return true;
  return [...a].sort().join("") === [...b].sort().join("");
}

function target(note: Note, draft: Draft): Reading | undefined {
  const fitting = note.context.readings.filter((reading) => matches(draft, reading));
  const last = fitting[fitting.length - 1];
  const labelled =
    draft.points !== undefined ||
    draft.place !== undefined ||
    draft.subject !== undefined ||
    draft.named !== undefined;
  const several = new Set(fitting.map((reading) => reading.quantity)).size > 1;
  if (several && draft.named === undefined && draft.unit === undefined)
    return [...fitting].reverse().sort((a, b) => distance(draft, a) - distance(draft, b))[0];
  if (labelled || last === undefined) return last;
  const recent = note.context.readings
    .slice(-Math.max(1, note.context.latest))
    .filter((reading) => matches(draft, reading));
  if (recent.length < 2) return recent[0] ?? last;
  const alike = recent.filter((reading) => oneDigitOff(draft.value, reading.figure.number));
  if (alike.length === 1) return alike[0];
  if (new Set(recent.map((reading) => reading.quantity)).size === 1) {
    draft.question = "choice";
    return undefined;
  }
  return [...recent].reverse().sort((a, b) => distance(draft, a) - distance(draft, b))[0];
}

function adopt(draft: Draft, reading: Reading): void {
  draft.corrects = true;
  draft.quantity = reading.quantity;
  draft.named = reading.quantity;
  if (draft.unit === undefined) {
    draft.unit = unitCalled(reading.figure.unit);
    draft.assumedUnit = draft.unit !== undefined;
  }
  draft.place ??= reading.at;
  draft.subject ??= reading.subject;
  draft.state ??= reading.state;
  draft.kind ??= reading.kind;
  draft.action ??= reading.action;
  draft.after ??= reading.after_s;
  draft.testVoltage ??= reading.test_voltage;
  draft.temperature ??= reading.temperature;
  if (reading.quantity === "resistance") draft.component = true;
  if (draft.points === undefined)
    draft.points = reading.points === undefined ? undefined : [reading.points];
  else if (reading.points !== undefined && draft.points[0]?.length === 1)
    draft.points = [reading.points];
}

/** Is the value the one that the reading was said with: as typed, or in pounds and ounces? */
function sameFigure(draft: Draft, reading: Reading, note: Note): boolean {
  if (Number(reading.figure.number) === draft.value) return true;
  if (draft.unit === undefined || typeof reading.value !== "number") return false;
  const value = canonical(
    { ...draft, quantity: reading.quantity },
    draft.value,
    note.context.units,
  );
  return Math.abs(value - reading.value) < Math.abs(reading.value) * 1e-6;
}

/** "sixty eight not eighty six", "not 238 218": the first is right, the second was wrong. */
function notThat(note: Note, drafts: readonly Draft[]): Draft | undefined {
  const [first, second] = drafts;
  if (first === undefined || second === undefined || drafts.length !== 2) return undefined;
  const ahead = note.items[first.index - 1]?.text === "not";
  const [right, wrong] = ahead ? [second, first] : [first, second];
  const middle = note.items.slice(first.index + 1, second.index);
  if (!ahead && !middle.some((item) => item.text === "not")) return undefined;
  if (middle.length > 2) return undefined;
  const old = note.context.readings.find((reading) => sameFigure(wrong, reading, note));
  if (old === undefined) return undefined;
  wrong.gone = true;
  const item = note.items[wrong.index];
  if (item !== undefined) item.owner = "<value> not <value>";
  right.before = [...right.before, wrong.index];
  adopt(right, old);
  return right;
}

/** Values that replace earlier ones of the job take over what was said of those. */
export function correct(note: Note, drafts: readonly Draft[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  if (note.context.readings.length === 0 || list.length === 0 || list.length > 6) return;
  if (notThat(note, list) !== undefined) return;
  if (!announces(note, list)) return;
  for (const draft of list) {
    if (draft.question !== undefined) continue;
    const old = target(note, draft);
    // "no, amps are fine at 13.9 14.1": a quantity of its own, and what follows goes on with it
    if (old === undefined && (draft.named !== undefined || draft.unit !== undefined)) return;
    if (old !== undefined) adopt(draft, old);
  }
}
