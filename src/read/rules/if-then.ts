import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

const asks =
  /^if (?:it|it's|its|that|thats|that's|she|she's|this|he|the [a-z]+)(?: is|'s| are)?(?: still| not)? (?:goes|gets|climbs|drops|rises|falls|holds|stays|reads|above|over|under|below|past|higher|lower)\b/;
const plans =
  /\b(?:i'?ll|we'?ll|i'?m gonna|im going to|i'm going to|gonna|going to|we're going to)\b/;

/** "if it's still above 500 at two o'clock I'm gonna sweep it": what is waited for was not measured. */
export const ifThen: Rule = {
  name: "if it goes over <number> I'll <do>",
  needs: "number",
  apply: (note) => {
    const { items, plain } = note;
    const first = items[0];
    if (first?.text !== "if" || !asks.test(plain.trim()) || !plans.test(plain)) return;
    items.forEach((item, i) => {
      if (!freeNumber(item) || /^(?:now|reads|got)$/.test(textAt(items, i - 1))) return;
      state(note, ifThen.name, [i, i + 1], { kind: "note", about: "plan" });
    });
  },
};
