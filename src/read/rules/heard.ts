import { type Rule, state } from "../note.ts";

/** "10-4, rolling": what is said on the radio for "heard" is no figure. */
export const heard: Rule = {
  name: "heard, on the radio",
  needs: "number",
  apply: (note) => {
    const [said] = /^\s*10-4\b(?!\s*(?:[.:]?\d|ohm|v\b|a\b|amp))/.exec(note.plain) ?? [];
    if (said === undefined) return;
    const end = note.items.findIndex(({ from }) => from >= said.length);
    const to = end < 0 ? note.items.length : end;
    if (to > 0) state(note, heard.name, [0, to], { kind: "note", about: "heard" });
  },
};
