import { type Rule, state } from "../note.ts";
import { rangeOf } from "./near.ts";

/** "pulled new wire", "ran a new 18/2 to box B", "strung new comm cable": what was drawn in place of the old. */
const run =
  /\b(?:pulled|ran|strung|laid) (?:in )?(?:a |an |the |some )?(?:brand )?new (?:(?:comm?|comms|communication|control|shielded|signal|stat|thermostat|power|branch) )?(?:wires?|cables?|pair|whip|feeder|conductors?|(?:12|14|16|18|20|22)[/-]\d\b)/;

export const wireRun: Rule = {
  name: "<ran> new <wire>",
  heads: "new",
  apply: (note) => {
    const match = run.exec(note.plain);
    if (match === null) return;
    const range = rangeOf(note.items, match.index, match.index + match[0].length);
    const what = match[0].includes("power") || match[0].includes("feeder") ? "power wire" : "wire";
    const comm = /comm|pair|shielded|signal/.test(note.plain) ? "comm wire" : what;
    state(note, wireRun.name, range, {
      kind: "action",
      action: "replaced",
      what: comm,
    });
  },
};
