import type { Draft } from "./draft.ts";
import { inherit } from "./inherit.ts";
import { type Item, itemKind } from "./item.ts";

const holds =
  /^(?:vac|vacuum|pulled|pulling|valved|isolated|decay|micron|microns|hold|holds|holding|held|n2|nitrogen|nitro|still|rose|up)$/;

function held(draft: Draft, items: readonly Item[]): boolean {
  const dimension = draft.unit?.dimension;
  if (dimension !== undefined && dimension !== "pressure" && dimension !== "low_pressure")
    return false;
  return items
    .slice(0, draft.index + 3)
    .some(({ text, unit }) => holds.test(text) || unit?.figure === "micron");
}

/** "holding at 390", "still 300": the gauge in hand, looked at again. */
function looksAgain(items: readonly Item[], right: Draft): boolean {
  const before = items[right.index - 1]?.text ?? "";
  const word = before === "at" ? (items[right.index - 2]?.text ?? "") : before;
  return /^(?:holding|holds|held|hold|still)$/.test(word);
}

/** "pulled to 350, holding at 390 after fifteen": minutes that nobody named, behind what was pulled or pressed up. */
export function minutesAfter(drafts: readonly Draft[], items: readonly Item[]): void {
  const list = drafts.filter((draft) => !draft.gone && !draft.over && !draft.same);
  list.forEach((minutes, order) => {
    const value = list[order - 1];
    const first = list[order - 2];
    if (value === undefined || minutes.unit !== undefined || minutes.points !== undefined) return;
    if (items[minutes.index - 1]?.text !== "after" || minutes.index !== value.index + 2) return;
    const next = items[minutes.index + 1];
    const ends = next === undefined || next.kind === itemKind.sign || next.kind === itemKind.line;
    if (!ends || !(minutes.value >= 1 && minutes.value <= 240) || !held(value, items)) return;
    value.after = minutes.value * 60;
    value.behind = [...value.behind, minutes.index - 1, minutes.index];
    minutes.gone = true;
    const item = items[minutes.index];
    if (item !== undefined) item.owner = "after <minutes>";
    const ratio = first === undefined ? Number.NaN : value.value / first.value;
    const bare = value.unit === undefined && value.named === undefined && value.hint === undefined;
    if (first !== undefined && bare && looksAgain(items, value) && ratio > 0.3 && ratio < 5) {
      value.action = undefined;
      inherit(first, value);
    }
  });
}
