import type { Span, Understood } from "../model.ts";
import type { Context } from "./context.ts";
import { leftOver } from "./cover.ts";
import { itemKind } from "./item.ts";
import { itemsOf } from "./items.ts";
import { measure } from "./measure.ts";
import type { Note } from "./note.ts";
import { plain } from "./plain.ts";
import { asides, remarks } from "./rules/list.ts";
import { scan } from "./scan.ts";

/** Points of the job's last readings: "one to three" means legs where legs were measured. */
function familyOf(context: Context): string {
  const last = context.readings[context.readings.length - 1]?.points?.[0];
  if (last === undefined) return "";
  if (/^L\d/.test(last)) return "L";
  if (/^T\d/.test(last)) return "T";
  return "";
}

function begin(text: string, context: Context): Note {
  const even = plain(text);
  const tokens = scan(even);
  const items = itemsOf({ tokens, typed: text, items: [], family: familyOf(context), pairs: true });
  return {
    text,
    plain: even,
    items,
    context,
    statements: [],
    readings: [],
    ask: [],
    unread: [],
    trace: [],
    measuredAt: undefined,
    open: undefined,
  };
}

/** Numbers that nothing took stay as written. */
function loose(note: Note): void {
  const taken: Span[] = [...note.unread];
  for (const reading of note.readings) taken.push(...reading.spans);
  for (const statement of note.statements) taken.push(...statement.spans);
  const marks = new Uint8Array(note.text.length + 1);
  for (const [from, to] of taken) marks.fill(1, from, to);
  for (const item of note.items) {
    if (item.kind !== itemKind.number && item.kind !== itemKind.code) continue;
    if (marks[item.from] !== 1) note.unread.push([item.from, item.to]);
  }
}

function finish(note: Note): Understood {
  loose(note);
  const unread = [...note.unread].sort((a, b) => a[0] - b[0]);
  const spans: Span[] = [...unread];
  for (const reading of note.readings) spans.push(...reading.spans);
  for (const statement of note.statements) spans.push(...statement.spans);
  return {
    readings: note.readings,
    statements: note.statements,
    unread: unread.map(([from, to]) => note.text.slice(from, to)),
    unread_spans: unread,
    ask: note.ask,
    skipped: leftOver(spans, note.text.length),
    ...(note.open === undefined || note.ask.length === 0 ? {} : { open: note.open }),
  };
}

/** Reads one message. Never throws, whatever the text; time grows linearly with its length. */
export function read(text: string, context: Context): Understood {
  const note = begin(text, context);
  for (const rule of asides) rule.apply(note);
  measure(note);
  for (const rule of remarks) rule.apply(note);
  return finish(note);
}
