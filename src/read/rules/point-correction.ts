import type { Named, Reading } from "../../model.ts";
import type { QuantityName } from "../../quantities/list.ts";
import { type Item, itemKind } from "../item.ts";
import { quantityOf, unitCalled } from "../kinds.ts";
import type { Label } from "../label.ts";
import type { Note, Rule } from "../note.ts";
import { valueAs } from "../value-as.ts";
import { role } from "../word.ts";

function wrongOne(note: Note, wrong: string | undefined): Reading | undefined {
  const { readings } = note.context;
  if (wrong === undefined) return readings[readings.length - 1];
  return [...readings]
    .reverse()
    .find(
      (reading) =>
        reading.points?.[0] === wrong || reading.subject === wrong || reading.at === wrong,
    );
}

/** "fan 4 not 3": the number of the wrong one, without its noun. */
function shortWrong(note: Note): Item | undefined {
  const at = note.items.findIndex((item) => item.text === "not");
  const number = note.items[at + 1];
  if (at < 1 || number?.kind !== itemKind.number || number.unit !== undefined) return undefined;
  if (!Number.isInteger(number.value) || number.value > 40) return undefined;
  return note.items
    .slice(0, at)
    .some(
      (item) =>
        item.kind === itemKind.subject ||
        (item.kind === itemKind.points && item.points?.length === 1),
    )
    ? number
    : undefined;
}

/** At which points or place and of which machine a value was read, as far as it was said. */
function nameOf({ points, at, subject }: Reading): Named {
  return {
    ...(points === undefined ? {} : { points }),
    ...(at === undefined ? {} : { at }),
    ...(subject === undefined ? {} : { subject }),
  };
}

/** A correction that the whole message says. */
function put(note: Note, now: Reading): void {
  const end = note.text.trimEnd().length;
  note.readings.push({
    ...now,
    corrects: true,
    said: note.text.slice(0, end),
    spans: [[0, end]],
    rule: pointCorrections.name,
  });
}

/** "had lead 1 and lead 2 backwards": each has the other's value. */
function swapped(note: Note): boolean {
  const { items, context } = note;
  if (
    !items.some(
      (item) =>
        /^(?:backwards|backward|swapped|flipped|switched|crossed|reversed|mixed)$/.test(
          item.text,
        ) ||
        (item === items[0] && /^(?:swap|switch|flip)$/.test(item.text)),
    )
  )
    return false;
  const names = items.flatMap((item) =>
    item.kind === itemKind.points
      ? (item.points ?? []).map((points) => points[0])
      : item.kind === itemKind.subject && (item.roles & role.clock) === 0
        ? [item.subject]
        : item.label?.place !== undefined
          ? [item.label.place]
          : [],
  );
  const [first, second] = names;
  if (names.length !== 2 || items.some((item) => item.kind === itemKind.number)) return false;
  const [a, b] = [wrongOne(note, first), wrongOne(note, second)];
  if (a === undefined || b === undefined || context.readings.length < 2) return false;
  if (a.quantity !== b.quantity) return false;
  for (const [from, to] of [
    [b, a],
    [a, b],
  ] as const)
    put(note, { ...from, ...nameOf(to) });
  // "backwards" tells of the names, no motor that turns so
  for (const item of items) {
    item.owner = pointCorrections.name;
    item.signs = undefined;
  }
  return true;
}

