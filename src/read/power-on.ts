import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

const switched = /^(?:power|breaker|disconnect|disco)$/;
const onNow = /^(?:on|back|back on|is on|restored|up)$/;
const offNow = /^(?:off|out|down|dead|killed|cut|locked|isolated|is off|is out|gone)$/;
const runs = /^(?:running|runs|started|starts|energized|energised|live|powered)$/;

const isSwitch = (items: readonly Item[], i: number): boolean =>
  switched.test(items[i]?.text ?? "") && onNow.test(items[i + 1]?.text ?? "");

/** Does a message tell that the machine is live now? No insulation is read on it then. */
const isLive = (items: readonly Item[]): boolean =>
  items.some(({ text }, i) => runs.test(text) || isSwitch(items, i));

/** An insulation test that was going on is over where the machine is live. */
export function whileLive(context: Context, items: readonly Item[]): Context {
  if (context.live !== true && !isLive(items)) return context;
  const { test: _, ...rest } = context;
  return { ...rest, live: true };
}

const isCut = (items: readonly Item[], i: number): boolean =>
  switched.test(items[i]?.text ?? "") && offNow.test(items[i + 1]?.text ?? "");

/** "Power back on, L1 11.2", "power off, T1-T2 0.42": what was switched, no kilowatts. */
export function powerSwitched(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const draft of drafts) {
    if (draft.named !== "power" || draft.unit !== undefined) continue;
    const at = draft.before.find((i) => items[i]?.text === "power");
    if (at !== undefined && (isSwitch(items, at) || isCut(items, at))) draft.named = undefined;
  }
}
