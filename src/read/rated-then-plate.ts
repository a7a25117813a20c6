import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "pulling 1.1 amps full load on the plate is 1.4": the load's name goes with the figure of the plate. */
export function ratedThenPlate(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || left.rating === undefined || right.rating !== "nominal") return;
    const name = left.behind.find((index) => items[index]?.label?.rating === left.rating);
    if (name === undefined || !/^(?:RLA|FLA|LRA)$/.test(left.rating)) return;
    if (!right.plate && !items.slice(name, right.index + 4).some(({ text }) => plate.test(text)))
      return;
    if (right.unit !== undefined && right.unit.dimension !== "current") return;
    right.rating = left.rating;
    right.named ??= left.named;
    left.rating = undefined;
  });
}

const plate = /^(?:plate|nameplate|np|tag|sticker|label)$/;
