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
  "valve_steps",
  "valve_opening",
  "airflow",
  "static_pressure",
  "superheat",
  "subcooling",
]);

/** Steps that valves have from shut to open; common practice, no source. */
const strokes: ReadonlySet<number> = new Set([480, 500, 1000, 1500, 2000, 2500]);

/** "eev at 312/500": where the valve stands, and how many steps it has. */
function ofStroke(left: Draft, right: Draft): boolean {
  const valve = /^valve_/.test(left.named ?? left.hint ?? "");
  return valve && left.unit === undefined && left.value <= right.value && strokes.has(right.value);
}

/** "eev 312 of 500 steps": what both count stands behind the second. */
function stepsOf(left: Draft, right: Draft): void {
  if (right.unit?.dimension !== "steps" || left.unit !== undefined) return;
  if (left.named !== "valve_opening" && left.hint !== "valve_opening") return;
  left.unit = right.unit;
  left.named = "valve_steps";
}

function isOutOf(items: readonly Item[], left: Draft, right: Draft): boolean {
  const [joint, ...more] = items.slice(left.index + 1, right.index);
  // "out of" is one item, and longer than the "out" of "52 out 18"
  const of = joint?.text === "of" || (joint?.text === "out" && joint.to > joint.from + 3);
  if (joint?.text === "/" && more.length === 0) return ofStroke(left, right);
  return of && /^(?:(?:a|an|its|the) ?)?(?:rated|possible|max)?$/.test(textOf(more));
}

const textOf = (items: readonly Item[]): string => items.map(({ text }) => text).join(" ");

/** "blower 3.1 of 6.4 amps", "cap 31 out of 40": what was measured, and the full figure that it is part of. */
export function outOf(items: readonly Item[], drafts: readonly Draft[]): void {
  drafts.forEach((right, order) => {
    const left = drafts[order - 1];
    if (left === undefined || left.gone || right.gone || left.rating !== undefined) return;
    if (!isOutOf(items, left, right)) return;
    stepsOf(left, right);
    if (!sameDimension(left, right)) return;
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
