import type { Draft } from "./draft.ts";
import { sameDimension } from "./inherit.ts";
import type { Item } from "./item.ts";

/** What a plate or a size gives a full figure for. */
const rated: ReadonlySet<string> = new Set([
  "current",
  "voltage",
  "capacitance",
  "frequency",
  "speed",
  "steps",
  "valve_opening",
  "airflow",
  "static_pressure",
  "superheat",
  "subcooling",
]);

function isOutOf(items: readonly Item[], left: Draft, right: Draft): boolean {
  const [joint, ...more] = items.slice(left.index + 1, right.index);
  // "out of" is one item, and longer than the "out" of "52 out 18"
  const of = joint?.text === "of" || (joint?.text === "out" && joint.to > joint.from + 3);
  return of && /^(?:(?:a|an|its|the) ?)?(?:rated|possible|max)?$/.test(textOf(more));
}

const textOf = (items: readonly Item[]): string => items.map(({ text }) => text).join(" ");

/** "blower 3.1 of 6.4 amps", "cap 31 out of 40": what was measured, and the full figure that it is part of. */
export function outOf(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || left.gone || right.gone || left.rating !== undefined) return;
    if (!isOutOf(items, left, right) || !sameDimension(left, right)) return;
    const unit = left.unit ?? right.unit;
    const kind = left.named ?? left.hint ?? unit?.dimension;
    if (kind === undefined || !rated.has(kind) || right.value < left.value * 0.2) return;
    if (unit !== undefined) {
      left.unit ??= unit;
      right.unit ??= unit;
    }
    right.named ??= left.named;
    right.hint ??= left.hint;
    right.subject ??= left.subject;
    if (unit?.dimension === "steps" || kind === "valve_opening") {
      // the steps that a valve has at all are no reading of it
      const full = items[right.index];
      if (full !== undefined) full.owner = "of <value>";
      right.gone = true;
      left.behind = [...left.behind, right.index];
    } else right.rating ??= kind.startsWith("su") ? "expected" : "nominal";
  });
}
