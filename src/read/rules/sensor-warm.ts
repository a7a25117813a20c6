import { itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Degrees of either scale at which a sensor is read beside its table; common practice, no source. */
const table = { from: -40, to: 120 } as const;

/** "thermistor 11.2k at 70, chart says 11.9k", "coil sensor 31.5 kohm at 74 F": how warm the sensor is, no more kilohms. */
export const sensorWarm: Rule = {
  name: "<kilohms> at <degrees>",
  heads: "thermistor|thermistors|sensor|sensors|ntc|probe",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item) || !/^(?:at|@)$/.test(textAt(items, i - 1))) return;
      const degrees = item.unit?.dimension === "temperature";
      if (item.unit !== undefined && !degrees) return;
      const ohms = items[i - 2];
      if (ohms?.kind !== itemKind.number || ohms.unit?.figure !== "kilohm") return;
      if (item.value < table.from || item.value > table.to || item.value <= ohms.value) return;
      state(note, sensorWarm.name, [i - 1, i + 1], { kind: "note", about: "sensor temperature" });
    });
  },
};
