import { type Item, wordsFrom } from "../item.ts";

/** "thats it 1.75 hr", "good to go, 2 hrs 15": nothing else stands between it and the hours. */
export function sumsUp(before: readonly Item[]): boolean {
  const words = wordsFrom(before, before.length - 5, before.length);
  return /\b(?:thats it|that is it|thats all|good to go|all good|all buttoned up|buttoned up)(?: (?:,|\.|here|now|there|for|and|total|-))*$/.test(
    words,
  );
}
