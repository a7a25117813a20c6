import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { splitOff } from "./unit-of-next.ts";

const tanks = /^(?:tanks?|cylinders?|cyl|bottles?|drum|jug)$/;

/** Least water capacity of a recovery cylinder, lb or kg; common practice, no source. */
const leastCapacity = 8;

/** Letters and figures of one collar: water capacity, tare. */
const near = (items: readonly Item[], i: number): boolean =>
  items.slice(Math.max(0, i - 6), i + 4).some(({ text }) => tanks.test(text));

/** "47.7 WC tank", "cylinder WC 47.7 lb": beside a cylinder WC is the water that it holds, which is its size. */
export function isWaterCapacity(items: readonly Item[], i: number, plain: string): boolean {
  const item = items[i];
  if (item === undefined || item.value < leastCapacity || !near(items, i)) return false;
  if (item.unit?.figure === "in wc") return /w\.?c\.?$/i.test(textOf(item, plain));
  const named = items[i - 1]?.text ?? "";
  return /^(?:wc|w\.c|water capacity)$/.test(named) && isWeight(item);
}

const textOf = ({ from, to }: Item, plain: string): string => plain.slice(from, to);

const empty = /^(?:tw|t\.w|tare|tare weight|gross|gross weight)$/;

/** "bottle tare 28.5", "cylinder gross 59 lb": beside a cylinder what it weighs empty or full, no gas of the machine. */
export function isTare(items: readonly Item[], i: number): boolean {
  const item = items[i];
  const collar = near(items, i) || items.some(({ text }) => text === "tare");
  if (item === undefined || !collar || !isWeight(item)) return false;
  const joint = /^(?:is|of|:|=)$/.test(items[i - 1]?.text ?? "");
  return empty.test(items[joint ? i - 2 : i - 1]?.text ?? "");
}

/** "tw 28.5 wc 47.7": the letters between two figures lead the second, the first having its own. */
export function tankLetters(items: Item[]): void {
  for (let i = 1; i + 1 < items.length; i++) {
    const item = items[i];
    if (item?.kind !== itemKind.number || item.unit?.figure !== "in wc") continue;
    const next = items[i + 1];
    if (!empty.test(items[i - 1]?.text ?? "") || next?.kind !== itemKind.number) continue;
    splitOff(items, i);
    const letters = items[i + 1];
    if (letters !== undefined) letters.kind = itemKind.word;
    if (letters !== undefined) letters.text = "wc";
  }
}

const isRecovery = (item: Item | undefined): boolean => /^recover/.test(item?.text ?? "");

/** "recovery bottle 30 lb": what the bottle is or shows; that so much came out of the machine nobody said. */
export function recoveryBottle(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    if (draft.action !== "recovered") continue;
    const small = /^(?:is|at|was|now|a|the|says|reads|shows|:)$/;
    let at = draft.index - 1;
    while (small.test(items[at]?.text ?? "")) at--;
    if (!tanks.test(items[at]?.text ?? "") || !isRecovery(items[at - 1])) continue;
    // "got 30 lb into it", "recovered into the recovery bottle": told as done
    if (
      items.some((item, i) => i !== at - 1 && /^(?:recovered|pulled|got|took|out)$/.test(item.text))
    )
      continue;
    draft.action = undefined;
  }
}

/** Words that may name the gas between a weight and where it is. */
const gasWords = 6;

function isWeight({ unit }: Item): boolean {
  return unit === undefined || unit.dimension === "mass";
}

/** "47.7 WC tank, 31 lb in it": what is in the tank came out of a machine. */
export function inTank(list: readonly Draft[], items: readonly Item[], plain: string): void {
  const tank = items.findIndex(({ text }) => tanks.test(text));
  const ahead = items.slice(Math.max(0, tank - 3), Math.max(0, tank));
  if (tank < 0 || ahead.some(({ text }) => /^(?:from|of|off|out)$/.test(text))) return;
  for (const draft of list) {
    if (draft.action !== "charged" || draft.index < tank) continue;
    const behind = items.slice(draft.index + 1, draft.index + gasWords);
    const said = behind.find(({ kind }) => kind === itemKind.label);
    const words = said === undefined ? "" : textOf(said, plain);
    if (/^in (?:it|there)\b/i.test(words)) draft.action = "recovered";
  }
}
