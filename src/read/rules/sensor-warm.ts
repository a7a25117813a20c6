import { itemKind } from "../item.ts";
import { type Rule, state } from "../note.ts";
import { freeNumber, textAt } from "./near.ts";

/** Degrees of either scale at which a sensor is read beside its table; common practice, no source. */
const table = { from: -40, to: 120 } as const;

/** Kilohms at least of a sensor in the cold, and the degrees at most that it is then; common practice, no source. */
const coldKilohms = 14;
const mostCold = 55;

/** "thermistor 11.2k at 70, chart says 11.9k", "coil sensor 31.5 kohm at 74 F": how warm the sensor is, no more kilohms. */
export const sensorWarm: Rule = {
  name: "<kilohms> at <degrees>",
  heads: "therm|thermistor|thermistors|sensor|sensors|ntc|probe",
  needs: "number",
  apply: (note) => {
    const { items } = note;
    items.forEach((item, i) => {
      if (!freeNumber(item) || !/^(?:at|@)$/.test(textAt(items, i - 1))) return;
      const degrees = item.unit?.dimension === "temperature";
      if (item.unit !== undefined && !degrees) return;
      const ohms = items[i - 2];
      if (ohms?.kind !== itemKind.number || ohms.unit?.figure !== "kilohm") return;
      if (item.value < table.from || item.value > table.to) return;
      // "31.2k at 20": in the cold a sensor has more kilohms than the day has degrees
      const cold = ohms.value >= coldKilohms && item.value <= mostCold;
      if (item.value <= ohms.value && !cold) return;
      state(note, sensorWarm.name, [i - 1, i + 1], { kind: "note", about: "sensor temperature" });
    });
  },
};
