import { isStrongBreak, isWeakBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import type { Note } from "../note.ts";

/** What stands in front of an arrival and says nothing: "alright, I'm at the clinic". */
const openers =
  /^(?:ok|okay|alright|aight|hey|hi|hello|so|yep|yeah|yes|well|morning|good|evening|afternoon|all|and|now|finally|just|got it|copy)$/;
const who = /^(?:im|i'm|i|we|were|we're|am|are|finally|now|just|back)$/;
const filler = /^(?:the|that|this|my|our)$/;
const closes = /^(?:now|already|since|here|w|with|for|and|again)$/;
/** Where one stands at a machine, or no place at all: "at the moment", "im at a loss". */
const noPlace =
  /^(?:moment|minute|point|time|end|start|startup|beginning|top|bottom|side|idle|rest|full|half|low|high|max|min|minimum|maximum|least|first|last|once|all|night|noon|midnight|lunch|home|it|a|an|about|around|approximately|roughly|over|under|only|least|zero|one|two|three|speed|load|capacity|unit|machine|equipment|outdoor|indoor|condenser|compressor|controller|shop|supply|truck|van|store|warehouse|depot|disconnect|panel|breaker|board|coil|switch|thermostat|stat|stage|step|setpoint|target|pressure|capped|counter)$/;

function startsWith(items: readonly Item[], from: number, words: RegExp): number {
  let at = from;
  while (at < items.length && (words.test(items[at]?.text ?? "") || isWeakBreak(items[at] as Item)))
    at++;
  return at;
}

/** Where "at" of "at the hotel" and of "alright we're at the hotel" stands; -1 for none. */
function atOf(items: readonly Item[]): { at: number; spoken: boolean } {
  const bare = startsWith(items, 0, openers);
  if (items[bare]?.text === "at") return { at: bare, spoken: false };
  const at = startsWith(items, bare, who);
  return { at: at > bare && items[at]?.text === "at" ? at : -1, spoken: true };
}

/**
 * "at the hotel", "alright I'm at Fennel Court, rooms 4 to 8 out": a place that nothing here knows, said
 * first. Where the word "at" stands; -1 for none. Without "I'm" it has to be the whole of a short clause.
 */
export function atPlace({ items, holds, context }: Note): number {
  const { at, spoken } = atOf(items);
  if (at < 0 || holds.mark || (!spoken && context.readings.length > 0)) return -1;
  let from = at + 1;
  while (filler.test(items[from]?.text ?? "")) from++;
  let to = from;
  while (
    to < items.length &&
    items[to]?.kind === itemKind.word &&
    !closes.test(items[to]?.text ?? "")
  )
    to++;
  const name = items.slice(from, to);
  const next = items[to];
  const ends =
    next === undefined ||
    isStrongBreak(next) ||
    isWeakBreak(next) ||
    closes.test(next.text) ||
    (next.kind === itemKind.number && next.colon === true);
  if (!ends || name.length === 0 || name.length > (spoken ? 4 : 2)) return -1;
  const plain = name.every(
    ({ label, signs, text }) => label === undefined && signs === undefined && !noPlace.test(text),
  );
  return plain ? at : -1;
}
