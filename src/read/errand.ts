import { type Item, wordsFrom } from "./item.ts";
import type { Note } from "./note.ts";
import { errandWords } from "./words/errands.ts";

const errand = new RegExp(`^(?:${errandWords})\\b`);
const notNow =
  /\b(?:tomorrow|tmrw|later|tonight|yesterday|if|when|unless|might|should|need to|have to|got to|gotta|want to|wanna)\b/;

/** "leaving for the supply house", said of now. */
export function isErrand(note: Note, i: number): boolean {
  const item = note.items[i];
  return item !== undefined && errand.test(note.plain.slice(item.from)) && !notNow.test(note.plain);
}

/** Whether the words are those of an errand, whenever it is. */
export function isErrandWord(note: Note, i: number): boolean {
  const item = note.items[i];
  return item !== undefined && errand.test(note.plain.slice(item.from));
}

/** "going to lunch, back at 1", "gone till 2": when he comes back, not when he left. */
export function isReturn(items: readonly Item[], i: number): boolean {
  const before = wordsFrom(items, i - 4, i);
  return returns.test(before);
}

const returns =
  /\b(?:back(?: (?:tomorrow|tmrw|tonight|later|[a-z]+day|mon|tues?|wed|thurs?|fri|sat|sun))?(?: (?:in|at|around|about|by|before|after|@|like))?(?: (?:about|around|like))?|till?|until)$/;

/** "off to the left": a side, no place to go to. */
export function isSide(note: Note, i: number): boolean {
  const item = note.items[i];
  return (
    item !== undefined &&
    /^(?:just |over )?off to (?:the |my |your |its |one )?(?:very |far )?(?:left|right|side|front|back|rear|top|bottom)\b/.test(
      note.plain.slice(item.from),
    )
  );
}
