import type { Between, Draft } from "./draft.ts";
import { alive, inherit, sameDimension, unlabelled } from "./inherit.ts";
import type { Item } from "./item.ts";
import { between } from "./relate.ts";
import { takenBack } from "./taken-back.ts";
import { role } from "./word.ts";

/** "head 338, 338 psig sorry": said again with the word of the correction behind it. */
function saidAgain(items: readonly Item[], left: Draft, right: Draft): boolean {
  const joint = items[left.index + 1];
  const word = items[right.index + 1];
  if (joint?.text !== "," || right.index !== left.index + 2) return false;
  if (word === undefined || (word.roles & role.correct) === 0 || word.text === "not") return false;
  return items[right.index + 2] === undefined && left.unit === undefined;
}

function corrected(items: readonly Item[], left: Draft, right: Draft, gap: Between): boolean {
  const doubted = items[left.index + 1]?.text === "?";
  if (!gap.bare || (gap.strong && !doubted) || gap.empty) return false;
  const middle = items.slice(left.index + 1, right.index);
  const words = middle.filter(({ text }) => text !== ",");
  if (words.length === 1 && words[0]?.text === "not") return false;
  if (middle.some((item) => item.text === "that" && item.to - item.from > 5)) return false;
  const no = middle.some((item) => item.text === "no");
  if (!no && (gap.roles & role.correct) === 0) return false;
  return sameDimension(left, right);
}

/** "four ten no four fifteen": only the last stands. */
export function correctWithin(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = alive(drafts);
  list.forEach((right, order) => {
    const left = list[order - 1];
    if (left === undefined || left.gone) return;
    const back = sameDimension(left, right) && takenBack(items, left, right);
    if (
      !back &&
      !corrected(items, left, right, between(items, left, right)) &&
      !(sameDimension(left, right) && saidAgain(items, left, right))
    )
      return;
    if (!back && !unlabelled(items, left, right)) return;
    // "amps 61 rated 68 no make that 58": the one or the other
    const first = list.slice(0, order - 1).find((one) => sameDimension(one, right));
    const both = first !== undefined && first.rating === undefined && left.rating !== undefined;
    if (both && right.rating === undefined) right.question = "choice";
    inherit(left, right);
    right.rating ??= left.rating;
    right.plate = right.plate || left.plate;
    right.before = [...left.before, left.index, ...left.behind, ...right.before];
    left.gone = true;
    const item = items[left.index];
    if (item !== undefined) item.owner = "<value> no <value>";
  });
}
