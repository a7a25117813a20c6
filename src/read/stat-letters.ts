import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const terminal = /^(?:y|g|w|o|b|y1|y2|w1|w2|rc|rh|ob)$/;

/** The terminal right before a value: "y", "g", "to c" of a pair. */
function atTerminal(items: readonly Item[], index: number): boolean {
  const joint = /^(?:[:=]|is|has|at)$/.test(items[index - 1]?.text ?? "");
  const name = items[index - (joint ? 2 : 1)];
  if (name === undefined || name.kind === itemKind.number) return false;
  return (
    terminal.test(name.text) || name.points?.some((points) => points.some(isTerminal)) === true
  );
}

function isTerminal(point: string): boolean {
  return /^(?:Y|G|W|O|B|Y1|Y2|W1|W2)$/.test(point);
}

/** V that a thermostat's circuit has; common practice, no source. */
const mostVolts = 32;

/** "r-c 26.1, y 25.9, g 0, w 0": beside a control's volts each terminal has volts, no ohms and no grams. */
export function statLetters(drafts: readonly Draft[], items: readonly Item[]): void {
  const free = drafts.filter((draft) => !draft.gone && !draft.over && !draft.same);
  const others = free.filter((draft) => atTerminal(items, draft.index));
  const common = items.some((item) =>
    item.points?.some((one) => one.includes("C") && one.length === 2),
  );
  const power = free.some(
    (draft) =>
      draft.value >= 18 &&
      draft.value <= mostVolts &&
      (draft.unit === undefined || draft.unit.figure === "V"),
  );
  // "R 26.4 Y 26.2 G 0": the hot terminal by itself
  const hot = free.filter((draft) => items[draft.index - 1]?.points?.join() === "R");
  if (others.length > 1) others.push(...hot);
  if (!power || others.length < (common ? 1 : 2)) return;
  for (const draft of others) {
    if (draft.unit !== undefined || draft.value < 0 || draft.value > mostVolts) continue;
    draft.unit = unitCalled("V");
    draft.assumedUnit = true;
    draft.named = "voltage";
    draft.hint = undefined;
    draft.grounded = false;
  }
}
