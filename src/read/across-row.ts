import type { Draft } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const across =
  /^(?:across(?: (?:all|each|them|it|the (?:three|windings?|leads?|pins?)))?|between (?:all )?(?:the )?(?:phases|legs|lines|leads|pins|pairs))(?: [,.;]|$| (?:and|at|then|with|no)\b| \d)/;
/** Ohm that a motor's winding has at most, and V that legs have at least. Common practice, no source. */
const mostOhm = 30;
const leastVolts = 90;
/** Legs of one motor are within a fifth of each other unless one is lost; common practice, no source. */
const evenLegs = 0.8;

function isBare({ unit, named, hint, rating, over, gone }: Draft): boolean {
  const free = [unit, named, hint, rating].every((one) => one === undefined);
  return free && !over && !gone;
}

/** Does the value lie in the range of what is measured across windings, or across legs? */
function kindOf(row: readonly Draft[]): "winding_resistance" | "voltage" | undefined {
  if (row.every(({ value }) => value >= leastVolts)) return "voltage";
  return row.every(({ value }) => value > 0 && value < mostOhm) ? "winding_resistance" : undefined;
}

/** "U V W …: .62 .62 .63 across": a lead by itself has nothing across it, so the pairs are not named. */
function unpaired({ points }: Draft): boolean {
  return points?.every((one) => one.length === 1) === true;
}

/** ".62 .62 .63 across, 1.8 gig to the can", "211 212 211 between phases": three that lie between points. */
export function acrossRow(drafts: readonly Draft[], items: readonly Item[]): void {
  acrossTheLine(drafts, items);
  for (let at = 0; at + 2 < drafts.length; at++) {
    const row = drafts.slice(at, at + 3);
    const [first, , last] = row;
    if (first === undefined || last === undefined || !row.every(isBare)) continue;
    if (!across.test(wordsFrom(items, last.index + 1, last.index + 5))) continue;
    const words = wordsFrom(items, first.index + 1, last.index).replace(/\d*\.?\d+/g, "");
    if (!/^(?:[ ,/]|and)*$/.test(words)) continue;
    const kind = kindOf(row);
    const ohms = drafts.some(({ unit }) => unit?.dimension === "resistance") || isOpened(items);
    if (kind === undefined || (kind === "winding_resistance" && !ohms)) continue;
    for (const draft of row) {
      draft.named = kind;
      if (unpaired(draft)) draft.points = undefined;
    }
  }
}

/** "ramped, then across the line 11.9 12.1 12.0": started so a motor draws amps; what is too little for volts is no warmth. */
function acrossTheLine(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((first, order) => {
    const row = drafts.slice(order, order + 3);
    if (row.length < 3 || !row.every((one) => isBare({ ...one, hint: undefined }))) return;
    const ahead = wordsFrom(items, first.index - 5, first.index);
    if (
      !/\bacross the lines?(?: start(?:ing|ed)?)?(?: [:,]| amps| at| draws| it draws| legs)*$/.test(
        ahead,
      )
    )
      return;
    const words = wordsFrom(items, first.index + 1, row[2]?.index ?? 0).replace(/\d*\.?\d+/g, "");
    const values = row.map(({ value }) => value);
    const even = Math.min(...values) >= Math.max(...values) * evenLegs;
    if (!/^(?:[ ,/]|and)*$/.test(words) || !even || Math.max(...values) >= leastVolts) return;
    for (const draft of row) {
      draft.named = "current";
      draft.hint = undefined;
      draft.place = undefined;
      draft.unit = unitCalled("A");
      draft.assumedUnit = true;
    }
  });
}

function isOpened(items: readonly Item[]): boolean {
  return items.some(({ text }) => /^(?:lifted|off|unhooked|pulled|ohm\w*|pins|stubs)$/.test(text));
}
