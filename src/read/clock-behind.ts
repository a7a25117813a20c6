import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const clock = "at <hour>:<minute>";

/** Does the clock stand right behind the value, with or without "@"? */
function timed(items: readonly Item[], { index }: Draft, to: number): boolean {
  return items.slice(index + 1, Math.min(to, index + 4)).some(({ owner }) => owner === clock);
}

/** "150 psi n2 @ 8:15a, 150 @ 9:00a": the same gauge read at another time. */
export function clockBehind(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left?.unit === undefined || right.unit !== undefined || left.gone || right.gone) return;
    const said = right.place ?? right.named ?? right.hint ?? right.points ?? right.rating;
    if (said !== undefined || !timed(items, left, right.index)) return;
    if (!timed(items, right, items.length)) return;
    const far = right.value / left.value;
    if (!(far > 0.5 && far < 2)) return;
    right.unit = left.unit;
    right.assumedUnit = true;
    right.named = left.named;
    right.place = left.place;
    right.hint = left.hint;
  });
}

/** "opens 20 closes 45": beside where a switch closes it is where it opens, nothing that was read. */
export function opensCloses(drafts: readonly Draft[], items: readonly Item[]): void {
  const word = ({ index }: Draft): string => items[index - 1]?.text ?? "";
  if (!drafts.some((draft) => /^(?:closes|cuts|makes)$/.test(word(draft)))) return;
  // "the freezer makes minus 16": a switch is told by where it opens, or by its name
  const aSwitch = /^(?:opens|breaks|closes|cuts|switch|sw|lps|hps|contact|stat|pressostat)$/;
  if (!items.some(({ text }) => aSwitch.test(text))) return;
  for (const draft of drafts) {
    // "return 24 makes ten kelvin": what comes of it
    if (draft.unit?.figure === "K") continue;
    if (/^(?:opens|breaks|makes|closes)$/.test(word(draft))) draft.rating ??= "setpoint";
  }
}
