import type { Context } from "./context.ts";
import { type Draft, isUntold } from "./draft.ts";
import type { Item } from "./item.ts";

const down =
  /\b(?:pull(?:ing|ed|s)?|com(?:ing|es)|came|drop(?:ping|ped|s)|go(?:ing|es)|fall(?:ing|s))(?: (?:it|her|back))? down(?: to)?$|\b(?:down to|pulling)$/;
const cold = /^(?:box|case|freezer|cooler|walkin|walk-in|reachin)$/;
/** K between what a box is found at and what it is pulled down to, at most. Common practice, no source. */
const mostK = 25;

/** "pulling down 46 already" behind a box at 51, "case pulling down 36 now": how cold the box is by now. */
export function pullsDown(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings, units }: Context,
): void {
  const [draft, ...others] = drafts.filter(({ gone }) => !gone);
  if (draft === undefined || others.length > 0 || !isUntold(draft)) return;
  const led = items
    .slice(Math.max(0, draft.index - 4), draft.index)
    .map(({ text }) => text)
    .join(" ");
  if (!down.test(led)) return;
  const last = readings[readings.length - 1];
  const was = last?.quantity === "temperature" && last.at === "box" ? last.value : undefined;
  const named = items.some(({ text, label }) => cold.test(text) || label?.place === "box");
  if (was === undefined && !named) return;
  const step = units === "us" ? (draft.value - 32) / 1.8 : draft.value;
  if (typeof was === "number" && Math.abs(step - was) > mostK) return;
  draft.hint = "temperature";
  draft.place = "box";
}
