import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

const how =
  /^(?:plugged|frosted|iced|blocked|covered|clogged|restricted|impacted|matted|dirty|bent|frozen)$/;
const whole =
  /^(?:coil|coils|evap|evaporator|cond|condenser|filter|filters|fins|face|screen|strainer|row|rows|tubes|barrel|pan)$/;

/** "bottom 1/3 of the coil iced", "coil is 3/4 plugged": how much of a thing, nothing that was measured. */
export const shares: Rule = {
  name: "<fraction> of <thing>",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item) || item.unit !== undefined || !item.fraction) return;
      if (item.value <= 0 || item.value >= 1) return;
      let thing = i + 1;
      while (/^(?:of|the|a|its)$/.test(textAt(items, thing))) thing++;
      const part = thing > i + 1 && whole.test(textAt(items, thing));
      const led = /^(?:over|about|like|maybe)$/.test(textAt(items, i - 1)) ? i - 2 : i - 1;
      const done = how.test(textAt(items, led)) || /^(?:full|empty)$/.test(textAt(items, i + 1));
      if (!part && !done && !how.test(textAt(items, i + 1))) return;
      state(note, shares.name, [i, i + 1], { kind: "note", about: "share" });
    });
  },
};
