import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** How far the same gas in the same pipe may be from what it was; our choice, no source. */
const nearPressure = 0.25;
const nearDegrees = 40;

const bare = (draft: Draft): boolean =>
  draft.unit === undefined &&
  draft.named === undefined &&
  draft.place === undefined &&
  draft.points === undefined &&
  !draft.gone &&
  !draft.over;

/** "at", "@", "this morning at"; words that belong together stand as the first of them */
const joining = /^(?:(?:this|the next|next|the|today|now)(?: morning)? )?(?:at|@|\/)$/;

const isWarmth = (draft: Draft): boolean =>
  bare({
    ...draft,
    unit: draft.unit?.dimension === "temperature" ? undefined : draft.unit,
    named: draft.named === "temperature" ? undefined : draft.named,
  });
/** "300 at 71", "gauge says 389 and the pipe is 69" */
const joint =
  /^(?:at|@|\/|,|and|with|the|pipe|pipes|pipe's|line|is|its|it's|now|w|reads|says|this|morning|today|overnight|still|again|temp|temperature)$/;

/** "300 at 71" behind "nitrogen 300 at 70 F": the pressure and the warmth of the pipe, looked at again. */
export function gasPairAgain(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  const list = drafts.filter((draft) => !draft.gone);
  const [left, right] = list;
  const [gas, pipe] = readings.slice(-2);
  if (left === undefined || right === undefined || list.length !== 2) return;
  if (gas?.quantity !== "pressure" || gas.at !== undefined) return;
  if (pipe?.quantity !== "temperature" || pipe.at !== undefined) return;
  const between = items.slice(left.index + 1, right.index);
  const joined =
    joining.test(between.map(({ text }) => text).join(" ")) ||
    (between.length > 0 && between.every(({ text }) => joint.test(text)));
  if (!joined || !bare(left) || !isWarmth(right)) return;
  const [pressure, degrees] = [Number(gas.figure.number), Number(pipe.figure.number)];
  const like = Math.abs(left.value - pressure) <= nearPressure * pressure;
  if (!like || !(Math.abs(right.value - degrees) <= nearDegrees)) return;
  left.named = "pressure";
  right.named = "temperature";
  left.subject ??= gas.subject;
  right.subject ??= pipe.subject;
}
