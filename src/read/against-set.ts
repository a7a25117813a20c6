import type { Reading } from "../model.ts";
import { adopt } from "./adopt.ts";
import type { Context } from "./context.ts";
import { type Draft, isUntold } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import { ratio } from "./near-value.ts";

/** How many times what is measured lies from what was set at most. Our choice, no source. */
const farthest = 4;
const gets =
  /(?:^|[ ,])(?:getting|reading|reads|reads?|shows|showing|actual|got|has|is|its|it's|at|only|now|measures|measured)$/;

/** How far a hold moves at most. Our choice, no source. */
const moved = 1.3;

function alone(drafts: readonly Draft[]): Draft | undefined {
  const [only, ...more] = drafts.filter(({ gone }) => !gone);
  return only !== undefined && more.length === 0 && isUntold(only) ? only : undefined;
}

/** "gettin 410" behind "max sp 650 cfm", "reading 77" behind "stat set 72": what is measured of what alone was set. */
export function againstSet(
  drafts: readonly Draft[],
  items: readonly Item[],
  context: Context,
): void {
  const only = alone(drafts);
  const told: readonly Reading[] = context.readings.slice(-context.latest);
  const [set, ...others] = told;
  if (only === undefined || set === undefined || context.latest !== 1 || others.length > 0) return;
  if (set.rating !== "setpoint" && set.rating !== "expected") return;
  const far = ratio(only.value, set);
  if (far > farthest || far < 1 / farthest) return;
  if (!gets.test(wordsFrom(items, only.index - 2, only.index))) return;
  adopt(only, set, context);
  only.named = only.quantity;
  only.place ??= set.at;
}

const stands =
  /(?:^|[ ,])(?:(?:holds|held|holding)(?: (?:overnight|all night|all weekend|over night|steady|solid|right|strong|there))?(?: at)?|(?:its|it is|is|sits|sitting|stands) (?:still )?at)$/;

/** "holds 600", "held overnight at 598", "its at 598" behind "n2 600 psi": the gauge of the hold, no weight. */
export function heldAgain(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  const [only, ...more] = drafts.filter(({ gone }) => !gone);
  const last = readings.findLast(({ quantity }) => quantity === "pressure");
  if (only === undefined || more.length > 0 || last === undefined || last.at !== undefined) return;
  const { unit, points, place, over } = only;
  const named = only.named === "mass" ? undefined : only.named;
  if ([unit, named, points, place].some((one) => one !== undefined) || over) return;
  if (!stands.test(wordsFrom(items, only.index - 5, only.index))) return;
  const far = ratio(only.value, last);
  if (far > moved || far < 1 / moved || last !== readings.at(-1)) return;
  only.named = "pressure";
  only.action = undefined;
  only.rating = undefined;
  only.hint = undefined;
  only.question = undefined;
}
