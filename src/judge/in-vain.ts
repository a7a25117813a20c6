import { perScene, type Scene } from "./scene.ts";

const still =
  /\bstill\b.{0,12}\b(?:trips?|tripping|hums?|humming|won'?t|wont|does(?:n'?t| not)|did(?:n'?t| not)|not|no|faults?|fails?|dead|short cycl\w+|the same|same|out|locks|blows|pops)\b|\b(?:didn'?t|did not|doesn'?t) (?:help|fix|change)|\bsame (?:thing|problem|fault|code)\b|\b(?:replaced|changed|reset)(?: (?:it|them|that|the \w+))? (?:twice|again|(?:two|three|four|\d+) times)\b/;

/** Words, lower case, of something done that changed nothing. */
export function saysInVain(words: string): boolean {
  return still.test(words) || /\b(?:no change|nothing changed|no difference)\b/.test(words);
}

/** What was done changed nothing, as told. */
export const isInVain: (scene: Scene) => boolean = perScene(
  (scene) => scene.seen.some((one) => one.observation === "no_change") || still.test(scene.words),
);
