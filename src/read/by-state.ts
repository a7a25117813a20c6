import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { mostOfAnything } from "./most-of-anything.ts";
import { alike, shapeOf } from "./shape.ts";

const weighed = /^(?:tank|jug|scale|cylinder|cyl|drum|bottle|weight|tare)$/;
const electric: ReadonlySet<string> = new Set(["current", "voltage", "capacitance", "frequency"]);

/** How much higher the second of a pair is than legs ever are; common practice, no source. */
const noLegs = 1.6;

/** "80 / 252": the second is far above the first, so they are no two legs. */
function farApart(draft: Draft, list: readonly Draft[], items: readonly Item[]): boolean {
  const at = list.indexOf(draft);
  return [list[at - 1], list[at + 1]].some((other) => {
    if (other === undefined) return false;
    const [low, high] = [draft, other].sort((one, two) => one.index - two.index);
    const joint = items.slice((low?.index ?? 0) + 1, high?.index).map(({ text }) => text);
    return /^(?:\/|over)$/.test(joint.join(" ")) && (high?.value ?? 0) > (low?.value ?? 0) * noLegs;
  });
}

/** "running 13.8 14.0 13.7", "settled to 12.2": amperes go without saying where nothing else fits. */
export function byState(draft: Draft, list: readonly Draft[], items: readonly Item[]): void {
  if (
    draft.quantity !== undefined ||
    draft.unit !== undefined ||
    draft.over ||
    draft.place !== undefined ||
    draft.rating !== undefined
  )
    return;
  const settled =
    draft.state !== undefined ||
    (draft.stat === "peak" && !mostOfAnything(draft, list, items)) ||
    /^settl|^level(?:s|ed|led|ing)/.test(items[draft.index - 1]?.text ?? "") ||
    /^settl|^level(?:s|ed|led|ing)/.test(items[draft.index - 2]?.text ?? "");
  if (!settled || draft.value < 0.3 || draft.value >= 170) return;
  // "24.9 no load 19.2 loaded": volts sag as well
  if (items.some(({ text }, i) => text === "load" && items[i - 1]?.text === "no")) return;
  // "fan 3 of 4 running"
  if (items[draft.index - 1]?.text === "of") return;
  if (items.some((item) => weighed.test(item.text))) return;
  // "settled at 80/252": two gauges
  if (farApart(draft, list, items)) return;
  const next = items[draft.index + 1];
  if (next?.kind === itemKind.word && next.roles === 0 && next.plural) return;
  const before = list[list.indexOf(draft) - 1]?.quantity;
  if (draft.stat === "peak" && before !== undefined && !electric.has(before)) return;
  draft.quantity = "current";
  draft.assumedQuantity = true;
  for (const other of list)
    if (
      other.quantity === undefined &&
      other.unit === undefined &&
      shapeOf(other) === "" &&
      other.state === undefined &&
      alike(draft, other) &&
      Math.abs(list.indexOf(other) - list.indexOf(draft)) <= 3
    ) {
      other.quantity = "current";
      other.assumedQuantity = true;
    }
}
