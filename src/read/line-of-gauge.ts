import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "108 psig 41 line temp": the line beside the only gauge is of its side. */
export function lineOfGauge(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone);
  const gauges = list.filter(({ quantity }) => quantity === "pressure");
  const [gauge] = gauges;
  if (gauges.length !== 1 || gauge === undefined) return;
  if (gauge.place !== "suction" && gauge.place !== "liquid") return;
  const at = list.indexOf(gauge);
  for (const draft of [list[at - 1], list[at + 1]]) {
    if (draft?.quantity !== "temperature" || draft.place !== undefined) continue;
    if (draft.rating !== undefined || draft.points !== undefined) continue;
    const words = [...draft.before, ...draft.behind].map((index) => items[index]?.text ?? "");
    if (words.some((text) => /^(?:line|pipe)(?: temp(?:erature)?)?$/.test(text)))
      draft.place = gauge.place;
  }
}
