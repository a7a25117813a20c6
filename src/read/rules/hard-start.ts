import { type Rule, state } from "../note.ts";

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
    const from = note.items.findIndex((item) => item.from >= match.index);
    const behind = note.items.findIndex((item) => item.from >= end);
    const to = behind < 0 ? note.items.length : behind;
    const fitted = (part: string): void =>
      state(note, hardStart.name, [from, to], { kind: "part", part, state: "fitted" });
    state(note, hardStart.name, [from, to], {
      kind: "action",
      action: "replaced",
      what: "hard start kit",
    });
    fitted("hard start kit");
    if (capToo.test(note.plain.slice(end))) fitted("capacitor");
  },
};
