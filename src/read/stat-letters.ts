import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const terminal = /^(?:y|g|w|o|b|y1|y2|w1|w2|rc|rh|ob)$/;

/** The terminal right before a value: "y", "g", "to c" of a pair. */
function atTerminal(items: readonly Item[], index: number): boolean {
  const joint = /^(?:[:=]|is|has|at)$/.test(items[index - 1]?.text ?? "");
  const name = items[index - (joint ? 2 : 1)];
  if (name === undefined || name.kind === itemKind.number) return false;
  // "V-W 2,23" is a winding's
  const ofStat = (points: readonly string[]): boolean =>
    points.some(isTerminal) && !points.some((point) => /^[UV]$/.test(point));
  return name.points === undefined ? terminal.test(name.text) : name.points.some(ofStat);
}

/** "24 on R", "0 at y": the terminal that a preposition leads to behind the value. */
function behind(items: readonly Item[], index: number): string | undefined {
  const [lead, name, next] = items.slice(index + 1, index + 4);
  if (!/^(?:on|at|@)$/.test(lead?.text ?? "") || name === undefined) return undefined;
  const pair = /^(?:to|-|and)$/.test(next?.text ?? "") && next?.glued === true;
  if (pair || name.kind === itemKind.number || name.label !== undefined) return undefined;
  const letter = name.points?.length === 1 ? name.points[0]?.join() : name.text;
  return letter?.toLowerCase();
}

/** "no 24v at R": the terminal of the control's volts that are told right before `index + 1`. */
export function terminalOf(items: readonly Item[], index: number): Draft["points"] {
  const letter = behind(items, index);
  return letter === "r" || letter === "c" ? [[letter.toUpperCase()]] : undefined;
}

/** The hot terminal before or behind it, by itself. */
function isHot(items: readonly Item[], index: number): boolean {
  const joint = /^(?:[:=]|is|has)$/.test(items[index - 1]?.text ?? "");
  const at = index - (joint ? 2 : 1);
  const [name, lead] = [items[at], items[at - 1]];
  // "26 on r 26 on y": the terminal of the value before it
  const own = !/^(?:on|at|@|to|-)$/.test(lead?.text ?? "");
  const named = own && (name?.points?.join() === "R" || name?.text === "r");
  return named || behind(items, index) === "r";
}

function isTerminal(point: string): boolean {
  return /^(?:Y|G|W|O|B|Y1|Y2|W1|W2)$/.test(point);
}

/** V that a thermostat's circuit has; common practice, no source. */
const mostVolts = 32;

/** "r-c 26.1, y 25.9, g 0, w 0": beside a control's volts each terminal has volts, no ohms and no grams. */
export function statLetters(drafts: readonly Draft[], items: readonly Item[]): void {
  const free = drafts.filter((draft) => !draft.gone && !draft.over && !draft.same);
  const power = free.some(
    (draft) =>
      draft.value >= 18 &&
      draft.value <= mostVolts &&
      (draft.unit === undefined || draft.unit.figure === "V"),
  );
  // "U: 17,1 V: 17,2 W: 17,3 A" are legs
  const legs = items.some(({ points }) => points?.some((one) => /^[UV]$/.test(one.join())));
  if (!power || legs) return;
  const others = free.filter(
    ({ index }) => atTerminal(items, index) || terminal.test(behind(items, index) ?? ""),
  );
  const common = items.some((item) =>
    item.points?.some((one) => one.includes("C") && one.length === 2),
  );
  // "R 26.4 Y 26.2 G 0", "24 on R, 0 on Y"
  const hot = free.filter(({ index }) => isHot(items, index));
  const told = [...others, ...hot];
  const control = told.every(({ value }) => value === 0 || value >= 18);
  if (others.length > 1 || (others.length > 0 && told.length > 1 && control)) others.push(...hot);
  if (others.length < (common ? 1 : 2)) return;
  for (const draft of others) {
    if (draft.unit !== undefined || draft.value < 0 || draft.value > mostVolts) continue;
    draft.unit = unitCalled("V");
    draft.assumedUnit = true;
    draft.named = "voltage";
    draft.hint = undefined;
    draft.grounded = false;
    if (hot.includes(draft)) draft.points ??= [["R"]];
  }
}
