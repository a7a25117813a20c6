import { isStrongBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "okay took three out": gas, though no unit says it; nobody takes degrees out. */
export function tookOut(items: readonly Item[], draft: Draft): void {
  const [verb, out, end] = [-1, 1, 2].map((step) => items[draft.index + step]);
  if (!/^(?:took|taken|taking|sucked|drew)$/.test(verb?.text ?? "") || out?.text !== "out") return;
  if (draft.unit !== undefined || draft.named !== undefined || draft.points !== undefined) return;
  if (end !== undefined && !isStrongBreak(end) && !/^(?:,|so|and)$/.test(end.text)) return;
  draft.action = "recovered";
  draft.hint = undefined;
  draft.place = undefined;
}
