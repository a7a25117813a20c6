import type { Reading } from "../../model.ts";
import { itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { role } from "../word.ts";

function wrongOne(note: Note, wrong: string | undefined): Reading | undefined {
  const { readings } = note.context;
  if (wrong === undefined) return readings[readings.length - 1];
  return [...readings]
    .reverse()
    .find((reading) => reading.points?.[0] === wrong || reading.subject === wrong);
}

/** "that was lead three not lead two": the same value, of other points. */
export const pointCorrections: Rule = {
  name: "<points> not <points>",
  needs: "context",
  apply: (note) => {
    const { items, context } = note;
    if (context.readings.length === 0 || items.length > 14) return;
    if (
      items.some(
        (item) =>
          item.kind === itemKind.number ||
          item.kind === itemKind.over ||
          item.kind === itemKind.same,
      )
    )
      return;
    if (!items.some((item) => (item.roles & (role.correct | role.not)) !== 0)) return;
    const named = items.filter(
      (item) =>
        (item.kind === itemKind.points && item.points?.length === 1) ||
        (item.kind === itemKind.subject && (item.roles & role.clock) === 0),
    );
    const [first, second] = named;
    if (
      first === undefined ||
      named.length > 2 ||
      (second !== undefined && second.kind !== first.kind)
    )
      return;
    const right = first.points?.[0] ?? (first.subject === undefined ? [] : [first.subject]);
    const wrong = second?.points?.[0]?.[0] ?? second?.subject;
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
