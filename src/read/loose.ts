import type { Span } from "../model.ts";
import { type Item, itemKind } from "./item.ts";
import type { Note } from "./note.ts";

/** What readings, statements and unread figures take of the message, in its order. */
export function spansOf(note: Note): Span[] {
  const spans: Span[] = [...note.unread];
  for (const reading of note.readings) for (const span of reading.spans) spans.push(span);
  for (const statement of note.statements) for (const span of statement.spans) spans.push(span);
  return spans.sort((a, b) => a[0] - b[0]);
}

function hasDigit(text: string, item: Item): boolean {
  for (let i = item.from; i < item.to; i++) {
    const code = text.charCodeAt(i);
    if (code >= 48 && code <= 57) return true;
  }
  return false;
}

/** "L2", "comp 1", "N2": a name with a number in it that no reading or statement speaks of. */
function nameOnly(note: Note, item: Item): void {
  note.statements.push({
    kind: "note",
    about: "name",
    said: note.text.slice(item.from, item.to),
    spans: [[item.from, item.to]],
    rule: "<name>",
  });
}

/** Numbers that nothing took stay as written. */
export function loose(note: Note): void {
  const spans = spansOf(note);
  let at = 0;
  let reach = 0;
  for (const item of note.items) {
    const bare = item.kind === itemKind.number || item.kind === itemKind.code;
    if (!bare && !hasDigit(note.text, item)) continue;
    for (let span = spans[at]; span !== undefined && span[0] <= item.from; span = spans[++at])
      reach = Math.max(reach, span[1]);
    if (reach > item.from) continue;
    if (bare) note.unread.push([item.from, item.to]);
    else nameOnly(note, item);
  }
}
