import { type Rule, state } from "../note.ts";
import { rangeOf } from "./near.ts";

/** "10-4, rolling": what is said on the radio for "heard" is no figure. */
export const heard: Rule = {
  name: "heard, on the radio",
  needs: "number",
  apply: (note) => {
    const [said] = /^\s*10-4\b(?!\s*(?:[.:]?\d|ohm|v\b|a\b|amp))/.exec(note.plain) ?? [];
    if (said === undefined) return;
    const range = rangeOf(note.items, 0, said.length);
    if (range[1] > 0) state(note, heard.name, range, { kind: "note", about: "heard" });
  },
};
