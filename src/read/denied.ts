import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** "head was 314 not 340": the second is what it was not, where nothing was corrected by it. */
export function dropNots(drafts: readonly Draft[], items: readonly Item[]): void {
  drafts.forEach((draft, order) => {
    const left = drafts[order - 1];
    const item = items[draft.index];
    if (left === undefined || item === undefined || draft.gone || left.gone) return;
    if (items[draft.index - 1]?.text !== "not") return;
    const joint = /^[,.]$/.test(items[draft.index - 2]?.text ?? "");
    if (left.index !== draft.index - (joint ? 3 : 2)) return;
    draft.gone = true;
    item.owner = "not <value>";
    if (left.unit === undefined && draft.unit !== undefined) {
      left.unit = draft.unit;
      left.ownUnit = true;
    }
    left.behind = [...left.behind, draft.index];
  });
}

/** "thats unit 2 not 1", "at 250v not 500", "was 72 typo": a name or a figure that is denied, no value. */
export function dropDenied(drafts: readonly Draft[], items: readonly Item[]): void {
  for (const [order, draft] of drafts.entries()) {
    const item = items[draft.index];
    if (draft.gone || item === undefined || item.kind !== itemKind.number) continue;
    const [word, left, behind] = [-1, -2, 1].map((step) => items[draft.index + step]);
    const name = left?.kind === itemKind.subject && item.unit === undefined && draft.value <= 40;
    const tester = left?.unit?.dimension === "voltage" && item.unit === undefined;
    const typo = word?.text === "was" && /^(?:typo|wrong|mistake)$/.test(behind?.text ?? "");
    const first = drafts[0] !== draft && /^[(,]$/.test(left?.text ?? "");
    // "not 7.4, 14.7 amps": what it was not stands first
    const leads =
      left === undefined && behind?.text === "," && drafts[order + 1]?.index === draft.index + 2;
    if (!(word?.text === "not" && (name || tester || leads)) && !(typo && first)) continue;
    draft.gone = true;
    item.owner = "not <value>";
    const next = drafts[order + 1];
    if (name && next?.sentence === draft.sentence) next.subject ??= left.subject;
  }
}
