import type { Item } from "../item.ts";
import { type Note, type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** What is opened by figures. */
const locks =
  /^(?:hatch|gate|gates|lockbox|padlock|box|roof|door|doors|stair|stairs|stairwell|fence|elevator|lift|garage|alarm|penthouse|bldg|building|lobby|dock|entry|mech|closet|keybox|cage|yard|ladder)$/;
const figures = /^(?:code|codes|combo|combination|passcode|pin|keycode)$/;
const small =
  /^(?:the|for|to|is|its|was|on|of|a|panel|key|room|rm|front|back|rear|side|main|[:#=-])$/;

/** A word that names a lock, over small words alone, before or behind item `i`. */
function lockNear(items: readonly Item[], i: number, step: -1 | 1): number {
  for (let at = i + step; at >= 0 && at < items.length && Math.abs(at - i) <= 5; at += step) {
    if (locks.test(textAt(items, at))) return at;
    if (!small.test(textAt(items, at))) return -1;
  }
  return -1;
}

/** Where the figures of a code end that begin at or behind item `i`; `i` where there are none. */
function figuresEnd(items: readonly Item[], i: number): number {
  let at = i;
  while (small.test(textAt(items, at)) || locks.test(textAt(items, at))) at++;
  const first = items[at];
  if (!freeNumber(first) || first.unit !== undefined || first.spoken) return i;
  const single = first.to - first.from === 1;
  while (freeNumber(items[at]) && items[at]?.unit === undefined && (items[at] === first || single))
    at += single && textAt(items, at + 1) === "-" ? 2 : 1;
  while (/^(?:#|\*|star|pound|hash)$/.test(textAt(items, at))) at++;
  return at;
}

/** "hatch code 4471#", "code for the gate is 1180", "key box 8812#": what opens a door is no fault. */
export const accessCodes: Rule = {
  name: "<door> code <number>",
  heads: "code|codes|combo|combination|passcode|pin|keycode|box|padlock|lockbox|keybox",
  needs: "number",
  apply: (note: Note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (item.owner !== undefined) return;
      const before = lockNear(items, i, -1);
      const box = /^(?:box|lockbox|keybox|padlock)$/.test(item.text);
      const coded = figures.test(item.text) && (before >= 0 || lockNear(items, i, 1) >= 0);
      if (!coded && !box) return;
      const end = figuresEnd(items, i + 1);
      if (end <= i + 1) return;
      const marked = /^(?:#|\*|star|pound|hash)$/.test(textAt(items, end - 1));
      // "lock box 0923": no other box begins so
      const locked = /^(?:lock|key)$/.test(textAt(items, i - 1)) && end === i + 2;
      if (box && !coded && !marked && !locked) return;
      state(note, accessCodes.name, [before >= 0 ? before : i, end], {
        kind: "note",
        about: "place",
      });
    });
  },
};
