import type { Reading, Relation } from "../model.ts";
import type { Draft } from "./draft.ts";
import { unitCalled } from "./kinds.ts";
import type { Note } from "./note.ts";

/** "over 550, lead 2 the same": a bound is repeated with its figure. */
function bound(note: Note, draft: Draft, relation: Relation | undefined): void {
  const item = note.items[draft.index];
  if (item !== undefined && relation !== undefined && relation !== "in") item.relation = relation;
}

/** The value that was read before, at the place of this one. */
export function copyReading(note: Note, draft: Draft, reading: Reading): void {
  bound(note, draft, reading.relation);
  draft.quantity = reading.quantity;
  draft.named = reading.quantity;
  draft.unit = unitCalled(reading.figure.unit);
  draft.over = reading.over_range === true;
  draft.value = Number(reading.figure.number);
  draft.testVoltage ??= undefined;
  draft.place ??= reading.at;
  draft.kind ??= reading.kind;
  if (reading.points?.[1] === "ground") draft.grounded = true;
  if (draft.subject === undefined && draft.points !== undefined) draft.subject = reading.subject;
}

/** The value that stands in the same message. */
export function copyDraft(note: Note, draft: Draft, from: Draft): void {
  bound(note, draft, note.items[from.index]?.relation);
  draft.named = from.named;
  draft.unit = from.unit;
  draft.over = from.over;
  draft.value = from.value;
  draft.high = from.high;
  draft.testVoltage ??= from.testVoltage;
  draft.temperature ??= from.temperature;
  if (draft.subject === undefined && draft.points !== undefined) draft.subject = from.subject;
  draft.grounded = draft.grounded || from.grounded || from.points?.[0]?.[1] === "ground";
}
