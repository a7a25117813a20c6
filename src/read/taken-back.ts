import { isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { role } from "./word.ts";

const joints = role.correct | role.is | role.article | role.only;

/** "no" right before a figure takes back only a like one: "no 24 volts" is a lack. */
function takesBack(item: Item | undefined, left: Draft, right: Draft): boolean {
  if (item === undefined) return false;
  const alone = item.to - item.from === 2;
  if (item.text === "no" && alone) {
    const over = right.over || left.over;
    const like = over || (right.value > left.value / 2 && right.value < left.value * 2);
    return !right.ownUnit && like;
  }
  return (item.roles & role.correct) !== 0 && !/^(?:not|that|rather)$/.test(item.text);
}

/** "110 suct? no thats 101", "110 suct. sorry 101": one sentence ends, and the next takes it back. */
function doubts(items: readonly Item[], from: number): boolean {
  const [mark, word] = [items[from - 1], items[from]];
  if (mark?.text === "?") return true;
  if (!/^[.!…]$/.test(mark?.text ?? "")) return false;
  // "26 at R. no 24 at W": a lack of its own; "118. no, 124" and "118... no 124" are none
  const hesitates = mark?.text === "…" || /^[.…]$/.test(items[from - 2]?.text ?? "");
  return word?.text !== "no" || items[from + 1]?.text === "," || hesitates;
}

/**
 * "22 amps on L3, no wait, that's 24": between the two stands only what was said of the first, then
 * the words that take it back, and nothing of the second's own.
 */
export function takenBack(items: readonly Item[], left: Draft, right: Draft): boolean {
  let from = right.index;
  let told = false;
  while (from - 1 > left.index) {
    const item = items[from - 1];
    if (item === undefined || isStrongBreak(item) || item.owner !== undefined) break;
    const joint = (item.roles & joints) !== 0 || /^(?:that|thats|that's|no|[,-])$/.test(item.text);
    if (!joint || item.label !== undefined) break;
    told = told || takesBack(item, left, right);
    from--;
  }
  if (!told || from === left.index + 1) return false;
  while (from - 1 > left.index && doubts(items, from)) from--;
  return items
    .slice(left.index + 1, from)
    .every((item) => !isStrongBreak(item) && item.kind !== itemKind.over);
}
