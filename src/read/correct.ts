import type { Reading } from "../model.ts";
import { saysSorry, target } from "./correct-target.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { quantityOf, unitCalled } from "./kinds.ts";
import { canonical } from "./make.ts";
import type { Note } from "./note.ts";
import { namesThing, placeInRow, rowTold } from "./nth-told.ts";
import { ofOneFigure } from "./one-figure.ts";
import { toldWas } from "./told-was.ts";
import { role } from "./word.ts";

/** Does the message say that it replaces something: "no", "make that", "typo"? */
function announces(note: Note, drafts: readonly Draft[]): boolean {
  const first = note.items.find(
    (item) => item.kind === itemKind.word || item.kind === itemKind.sign,
  );
  const start = note.items[0];
  if (start?.text === "no" && drafts[0]?.zero !== true) return true;
  if (start?.text === "*") return true;
  // "redo w is 190"
  if (/^redo(?:ne)?$/.test(start?.text ?? "") && drafts.length === 1 && isNamed(note.items[1]))
    return true;
  // "nvm L2 is fine 12.4"
  if (/^(?:nvm|nevermind)$/.test(start?.text ?? "") && drafts.length === 1) return true;
  // "make supply 57"
  const named = note.items[note.items[1]?.text === "the" ? 2 : 1];
  if (/^(?:make|change)$/.test(start?.text ?? "") && isNamed(named)) return true;
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
  if (toldBefore(note) || othersStand(note) || toldWas(note, drafts)) return true;
  return note.items.some(
    (item) =>
      (item.roles & role.correct) !== 0 &&
      !(item.text === "that" && item !== start) &&
      item.text !== "not" &&
      item.text !== "wait" &&
      item.text !== "rather" &&
      item.text !== "no" &&
      item.text !== "hold" &&
      item.text !== "actually" &&
      item.owner === undefined,
  );
}

function isNamed(item: Item | undefined): boolean {
  return (
    item?.kind === itemKind.points || item?.kind === itemKind.subject || item?.label !== undefined
  );
}

/** "no 1.2" behind "2.1 pounds or ounces?": of what was asked about just now, which stays to be told. */
function mendsAsked(note: Note, list: readonly Draft[]): boolean {
  const { open } = note.context;
  const [only] = list;
  const [asked] = open?.drafts ?? [];
  if (open === undefined || only === undefined || asked === undefined) return false;
  if (list.length > 1 || open.drafts.length > 1 || note.items.length > 4) return false;
  const { points, place, subject, hint, named, unit } = only;
  if ((points ?? place ?? subject ?? hint ?? named) !== undefined) return false;
  // "no 1.2 lb" tells the unit too
  const fits = asked.quantity !== undefined && unit !== undefined;
  if (
    unit !== undefined &&
    !(fits && quantityOf(asked.quantity).dimensions.includes(unit.dimension))
  )
    return false;
  if (unit === undefined || open.missing !== "unit") only.question = open.missing;
  only.quantity = asked.quantity;
  only.action = asked.action;
  only.points = asked.points === undefined ? undefined : [asked.points];
  only.place = asked.at;
  only.subject = asked.subject;
  return true;
}

