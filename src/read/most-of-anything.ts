import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "hi limit 160", "max 160": the most of anything, where nothing tells of a motor. */
export function mostOfAnything(
  draft: Draft,
  list: readonly Draft[],
  items: readonly Item[],
): boolean {
  const near = items.slice(Math.max(0, draft.index - 2), draft.index);
  if (!near.some(({ text }) => /^(?:hi|high|max|maximum|highest|limit)$/.test(text))) return false;
  const motor =
    /^(?:amps?|start|starts|started|starting|startup|inrush|draws?|drawing|comp|compressor|pulls?|running|run)$/;
  return (
    !items.some(({ text }) => motor.test(text)) && !list.some((one) => one.quantity === "current")
  );
}
