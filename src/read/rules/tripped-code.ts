import { itemKind } from "../item.ts";
import type { Note, Rule } from "../note.ts";
import { fileCode } from "./fault-reading.ts";
import { gluedEnd, textAt } from "./near.ts";

const trips =
  /^(?:tripped|trips|tripping|trip|locked|locks|locking|faulted|faults|faulting|died|dies|down|off|out)$/;
const leads = /^(?:on|with|w|for|by|out|an?|again|-|:)$/;
/** Letters that boards and drives begin a code with; breakers and switches have others. Common practice, no source. */
const code = /^(?:e|er|err|fl|flt|al|oc|ov|uv|oh|oe|gf)-?\d{1,4}$|^[fpu]0\d{1,3}$/i;
/** A fuse and a pump begin with these too: "tripped P2" may be the pump, "tripped on P2" is no pump. */
const ledCode = /^[fpu]-?\d{1,3}$/i;

/** Behind "down", "off" and "out" a code needs its preposition: "locked out on E5". */
const bare = /^(?:down|off|out)$/;

function codeFrom(note: Note, i: number): number {
  let at = i + 1;
  while (at < i + 4 && leads.test(textAt(note.items, at))) at++;
  if (bare.test(textAt(note.items, i)) && at === i + 1) return -1;
  return at;
}

/** "comp 2 tripped E14 at 7:52", "locked out on E5", "drive trips OC1": what it stopped with. */
export const trippedCodes: Rule = {
  name: "tripped <code>",
  heads:
    "tripped|trips|tripping|trip|locked|locks|locking|faulted|faults|faulting|died|dies|down|off|out",
  apply: (note) => {
    const { items, plain, text } = note;
    items.forEach((item, i) => {
      if (!trips.test(item.text)) return;
      const at = codeFrom(note, i);
      const first = items[at];
      if (first === undefined || first.owner !== undefined) return;
      if (first.kind === itemKind.number || first.kind === itemKind.points) return;
      const end = gluedEnd(items, at);
      const last = items[end - 1];
      const span = [first.from, last?.to ?? first.to] as const;
      const said = plain.slice(...span);
      const led = /^(?:on|with|w)$/.test(textAt(items, at - 1)) && ledCode.test(said);
      if ((!code.test(said) && !led) || items[end]?.kind === itemKind.unit) return;
      for (const one of items.slice(at, end)) one.owner = trippedCodes.name;
      fileCode(note, text.slice(...span).toUpperCase(), { span, rule: trippedCodes.name });
    });
  },
};
