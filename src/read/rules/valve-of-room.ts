import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** "eev for 210 reads 100%": the room that the valve is of, no steps. */
export const valveOfRoom: Rule = {
  name: "valve for <room>",
  heads: "eev|eevs|lev|exv|valve",
  needs: "number",
  apply: (note) => {
    note.items.forEach((item, i) => {
      if (!/^(?:eev|lev|exv|pmv|valve)$/.test(item.text)) return;
      if (!/^(?:for|of|in)$/.test(textAt(note.items, i + 1))) return;
      const room = note.items[i + 2];
      if (!freeNumber(room) || room.unit !== undefined || !Number.isInteger(room.value)) return;
      if (room.value < 1 || room.value > 9999) return;
      if (!/^(?:reads|is|at|shows|says|sits|has|commanded)$/.test(textAt(note.items, i + 3)))
        return;
      state(note, valveOfRoom.name, [i + 2, i + 3], { kind: "note", about: "place" });
    });
  },
};
