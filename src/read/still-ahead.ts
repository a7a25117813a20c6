import { type Item, wordsFrom } from "./item.ts";

const meanwhile =
  /(?<!\b(?:came|comes?|went|goes|trips|tripped) )\b(?:back|more|again|done|ready|there|update|finished|recheck|look)(?: (?:you|with you|it|them|at it))? in(?: about| like)?$|(?<!\b(?:came|comes?|went|goes|trips|tripped) )\bback$/;
/** "no defrost in 4 hrs": for how long nothing came, no time of what was measured. */
const lacks =
  /\b(?:no|without|not|hasnt|havent|didnt|never)(?: [a-z]+){1,4} (?:in|for)(?: about| over| like| the last)?$/;
const waits =
  /\b(?:give|gimme|need|needs|another|be)(?: (?:me|it|us|them|this))?(?: (?:about|another|like))?$/;

/** "more in a minute", "give it 10 min": what is still to come, not when it was read. */
export function isAhead(items: readonly Item[], index: number): boolean {
  const before = wordsFrom(items, index - 5, index);
  return meanwhile.test(before) || waits.test(before) || lacks.test(before);
}
