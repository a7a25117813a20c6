import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Machines of one kind at a place; common practice, no source. */
const MACHINES = 20;

const turns = /^(?:starting|start|started|beginning|begin|working|going|hitting)$/;
const begun = /^(?:started|restarted|fired|brought|kicked)$/;

function isWhole(item: Item): boolean {
  const whole = item.unit === undefined && !item.fraction && !item.colon;
  return (
    whole &&
    Number.isInteger(item.value) &&
    item.value >= 1 &&
    item.value <= MACHINES &&
    !item.text.includes(".")
  );
}

/** Index of the word that turns to the machine whose number stands at `i`, or -1. */
function turnAt(items: readonly Item[], i: number): number {
  const [far, near] = [textAt(items, i - 2), textAt(items, i - 1)];
  const next = items[i + 1];
  const first = next?.text === "first" && items[i + 2]?.kind !== itemKind.number;
  const ends = next === undefined || isStrongBreak(next) || next.text === ",";
  if (/^(?:with|w|on)$/.test(near) && turns.test(far) && (ends || first)) return i - 2;
  if (first && /^(?:doing|on|hitting|do|with)$/.test(near)) return i - 1;
  // "running 2 only", "running just 2, 14.2"
  const only = /^(?:only|alone)$/.test(next?.text ?? "");
  if (/^runn/.test(near) && only) return i - 1;
  if (/^(?:just|only)$/.test(near) && /^runn/.test(far) && ends) return i - 2;
  // "at tollhouse for 4"
  const there = /^(?:here|at|on|onsite|arrived|pulled|rolled|back|on site|on roof)$/.test(
    textAt(items, 0),
  );
  if (near === "for" && there && i <= 6 && ends) return i - 1;
  const comma =
    next?.text === "," && items.slice(i + 2).some(({ kind }) => kind === itemKind.number);
  if (comma && begun.test(near)) return i - 1;
  return comma && near === "up" && begun.test(far) ? i - 2 : -1;
}

/** "starting with 1", "doing 2 first", "started 1, 480 479 482 volts": which machine it is, no figure of a start. */
export const numberFirst: Rule = {
  name: "starting with <number>",
  heads:
    "for|running|runnin|starting|start|started|beginning|begin|working|going|hitting|first|restarted|fired|brought|kicked",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item) || !isWhole(item)) return;
      const at = turnAt(items, i);
      const verb = items[at];
      if (verb === undefined) return;
      if (verb.label?.state !== undefined) {
        verb.kind = itemKind.word;
        verb.label = undefined;
      }
      state(note, numberFirst.name, [i, i + 1], { kind: "note", about: "place" });
    });
  },
};