const saidFirst =
  /\bi (?:said|put|wrote|typed)(?: down)? (.*?)\b(?:it'?s|it is|it was|that'?s|should(?: have|'ve)? (?:be|been|read)|i meant?|make (?:it|that)) /;

/** "I said seven bar it's seventeen": a figure before the one that holds. */
function figureSaid(note: Note): boolean {
  const match = saidFirst.exec(note.plain);
  const from = match === null ? 0 : note.plain.indexOf(match[1] ?? "", match.index);
  const to = from + (match?.[1]?.length ?? 0);
  return note.items.some(
    (item) => item.kind === itemKind.number && item.from >= from && item.to <= to,
  );
}

/** "115 on the suction, the head one is still right": the rest of what was told stands, so this does not. */
function othersStand(note: Note): boolean {
  if (note.context.readings.length === 0) return false;
  return /\b(?:is|are|was|were) (?:still |all )*(?:right|correct)[.!]?$/.test(note.plain.trim());
}

/** "I told you sixty four, it's actually seventy four" */
function toldBefore(note: Note): boolean {
  if (figureSaid(note)) return true;
  const told = note.items.findIndex((item) => /^(?:told|gave|sent|texted)$/.test(item.text));
  return told >= 0 && note.items.slice(told).some((item) => item.text === "actually");
}

/** The correction is of what that reading is of. */
export function adopt(draft: Draft, reading: Reading): void {
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

/** "should read 64 not 46", "should be 18 not 81": the figure was taken down wrong, not the machine. */
function readWrong(note: Note, right: Draft, wrong: Draft): boolean {
  const sorted = (value: number): string => [...String(value)].sort().join("");
  if (sorted(right.value) === sorted(wrong.value)) return true;
  return note.items.some(({ text }) => /^(?:read|say|said|put|wrote|typed)$/.test(text));
}

/** "sixty eight not eighty six", "not 238 218": the first is right, the second was wrong. */
function notThat(note: Note, drafts: readonly Draft[]): Draft | undefined {
  const [first, second] = drafts;
  if (first === undefined || second === undefined || drafts.length !== 2) return undefined;
  const told = toldBefore(note);
  const ahead = told || note.items[first.index - 1]?.text === "not";
  const [right, wrong] = ahead ? [second, first] : [first, second];
  const middle = note.items.slice(first.index + 1, second.index);
  if (!ahead && !middle.some((item) => item.text === "not")) return undefined;
  if (middle.length > (told ? 4 : 2)) return undefined;
  const old = note.context.readings.find((reading) => sameFigure(wrong, reading, note));
  if (old === undefined) {
    // "8.8 not 88" behind an 88 that was asked about: of that, whatever else was read
    const asked = note.context.open?.drafts.some(({ number }) => number === wrong.value) === true;
    if (asked && right.quantity === undefined) right.question = "quantity";
    return undefined;
  }
  wrong.gone = true;
  const item = note.items[wrong.index];
  if (item !== undefined) item.owner = "<value> not <value>";
  right.before = [...right.before, wrong.index];
  const wish = right.rating === "expected" && !readWrong(note, right, wrong);
  if (wish) return undefined;
  adopt(right, old);
  if (right.rating === "expected") right.rating = undefined;
  return right;
}

/** A value that is said to be wrong before and fits nothing that was read is asked about, never filed. */
function asks(note: Note, draft: Draft): void {
  const bare =
    draft.points === undefined &&
    draft.place === undefined &&
    draft.subject === undefined &&
    draft.hint === undefined &&
    draft.named === undefined;
  if (bare && draft.unit === undefined && note.items.length <= 5) draft.question = "quantity";
}

const itWas =
  /^(?:(?:no|sorry|oops|actually|wait|oh)[, ]+)*(?:it|that|that one|the last(?: one)?) (?:was|were|should be|should have been|should've been|is really) (?:really |actually |more like )?$/;

/** "it was 6 lb 1" behind "6 lb 2 oz in": of the one figure that was told last, and near it. */
function ofTheLast(note: Note, list: readonly Draft[]): boolean {
  const { items, context } = note;
  const [only, ...others] = list;
  const number = items[only?.index ?? -1];
  if (only === undefined || number === undefined || others.length > 0) return false;
  if (!itWas.test(note.plain.slice(0, number.from)) || only.points !== undefined) return false;
  const told = context.readings.slice(-context.latest).filter(({ rating }) => rating === undefined);
  const [old] = told;
  if (old === undefined || told.length > 1 || typeof old.value !== "number") return false;
  const plain = items.slice(only.index + 1).every(({ roles }) => (roles & role.earlier) === 0);
  const alike =
    only.unit === undefined || quantityOf(old.quantity).dimensions.includes(only.unit.dimension);
  if (!plain || !alike || only.unit === undefined) return false;
  const now = canonical({ ...only, quantity: old.quantity }, only.value, context.units);
  if (!(now > old.value * 0.7 && now < old.value * 1.4)) return false;
  adopt(only, old);
  return true;
}

/** "the second one was 0.92 as well": of the row told last, by its place there. */
function ofTheRow(note: Note, list: readonly Draft[]): boolean {
  const { items, context } = note;
  const [only, ...others] = list;
  const number = items[only?.index ?? -1];
  if (only === undefined || number === undefined || others.length > 0) return false;
  const row = rowTold(context, /\bwindings? /.test(note.plain.slice(0, number.from)));
  const nth = placeInRow(note, row, { points: only.points?.[0], span: [number.from, number.to] });
  const old = row[(nth ?? 0) - 1];
  if (nth === undefined || old === undefined) return false;
  // "that last winding was 0.71" behind a row of diodes
  if (/\bwinding\b/.test(note.plain) && old.quantity === "diode_drop") return false;
  adopt(only, old);
  if (old.points === undefined) only.nth = nth;
  return true;
}

function severalKinds(note: Note): boolean {
  const { readings, latest } = note.context;
  return new Set(readings.slice(-Math.max(1, latest)).map((one) => one.quantity)).size > 1;
}

/** "no, 3", "no, 6 oz" after "2 lb 4 oz": of the pounds or the ounces, or all of it? */
function twoUnits(draft: Draft, old: Reading): boolean {
  const whole = draft.unit === undefined || draft.unit.figure === "oz" || draft.unit.figure === "g";
  return (
    whole && !draft.same && !/^[-\d.]+$/.test(old.figure.number) && Number.isInteger(draft.value)
  );
}

/** Values that replace earlier ones of the job take over what was said of those. */
export function correct(note: Note, drafts: readonly Draft[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  if (note.context.readings.length === 0 || list.length === 0 || list.length > 6) return;
  // what was taken back is gone, what follows is new
  if (note.statements.some(({ kind }) => kind === "undo")) return;
  if (notThat(note, list) !== undefined || ofTheRow(note, list) || ofTheLast(note, list)) return;
  const mends = mendsDoubt(note, list);
  const actually = /^act[ua]+ll?y$/.test(note.items[0]?.text ?? "") && !note.items.some(isNow);
  if (!mends && !actually && !announces(note, list)) return;
  if (mendsAsked(note, list)) return;
  for (const draft of list) {
    if (namesThing(note, draft.index)) draft.question = "quantity";
    if (draft.question !== undefined) continue;
    const old = target(draft, note.context);
    // "no, amps are fine at 13.9 14.1": a quantity of its own, and what follows goes on with it
    if (old === undefined && (draft.named !== undefined || draft.unit !== undefined)) return;
    if (old === "several") draft.question = severalKinds(note) ? "quantity" : "choice";
    else if (old !== undefined && twoUnits(draft, old)) {
      draft.question = draft.unit === undefined ? "unit" : "choice";
      draft.quantity = old.quantity;
      draft.action = old.action;
    } else if (old !== undefined) {
      const bare = draft.points === undefined;
      adopt(draft, old);
      if (draft.rating === "expected" && old.rating === undefined && saysSorry(note.plain))
        draft.rating = undefined;
      const all = ofOneFigure(note.context.readings, old);
      // said once for all three, mended once for all three
      if (bare && all.length > 1)
        draft.points = all.flatMap(({ points }) => (points ? [points] : []));
    } else asks(note, draft);
  }
}

function isNow(item: Item): boolean {
  return (item.roles & (role.now | role.change)) !== 0;
}

/** A bare number behind a reading that was doubted is the one that was meant. */
function mendsDoubt(note: Note, list: readonly Draft[]): boolean {
  const [only] = list;
  if (only === undefined || list.length > 1 || note.items.length > 3) return false;
  if (only.points !== undefined || only.subject !== undefined) return false;
  if (!note.context.readings.some((old) => old.doubtful === true)) return false;
  const numbers = note.items.filter((item) => item.kind === itemKind.number);
  const plain = note.items.every(
    (item) => item.kind === itemKind.number || item.kind === itemKind.sign || item.roles !== 0,
  );
  const old = numbers.length === 1 && plain ? target(only, note.context) : undefined;
  return old !== undefined && old !== "several" && old.doubtful === true;
}
