import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import type { Note } from "./note.ts";

/** Psi that the suction of a rack has at most; common practice, no source. */
const mostPsi = 90;

/** "low temp is", "the medium temp side's at", "MT": what the gauge of a half of the plant is told by, right before its figure. */
const half =
  /\b(?:(?:low|lo|med|medium|mid)[ -]temp(?:erature)?s?|lt|mt)(?:'s)?(?: (?:rack|side|group|grp|suction|suct|suctions)(?:'?s)?)?(?: (?:pressure|psi))?(?: (?:is|at|its|was|running|sitting|holding|about|around|now|still))*[ :=]*$/;
/** As far back as such a name reaches. */
const reach = 60;

function toldByHalf(draft: Draft, items: readonly Item[], plain: string): boolean {
  const item = items[draft.index];
  if (draft.gone || item?.kind !== itemKind.number || draft.value > mostPsi) return false;
  if (draft.action !== undefined || draft.rating !== undefined || draft.points !== undefined)
    return false;
  return half.test(plain.slice(Math.max(0, item.from - reach), item.from));
}

/** Pounds of gas: "low temp rack 5 pounds of 448", "low temp 5 lb added". */
function weighed(draft: Draft, items: readonly Item[]): boolean {
  return /^(?:of|added|charged|in|into|out|low|short|oz)$/.test(items[draft.index + 1]?.text ?? "");
}

/** "medium temp suction is 22 pounds and low temp is five": each half of a plant has its suction's gauge. */
export function halvesOfPlant(drafts: readonly Draft[], items: readonly Item[], note: Note): void {
  const psi = unitCalled("psi");
  const told = drafts.filter((draft) => toldByHalf(draft, items, note.plain));
  const gauged = told.filter(({ unit, index }) => {
    const pounds = unit?.figure === "lb" && !items[index]?.loose;
    return unit?.dimension === "pressure" || pounds;
  });
  const any = gauged.find((draft) => !weighed(draft, items));
  for (const draft of told) {
    const pounds = draft.unit?.figure === "lb" && !weighed(draft, items);
    const alike = draft.unit === undefined && any !== undefined;
    if (draft.unit?.dimension !== "pressure" && !pounds && !alike) continue;
    if (draft.unit?.dimension !== "pressure") draft.unit = psi;
    if (alike) draft.assumedUnit = true;
    draft.place = "suction";
    draft.named = "pressure";
    draft.hint = undefined;
  }
}
