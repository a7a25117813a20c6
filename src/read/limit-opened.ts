import type { UnitHabit } from "../model.ts";
import { type Draft, isUntold } from "./draft.ts";
import type { Item } from "./item.ts";
import { takeFor } from "./recast.ts";

const limit = /^(?:limit|rollout|hi-limit|klixon|snap disc|disc|overtemp)$/;
const moves =
  /^(?:opened|opens|open|opening|tripped|trips|tripping|kicked|cut|cutting|closed|closes|reset|resets|popped|out|set|rated)$/;
/** F (or Cel) at which the limit of a furnace or a heater moves; common practice, no source. */
const range = { us: [90, 350], si: [35, 180] } as const;

/** "limit opened at a hundred sixty": how warm it was where a heater's limit moved. */
export function limitOpened(
  drafts: readonly Draft[],
  items: readonly Item[],
  units: UnitHabit,
): void {
  const [least, most] = range[units];
  for (const draft of drafts) {
    if (draft.gone || !isUntold(draft) || draft.value < least || draft.value > most) continue;
    const [near, before] = [items[draft.index - 1]?.text ?? "", items[draft.index - 2]?.text ?? ""];
    const verb = /^(?:at|around|about|@)$/.test(near) ? before : near;
    if (!moves.test(verb)) continue;
    const led = items.slice(Math.max(0, draft.index - 6), draft.index);
    if (!led.some(({ text }) => limit.test(text))) continue;
    if (led.some(({ text }) => /^(?:pressure|high pressure|hp|lp|low|oil|amp|amps)$/.test(text)))
      continue;
    takeFor(draft, "temperature", units === "si" ? "C" : "F");
  }
}
