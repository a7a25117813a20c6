import { type Draft, isUntold } from "./draft.ts";
import type { Item } from "./item.ts";

const regulator = /^eprs?$/;
const side = /^(?:in|out|inlet|outlet|entering|leaving)$/;

/** "epr 52 in 38 out, set for 52": both ends of a valve that holds a pressure, and what it is set to hold. */
export function regulatorEnds(drafts: readonly Draft[], items: readonly Item[]): void {
  const at = items.findIndex(({ text }) => regulator.test(text));
  if (at < 0) return;
  const told = (draft: Draft): boolean =>
    [draft.index - 1, draft.index + 1].some((next) => side.test(items[next]?.text ?? ""));
  let held = false;
  for (const draft of drafts) {
    if (draft.index < at || draft.gone || draft.unit !== undefined) continue;
    const bare = draft.place === undefined || /_air$/.test(draft.place);
    const set = draft.rating === "setpoint" && (draft.named ?? draft.place) === undefined;
    const end = told(draft) && isUntold({ ...draft, place: undefined, hint: undefined }) && bare;
    if (!end && !(set && held)) continue;
    held = true;
    draft.named = "pressure";
    draft.hint = "pressure";
    draft.place = undefined;
  }
}
