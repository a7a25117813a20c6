import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { bareGauge } from "./gauges.ts";
import type { Item } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import { isNitrogen } from "./nitrogen-name.ts";

/** A pipe's warmth in a standing test. Common practice, no source. */
const pipeF = [20, 130] as const;
const pipeCel = [-10, 55] as const;

/** "400 psi at 75 F last night, 362 this morning at 74": pressure and temperature again, in that order. */
export function againAt(
  items: readonly Item[],
  drafts: readonly Draft[],
  { readings }: Context,
): void {
  const scale = readings.findLast(({ quantity }) => quantity === "temperature")?.figure.unit;
  const told = readings.some(({ quantity, at }) => quantity === "pressure" && at === undefined);
  const standing = told ? scale : undefined;
  const [least, most] = standing === "C" ? pipeCel : pipeF;
  const at = (left: Draft, right: Draft): boolean => {
    const joint = items[right.index - 1]?.text;
    const far = right.index - left.index;
    // "313 on the nitrogen and it's 68 this morning"
    if (/^(?:it'?s|its)$/.test(joint ?? "")) return far <= 8 && items.some(isNitrogen);
    return (joint === "at" || joint === "@") && far <= 5;
  };
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || !at(left, right)) return;
    if (right.unit === undefined && (right.value < least || right.value > most)) return;
    const first = drafts
      .slice(0, order - 1)
      .findIndex(
        (one, i) =>
          one.unit?.dimension === "pressure" ||
          (one.named === "pressure" && drafts[i + 1] !== left),
      );
    const gas = items.slice(left.index, right.index).some(isNitrogen);
    const pressure =
      left.unit?.dimension === "pressure" || ((first >= 0 || gas) && bareGauge(left));
    if (!pressure || right.points !== undefined || right.place !== undefined) return;
    if (right.unit !== undefined && right.unit.dimension !== "temperature") return;
    if (right.unit === undefined && standing === undefined && !items.some(isNitrogen)) return;
    if (left.unit === undefined) left.named = "pressure";
    right.named = "temperature";
    if (right.unit !== undefined || standing === undefined) return;
    right.unit = unitCalled(standing);
    right.assumedUnit = true;
  });
}