/** "that was comp 2", "I meant lead 3": said of what stands just before, and nothing else. */
const meant =
  /^(?:(?:sorry|oops|actually|wait|no),? )*(?:(?:that|those|it|these)(?:s|'s| was| were| is| are| should be| shouldve been) |i meant |meant |make (?:that|it) |should(?:ve| have)? (?:be|been|say) )(?!it for\b|all for\b|done\b)/;

/** "swap those", "other way around": two figures in each other's place, without their names. */
const exchanged =
  /^(?:swap|switch|flip) (?:those|them|these|em|the two|both)\b|^(?:the )?other way a?round\b/;

/** What is to be put right can't be told: better asked than passed over. */
function askAgain(note: Note): void {
  const [first] = note.items;
  const named = note.items.some(
    (item) => item.label?.quantity !== undefined || item.label?.place !== undefined,
  );
  const short = note.items.length <= 6 && note.ask.length === 0;
  const loose = exchanged.test(note.plain) || (meant.test(note.plain) && named);
  if (first === undefined || !short || !loose || note.holds.mark) return;
  if (note.readings.length > 0 || (named && note.holds.signs)) return;
  note.ask.push("What was wrong? Say the right reading whole, please.");
}

/** The value of `old` under another name; what it was filed under is told with it. */
function renamed(note: Note, old: Reading, now: Reading): void {
  const quantity = now.quantity === old.quantity ? {} : { quantity: old.quantity };
  put(note, { ...now, instead: { ...quantity, ...nameOf(old) } });
}

/** "those were comp 2": all that the last message read of the machine that it was not. */
function sameMachine(note: Note, old: Reading): readonly Reading[] {
  const { readings, latest } = note.context;
  const last = readings.slice(-Math.max(1, latest));
  return last.includes(old) ? last.filter(({ subject }) => subject === old.subject) : [old];
}

function asQuantity(old: Reading, quantity: QuantityName): number | undefined {
  const unit = unitCalled(old.figure.unit);
  return unit === undefined ? undefined : valueAs(old, quantity, unit);
}

/** The same figure, of another quantity: degrees of superheat become degrees of a pipe by its unit's offset. */
function requantified(note: Note, old: Reading, quantity: QuantityName): void {
  const value = asQuantity(old, quantity);
  if (value !== undefined)
    renamed(note, old, { ...old, quantity, value, unit: quantityOf(quantity).unit });
}

/** "suction not head", "not superheat, subcool": the right name and, where it was said, the wrong one. */
function rightAndWrong(items: readonly Item[]): readonly (Label | undefined)[] {
  const not = items.findIndex(({ text }) => text === "not");
  const named = items.flatMap(({ label }, index) =>
    label?.place === undefined && label?.quantity === undefined ? [] : [{ label, index }],
  );
  const [first, second] = named;
  if (named.length > 2 || first === undefined) return [];
  if (not < 0) return second === undefined ? [first.label] : [];
  // "not suction" tells only what it was not
  if (second === undefined) return [];
  if (second.index < not || first.index === second.index) return [];
  return not < first.index ? [second.label, first.label] : [first.label, second.label];
}

function isCalled(old: Reading, wrong: Label | undefined): boolean {
  if (wrong === undefined) return true;
  return wrong.place === undefined ? wrong.quantity === old.quantity : wrong.place === old.at;
}

/** "head 342", then "make that suction"; "sh 12", then "that was sc": the only value that it can mean. */
function otherName(note: Note): boolean {
  const { items, context } = note;
  const [right, wrong] = rightAndWrong(items);
  if (right === undefined || items.length > 7 || note.holds.mark) return false;
  // "its low", "thats high" tell how it is
  const told = items.some(
    ({ text, label }) => label !== undefined && /^(?:low|lo|high|hi)$/.test(text),
  );
  if (told || /^(?:it'?s|it is|it was) /.test(note.plain)) return false;
  const last = context.readings.slice(-Math.max(1, context.latest));
  const like = last.filter(
    (one) => one.rating === undefined && isCalled(one, wrong) && fitsName(one, right),
  );
  const [old] = like;
  if (old === undefined || like.length > 1) return false;
  const { place, quantity } = right;
  if (place === undefined && quantity !== undefined) requantified(note, old, quantity);
  else if (place !== undefined) renamed(note, old, { ...old, at: place });
  for (const item of items) item.owner = pointCorrections.name;
  return true;
}

/** Can the value stand under that name: of its unit, and not under it already? */
function fitsName(old: Reading, { place, quantity, hint }: Label): boolean {
  if (place === undefined)
    return (
      quantity !== undefined &&
      quantity !== old.quantity &&
      old.at === undefined &&
      asQuantity(old, quantity) !== undefined
    );
  const like = quantity ?? hint ?? old.quantity;
  return old.at !== undefined && old.quantity === like && old.at !== place;
}

/** "that was lead three not lead two": the same value, of other points. */
export const pointCorrections: Rule = {
  name: "<points> not <points>",
  needs: "context",
  apply: (note) => {
    const { items, context } = note;
    if (context.readings.length === 0 || items.length > 14 || note.holds.undo) return;
    // "what was wrong with ahu-2" corrects nothing
    if (note.statements.some(({ kind }) => kind === "question")) return;
    if (swapped(note)) return;
    const short = shortWrong(note);
    if (
      items.some(
        (item) =>
          (item.kind === itemKind.number && item !== short) ||
          item.kind === itemKind.over ||
          item.kind === itemKind.same,
      )
    )
      return;
    const said = meant.test(note.plain) && items.length <= 6;
    if (!said && !items.some((item) => (item.roles & (role.correct | role.not)) !== 0)) {
      askAgain(note);
      return;
    }
    const named = items.filter(
      (item) =>
        (item.kind === itemKind.points && item.points?.length === 1) ||
        (item.kind === itemKind.subject && (item.roles & role.clock) === 0),
    );
    const [first, second] = named;
    if (first === undefined && otherName(note)) return;
    if (first === undefined) askAgain(note);
    if (
      first === undefined ||
      named.length > 2 ||
      (second !== undefined && second.kind !== first.kind)
    )
      return;
    const right = first.points?.[0] ?? (first.subject === undefined ? [] : [first.subject]);
    const wrong =
      second?.points?.[0]?.[0] ??
      second?.subject ??
      (short === undefined ? undefined : right[0]?.replace(/\d+$/, String(short.value)));
    const old = wrongOne(note, wrong);
    if (old === undefined) return;
    if (first.kind === itemKind.points) {
      const partner = old.points?.[1];
      const points =
        right.length === 1 && partner !== undefined ? [right[0] ?? "", partner] : right;
      renamed(note, old, { ...old, points });
    } else
      for (const one of sameMachine(note, old))
        renamed(note, one, { ...one, subject: right[0] ?? "" });
    for (const item of items) item.owner = pointCorrections.name;
  },
};
