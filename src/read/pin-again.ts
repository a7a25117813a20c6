import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const pins: Readonly<Record<string, string>> = { run: "R", start: "S" };

/** "start to common's 5.1 run's 1.9": the other pin to common, no current of a run. */
export function pinAgain(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((draft, order) => {
    const pair = drafts[order - 1]?.points?.[0];
    const name = draft.before.find((index) => pins[items[index]?.text ?? ""] !== undefined);
    const pin = pins[items[name ?? -1]?.text ?? ""];
    if (pin === undefined || pair?.length !== 2 || !pair.includes("C") || pair.includes(pin))
      return;
    if (draft.points !== undefined || draft.named !== undefined) return;
    if (draft.unit !== undefined && draft.unit.dimension !== "resistance") return;
    draft.points = [[pin, "C"]];
    draft.named = "winding_resistance";
    draft.hint = undefined;
    draft.state = undefined;
  });
}
