import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import type { Note } from "./note.ts";

const moreWords = /^(?:more|another|extra|plus)$/;

/** Is the number itself one of more of the same: "+2.3", "another 2.3", "2.3 more"? */
function ofMore(note: Note, items: readonly Item[], draft: Draft): boolean {
  const item = items[draft.index];
  if (item === undefined) return false;
  if (note.plain.charAt(item.from) === "+") return true;
  return [items[draft.index - 1], items[draft.index + 1]].some((one) =>
    moreWords.test(one?.text ?? ""),
  );
}

/** "got six pounds fourteen", "came to 4 lb total": words that say no more than the weight. */
function isSmallTalk({ kind, text, label }: Item): boolean {
  if (kind === itemKind.number || kind === itemKind.sign) return true;
  if (label !== undefined && label.rating !== undefined) return false;
  return /^(?:got|came|comes|to|total|in|all|at|about|uh|um|thats|its|so|we|i|ended|up|with|even|it|was|is|a|ok|okay|far)$/.test(
    text,
  );
}

/** Says nothing else what was measured? */
function bare({ unit, points, place, named, hint, subject, thing }: Draft): boolean {
  const said = points ?? place ?? named ?? hint ?? subject ?? thing;
  return unit === undefined && said === undefined;
}

const soFar = /\b(?:total|so far|in all|all up|now at|up to)\b/;

/** "10.5 total", "in 10.2 so far" behind 9.6 kg charged: the scale again, where its scale has one unit alone. */
function weighedAgain({ plain, context }: Note, draft: Draft): void {
  const last = context.readings[context.readings.length - 1];
  if (last?.quantity !== "mass" || last.action === undefined || last.figure.unit !== "kg") return;
  if (!bare(draft) || draft.quantity !== undefined || !soFar.test(plain)) return;
  draft.unit = unitCalled("kg");
  draft.assumedUnit = true;
}

/** "2 lb more", "+2.3" behind "charged 4 lb": what was being done goes on. */
export function carryAction(note: Note, drafts: readonly Draft[]): void {
  const { items, context } = note;
  const told = drafts.some(({ action }) => action !== undefined);
  if (context.action === undefined && !told) return;
  // a weight alone goes on with what is in hand
  const goesOn =
    items.some(({ text }) => moreWords.test(text)) || items.every((item) => isSmallTalk(item));
  for (const draft of drafts) {
    if (goesOn) weighedAgain(note, draft);
    if (draft.gone || draft.rating !== undefined) continue;
    const own = ofMore(note, items, draft);
    // "500 g more": no gigohms while gas is weighed
    const grams = draft.unit?.figure === "gigohm" && draft.letter === "g" && own;
    const mass = grams || (draft.unit?.dimension === "mass" && (goesOn || own));
    if (!mass && !(own && bare(draft))) continue;
    // "9 lb in, then 4 oz more": the same message tells it nearer
    const near = drafts.findLast(({ action, index }) => action && index < draft.index);
    draft.action ??= near?.action ?? context.action;
  }
}
