import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { takeFor } from "./recast.ts";

/** Inches of water in a duct at most, so that "sp 72" stays a set point. Common practice, no source. */
const most = 3;

const ofAir = /^(?:filter|filters|blower|duct|ducts|belt|fan|coil|plenum|airflow|sheave|cfm)$/;
const turns = /^(?:before|after|now|was|then|to)$/;

/** "sp .9 before .55 after", "filters plugged, sp 1.1": static pressure, where a set point has no such figure. */
export function ductStatic(list: readonly Draft[], items: readonly Item[]): void {
  const first = list.find((draft) => items[draft.index - 1]?.text === "sp");
  if (first === undefined || !isInches(first, items)) return;
  const others = list.filter((draft) => draft !== first && isInches(draft, items));
  const turned = others.filter((draft) => {
    const [before, behind] = [items[draft.index - 1]?.text, items[draft.index + 1]?.text];
    return turns.test(before ?? "") || turns.test(behind ?? "");
  });
  if (turned.length === 0 && !items.some(({ text }) => ofAir.test(text))) return;
  for (const draft of [first, ...turned]) {
    takeFor(draft, "static_pressure", "in wc");
    draft.rating = undefined;
    draft.place = undefined;
  }
}

function isInches(draft: Draft, items: readonly Item[]): boolean {
  const said = items[draft.index];
  if (draft.unit !== undefined || draft.points !== undefined || draft.over) return false;
  if (said?.kind !== itemKind.number || draft.gone) return false;
  return draft.value > 0 && draft.value <= most && !Number.isInteger(draft.value);
}
