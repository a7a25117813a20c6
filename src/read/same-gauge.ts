import { copyReading } from "./copy-value.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import type { Note } from "./note.ts";
import { role } from "./word.ts";

/** "suction 26 same head": does the name behind "same" say what is the same, with nothing else told of it? */
export function namesGauge(items: readonly Item[], i: number): boolean {
  const [named, next] = items.slice(i + 1, i + 3);
  const { place, quantity } = named?.label ?? {};
  const gauge = place !== undefined || quantity === "superheat" || quantity === "subcooling";
  if (named?.kind !== itemKind.label || !gauge) return false;
  // "640 at the same suction": how the test was
  const led = items.slice(Math.max(0, i - 2), i);
  if (led.some(({ roles }) => (roles & role.preposition) !== 0)) return false;
  if (named.label?.rating !== undefined || named.label?.thing !== undefined) return false;
  return next === undefined || next.kind === itemKind.same || /^(?:and|,|\.)$/.test(next.text);
}

/** It reads what was read there last; of the machine that this message speaks of. */
export function ofSameGauge(note: Note, draft: Draft, left: Draft | undefined): boolean {
  if (!namesGauge(note.items, draft.index)) return false;
  const label = note.items[draft.index + 1]?.label;
  const like = note.context.readings.findLast(
    ({ at, quantity, rating }) =>
      rating === undefined &&
      (label?.quantity === undefined || quantity === label.quantity) &&
      (label?.place === undefined || at === label.place) &&
      (label?.hint === undefined || quantity === label.hint),
  );
  draft.gone = like === undefined;
  if (like === undefined) return true;
  draft.place = like.at;
  draft.subject ??= left?.subject;
  draft.behind = [draft.index + 1];
  copyReading(note, draft, like);
  return true;
}
