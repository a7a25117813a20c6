import type { Reading } from "../../model.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { role } from "../word.ts";

function wrongOne(note: Note, wrong: string | undefined): Reading | undefined {
  const { readings } = note.context;
  if (wrong === undefined) return readings[readings.length - 1];
  return [...readings]
    .reverse()
    .find((reading) => reading.points?.[0] === wrong || reading.subject === wrong);
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

/** "had lead 1 and lead 2 backwards": each has the other's value. */
function swapped(note: Note): boolean {
  const { items, context } = note;
  if (
    !items.some((item) =>
      /^(?:backwards|backward|swapped|flipped|switched|crossed|reversed|mixed)$/.test(item.text),
    )
  )
    return false;
  const names = items.flatMap((item) =>
    item.kind === itemKind.points
      ? (item.points ?? []).map((points) => points[0])
      : item.kind === itemKind.subject && (item.roles & role.clock) === 0
        ? [item.subject]
        : [],
  );
  const [first, second] = names;
  if (names.length !== 2 || items.some((item) => item.kind === itemKind.number)) return false;
  const [a, b] = [wrongOne(note, first), wrongOne(note, second)];
  if (a === undefined || b === undefined || context.readings.length < 2) return false;
  if (a.quantity !== b.quantity) return false;
  const end = note.text.trimEnd().length;
  for (const [from, to] of [
    [b, a],
    [a, b],
  ] as const)
    note.readings.push({
      ...from,
      ...(to.points === undefined ? {} : { points: to.points }),
      ...(to.subject === undefined ? {} : { subject: to.subject }),
      corrects: true,
      said: note.text.slice(0, end),
      spans: [[0, end]],
      rule: pointCorrections.name,
    });
  for (const item of items) item.owner = pointCorrections.name;
  return true;
}

/** "that was comp 2", "I meant lead 3": said of what stands just before, and nothing else. */
const meant =
  /^(?:sorry,? |oops,? )?(?:(?:that|those|it|these)(?:s|'s| was| were| is| are| should be| shouldve been) |i meant |meant |should(?:ve| have)? (?:be|been|say) )/;

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

/** "that was lead three not lead two": the same value, of other points. */
export const pointCorrections: Rule = {
  name: "<points> not <points>",
  needs: "context",
  apply: (note) => {
    const { items, context } = note;
    if (context.readings.length === 0 || items.length > 14 || note.holds.undo) return;
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
    const partner = old.points?.[1];
    const points = right.length === 1 && partner !== undefined ? [right[0] ?? "", partner] : right;
    const end = note.text.trimEnd().length;
    note.readings.push({
      ...old,
      ...(first.kind === itemKind.points ? { points } : { subject: right[0] ?? "" }),
      corrects: true,
      said: note.text.slice(0, end),
      spans: [[0, end]],
      rule: pointCorrections.name,
    });
    for (const item of items) item.owner = pointCorrections.name;
  },
};
