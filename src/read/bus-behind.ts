import type { Draft } from "./draft.ts";
import { type Item, wordsFrom } from "./item.ts";
import { takeFor } from "./recast.ts";

const standing = /^(?:stopped|off|idle|idling|stop|standby|resting|unloaded|dead|down)$/;

/** "disco pulled, meter says 0 on the bus": the place right behind a figure is its own, not that of the clause before. */
function onTheBus(draft: Draft, items: readonly Item[]): void {
  const [on, the, name, bus] = items
    .slice(draft.index + 1, draft.index + 5)
    .map(({ text }) => text);
  if (!/^(?:on|at|across)$/.test(on ?? "")) return;
  const noun = the === "the" ? name : the;
  const next = the === "the" ? bus : name;
  if (noun !== "bus" && noun !== "dc bus" && !(noun === "dc" && next === "bus")) return;
  draft.place = "dc_bus";
  draft.kind = "dc";
}

/** "five forty one with it running" */
const running =
  /^(?:(?:with|once|when|while) (?:it|she|the comp\w*|comp\w*) (?:is )?(?:running|runs|loaded|starts)|running|loaded|(?:under|on|at) (?:full )?load)\b/;

/** "bus at 648 running 662 stopped": the same bus, in its other state. */
function otherState(left: Draft | undefined, draft: Draft, items: readonly Item[]): void {
  if (left?.place !== "dc_bus" || draft.unit !== undefined || draft.named !== undefined) return;
  if (draft.points !== undefined || draft.rating !== undefined) return;
  const [next, after] = [items[draft.index + 1]?.text ?? "", items[draft.index + 2]?.text ?? ""];
  const stands = standing.test(/^(?:at|when|while)$/.test(next) ? after : next);
  const runs = running.test(wordsFrom(items, draft.index + 1, draft.index + 6));
  const far = draft.value / left.value;
  if (!(stands || runs) || far < 0.5 || far > 2) return;
  takeFor(draft, "voltage", "V");
  draft.place = "dc_bus";
  draft.kind = "dc";
}

export function busBehind(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((draft, order) => {
    if (draft.gone) return;
    if (draft.place === "supply") onTheBus(draft, items);
    otherState(drafts[order - 1], draft, items);
  });
}
