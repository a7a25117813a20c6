import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";
import { itemKind } from "./item.ts";

/** A, of what starts: no compressor of this trade draws more. Common practice, no source. */
const mostAmps = 400;

/** "board in, starts 6 then 11 then 18.2": what starts draws amps, whatever was measured before it. */
export function startsDraw(list: readonly Draft[], items: readonly Item[]): void {
  for (const draft of list) {
    const bare =
      draft.quantity === undefined &&
      draft.unit === undefined &&
      draft.named === undefined &&
      draft.place === undefined &&
      draft.points === undefined &&
      draft.rating === undefined;
    if (!bare || !(draft.value < mostAmps)) continue;
    const first = draft.series?.[0] ?? draft.value;
    const at = items.findIndex(
      (item, i) =>
        item.kind === itemKind.number && item.value === first && items[i - 1]?.text === "starts",
    );
    if (at < 0 || at > draft.index) continue;
    draft.quantity = "current";
    draft.assumedQuantity = true;
  }
}

const drew = /^(?:pull|draw|drew|hit|sits$|sitting$)/;

/** "pulling 112 amps locked rotor": what it draws, no plate. */
export function drewLocked(items: readonly Item[], draft: Draft): boolean {
  const near = [...draft.before, draft.index - 2, draft.index - 1];
  return near.some((index) => drew.test(items[index]?.text ?? ""));
}

/** "start 71 then 17.2 17.4 17.1": amps that settle, whatever was read before. */
export function behindStart(draft: Draft, list: readonly Draft[]): boolean {
  return list.some(
    (other) =>
      other.state === "start" &&
      (other.quantity ?? "current") === "current" &&
      other.index < draft.index &&
      other.value > draft.value,
  );
}
