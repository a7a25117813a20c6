import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** What is told in kilohms as often as in ohms. */
const sensors = /^(?:thermistors?|sensors?|snsr|ntc|rtd|probe|therm|transducer)$/;

/** "solenoid resistance 22": the word itself stands before the figure, of a part whose ohms nobody counts in thousands. */
export function toldOhms({ before, value }: Draft, items: readonly Item[]): boolean {
  const words = before.map((index) => items[index]?.text ?? "");
  return (
    value >= 0 &&
    words.some((word) => word === "resistance") &&
    !words.some((word) => sensors.test(word))
  );
}
