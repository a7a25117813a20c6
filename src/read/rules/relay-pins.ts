import type { Item } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, isOrdinalUpTo, textAt } from "./near.ts";

/** Terminals of a start relay; common practice, no source. */
const mostPins = 6;
const joints = /^(?:to|-|and|\/)$/;
/** What a start relay is called by. */
const called = /^(?:potential|start|starting|current)$/;
const tells =
  /^(?:is|are|reads?|reading|shows?|measures?|=|:|open|opens|closed|closes|coil|contacts?|ol|ohms?|stuck|burnt)$/;

const isPin = (item: Item | undefined): item is Item => isOrdinalUpTo(item, mostPins);

/** Past its two pins, where a relay's name begins at `i`: "relay 1" is cut as one. */
function namedEnd(items: readonly Item[], i: number, plain: string): number | undefined {
  const relay = items[i];
  if (relay?.text !== "relay") return;
  const numbered = /[1-6]$/.test(plain.slice(relay.from, relay.to));
  const at = numbered ? i + 1 : i + 2;
  const first = numbered || isPin(items[i + 1]);
  return first && joints.test(textAt(items, at)) && isPin(items[at + 1]) ? at + 2 : undefined;
}

/** "potential relay 1 to 2 reads open, 2 to 5 8200 ohms": two pins of a start relay, by their numbers. */
export const relayPins: Rule = {
  name: "relay <pin> to <pin>",
  heads: "relay",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    let begun = items.some(({ text }, i) => called.test(text) && textAt(items, i + 1) === "relay");
    for (let i = 0; i < items.length; i++) {
      const end = namedEnd(items, i, note.plain);
      if (end !== undefined) {
        begun = true;
        const from = called.test(textAt(items, i - 1)) ? i - 1 : i;
        state(note, relayPins.name, [from, end], { kind: "note", about: "pins" });
      } else if (
        begun &&
        isPin(items[i]) &&
        joints.test(textAt(items, i + 1)) &&
        isPin(items[i + 2])
      ) {
        const next = items[i + 3];
        if (tells.test(next?.text ?? "") || freeNumber(next))
          state(note, relayPins.name, [i, i + 3], { kind: "note", about: "pins" });
      }
    }
  },
};
