import type { Reading } from "../model.ts";
import { figureSpan, noteOf } from "./near.ts";
import { numberOf } from "./pick.ts";
import type { Scene } from "./scene.ts";

/** V; a machine of less runs on what its controls do. */
export const leastMachineV = 200;

/** "volts 466 40 465": one of three said in one breath, between two that live or no control voltage. */
export function isThirdOfRow(scene: Scene, reading: Reading): boolean {
  if (reading.points !== undefined || scene.facts.phases === 1) return false;
  const note = noteOf(scene, reading);
  const text = note?.text ?? "";
  const all = [...(note?.readings ?? [])]
    .filter((one) => one.quantity === "voltage" && one.kind !== "dc")
    .sort((a, b) => figureSpan(text, a)[0] - figureSpan(text, b)[0]);
  const joined = (a: Reading, b: Reading) =>
    /^[\s,/&v-]*(?:and)?[\s-]*$/i.test(textBetween(text, a, b));
  const at = all.indexOf(reading);
  let [from, to] = [at, at];
  for (let one = all[from - 1]; one && joined(one, all[from] ?? one); one = all[from - 1]) from--;
  for (let one = all[to + 1]; one && joined(all[to] ?? one, one); one = all[to + 1]) to++;
  if (to - from !== 2) return false;
  const others = all.slice(from, to + 1).filter((one) => one !== reading);
  if (others.some((one) => (numberOf(one) ?? 0) < leastMachineV)) return false;
  return (at > from && at < to) || (numberOf(reading) ?? 0) > mostOfControlV;
}

/** V of a 24 V class circuit at most. Common practice, no source. */
const mostOfControlV = 30;

export function textBetween(text: string, a: Reading, b: Reading): string {
  const [one, other] = [figureSpan(text, a), figureSpan(text, b)];
  return one[0] <= other[0] ? text.slice(one[1], other[0]) : text.slice(other[1], one[0]);
}
