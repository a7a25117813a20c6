import { isStrongBreak, isWeakBreak } from "./breaks.ts";
import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** "380 cfm in the office and 290 in the lobby": the same twice, each in a place that we have no name for. */
function inEachPlace(draft: Draft, left: Draft, items: readonly Item[]): boolean {
  const joint = items[draft.index + 1]?.text ?? "";
  const flow = left.unit?.dimension === "airflow" && /^(?:in|at|on)$/.test(joint);
  // "amp draw's 8.8 on the blower and 1.3 on the fan"
  const amps = left.quantity === "current" && joint === "on";
  if (!(flow || amps) || items[left.index + 1]?.text !== joint) return false;
  return items[draft.index - 1]?.text === "and" || items[draft.index - 1]?.text === ",";
}

const loaded = /^(?:with|without|loaded|unloaded|under|no|idle|open)$/;

/** "244 with both fans on, 311 with one": the same twice, each behind its own condition. */
export function conditioned(draft: Draft, left: Draft, items: readonly Item[]): boolean {
  const joint = items[draft.index + 1]?.text;
  const before = items[draft.index - 1];
  const ratio = draft.value / left.value;
  if (before === undefined) return false;
  if (inEachPlace(draft, left, items)) return true;
  if (ratio > 3 || ratio < 1 / 3) return false;
  const with_ = items[left.index + 1]?.text;
  // "27.1 no load 23.8 w/ the contactor in"
  const loads = loaded.test(joint ?? "") && loaded.test(with_ ?? "") && draft.before.length === 0;
  if (loads && ratio > 0.6 && ratio < 1.6) {
    draft.place ??= left.place;
    draft.subject ??= left.subject;
    return true;
  }
  if (joint !== "with" && joint !== "without") return false;
  if (!isStrongBreak(before) && !isWeakBreak(before)) return false;
  if (with_ !== "with" && with_ !== "without") return false;
  draft.place ??= left.place;
  draft.points ??= left.points;
  draft.subject ??= left.subject;
  return true;
}
