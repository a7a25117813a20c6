import { type Item, itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { fileCode } from "./fault-reading.ts";
import { isOrdinalUpTo, textAt } from "./near.ts";

const shower =
  /^(?:board|ifc|led|light|module|pcb|controller|furnace|ignition|diagnostic|control|lite)$/;
const acts = /^(?:blinks|blinking|blinked|flashes|flashing|flashed|giving|gives|throwing)$/;
const counted = /^(?:flash|flashes|blink|blinks)$/;
const colour = /^(?:red|green|amber|yellow|slow|quick|short|long)$/;
/** The most flashes that anybody counts; common practice, no source. */
const MOST = 99;

const isCount = (item: Item | undefined): item is Item => isOrdinalUpTo(item, MOST);

/** "board blinks 13", "led flashing 7 times": where the count ends. */
function behindVerb(items: readonly Item[], i: number): number {
  const next = items[i + 1];
  const told =
    next === undefined ||
    next.kind === itemKind.line ||
    /^(?:[.,=:]|times|x|and|on|for|again|now)$/.test(next.text);
  if (!told || !acts.test(textAt(items, i - 1))) return 0;
  const led = items.slice(Math.max(0, i - 5), i - 1).some(({ text }) => shower.test(text));
  if (!led) return 0;
  return /^(?:times|x)$/.test(textAt(items, i + 1)) ? i + 2 : i + 1;
}

/** "2 flashes", "3 red blinks": where the count ends. */
function beforeNoun(items: readonly Item[], i: number): number {
  const noun = colour.test(textAt(items, i + 1)) ? i + 2 : i + 1;
  return counted.test(textAt(items, noun)) && !/^(?:gas|of)$/.test(textAt(items, noun + 1))
    ? noun + 1
    : 0;
}

/** "board blinks 13", "2 flashes on the ifc": a light tells its code by how often it flashes. */
export const blinkCounts: Rule = {
  name: "<light> blinks <number>",
  needs: "number",
  apply: (note: Note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!isCount(item)) return;
      const verb = behindVerb(items, i);
      const end = verb || beforeNoun(items, i);
      if (end === 0) return;
      const from = verb > 0 ? i - 1 : i;
      for (let at = from; at < end; at++) {
        const one = items[at];
        if (one !== undefined) one.owner = blinkCounts.name;
      }
      fileCode(note, String(item.value), {
        span: [items[from]?.from ?? item.from, items[end - 1]?.to ?? item.to],
        rule: blinkCounts.name,
      });
    });
  },
};
