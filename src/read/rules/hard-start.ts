import { type Rule, state } from "../note.ts";
import { rangeOf } from "./near.ts";

const put =
  /\b(?:put|added|hung|stuck|wired|fitted)(?: in| on)? (?:a|the|one|my)(?: new)? hard ?start(?: kit)?\b/;
const capToo = /\b(?:and|&|n) a new \d{2}(?:\/\d{1,2})?(?: cap\b| mfd\b|$|[.,])/;

/** "put a hard start on it and a new 55/5": a kit that was added, and the capacitor beside it. */
export const hardStart: Rule = {
  name: "<put> a hard start",
  heads: "hard|hardstart",
  apply: (note) => {
    const match = put.exec(note.plain);
    if (match === null) return;
    const end = match.index + match[0].length;
    const range = rangeOf(note.items, match.index, end);
    const fitted = (part: string): void =>
      state(note, hardStart.name, range, { kind: "part", part, state: "fitted" });
    state(note, hardStart.name, range, {
      kind: "action",
      action: "replaced",
      what: "hard start kit",
    });
    fitted("hard start kit");
    if (capToo.test(note.plain.slice(end))) fitted("capacitor");
  },
};
