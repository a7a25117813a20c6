import { type Rule, state } from "../note.ts";
import { freeNumber } from "./near.ts";

/** Behind the figure, across what its item took for a unit: "in lb", "ft-lbs", "inch pounds", "Nm". */
const torques =
  /^\s{0,2}(?:(?:in|inch|ft|foot)[\s.-]{0,2}(?:lbs?|pounds?|#)|nm|n-m|newton met(?:er|re)s?)(?![a-z])/;

/** "torqued 35 in lb", "twelve foot pounds": how tight a screw is, no mass and no length. */
export const torque: Rule = {
  name: "<number> <torque>",
  needs: "number",
  apply: (note) => {
    note.items.forEach((item, i) => {
      if (!freeNumber(item)) return;
      const said = torques.exec(note.plain.slice(item.numberTo, item.numberTo + 20));
      if (said === null) return;
      const to = item.numberTo + said[0].length;
      let end = i + 1;
      while ((note.items[end]?.from ?? to) < to) end++;
      state(note, torque.name, [i, end], { kind: "note", about: "torque" });
    });
  },
};
