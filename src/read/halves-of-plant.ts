import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";
import type { Note } from "./note.ts";

/** Psi that the suction of a rack has at most; common practice, no source. */
const mostPsi = 90;

/** "low temp is", "the medium temp side's at", "MT": what the gauge of a half of the plant is told by, right before its figure. */
const half =
  /\b((?:low|lo|med|medium|mid)[ -]temp(?:erature)?s?|lt|mt)(?:'s)?(?: (?:rack|side|group|grp|suction|suct|suctions)(?:'?s)?)?(?: (?:pressure|psi))?(?: (?:is|at|its|was|running|sitting|holding|about|around|now|still))*[ :=]*$/;
/** As far back as such a name reaches. */
const reach = 60;

/** The half that a figure is told of: "low temp" or "medium temp"; empty where it is told of none. */
function halfOf(draft: Draft, items: readonly Item[], plain: string): string {
  const item = items[draft.index];
  if (draft.gone || item?.kind !== itemKind.number) return "";
  // CO2 stands higher, and then its unit is said
  if (draft.value > mostPsi && draft.unit?.dimension !== "pressure") return "";
  if (draft.action !== undefined || draft.rating !== undefined || draft.points !== undefined)
    return "";
  const name = half.exec(plain.slice(Math.max(0, item.from - reach), item.from))?.[1] ?? "";
  if (name === "") return "";
  return name.startsWith("l") ? "low temp" : "medium temp";
}

/** Pounds of gas: "low temp rack 5 pounds of 448", "low temp 5 lb added". */
function weighed(draft: Draft, items: readonly Item[]): boolean {
  return /^(?:of|added|charged|in|into|out|low|short|oz)$/.test(items[draft.index + 1]?.text ?? "");
}

/** "medium temp suction is 22 pounds and low temp is five": each half of a plant has its suction's gauge. */
export function halvesOfPlant(drafts: readonly Draft[], items: readonly Item[], note: Note): void {
  const psi = unitCalled("psi");
  const halves = new Map(drafts.map((draft) => [draft, halfOf(draft, items, note.plain)]));
  const told = drafts.filter((draft) => halves.get(draft) !== "");
  const gauged = told.filter(({ unit, index }) => {
    const pounds = unit?.figure === "lb" && !items[index]?.loose;
    return unit?.dimension === "pressure" || pounds;
  });
  const any = gauged.find((draft) => !weighed(draft, items));
  const rack = drafts.find(({ subject }) => /^rack \w+$/.test(subject ?? ""))?.subject;
  for (const draft of told) {
    const pounds = draft.unit?.figure === "lb" && !weighed(draft, items);
    const sucks =
      draft.place === "suction" && draft.hint === "pressure" && draft.unit === undefined;
    const alike = draft.unit === undefined && any !== undefined;
    if (draft.unit?.dimension !== "pressure" && !pounds && !alike && !sucks) continue;
    if (!sucks || alike) {
      if (draft.unit?.dimension !== "pressure") draft.unit = psi;
      if (alike) draft.assumedUnit = true;
      draft.named = "pressure";
      draft.hint = undefined;
    }
    draft.place = "suction";
    const name = halves.get(draft) ?? "";
    if (draft.subject === undefined || (draft.subject === rack && told.length > 1))
      draft.subject = rack === undefined ? name : `${rack} ${name}`;
  }
}
