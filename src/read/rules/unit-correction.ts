import type { Reading } from "../../model.ts";
import type { Unit } from "../../quantities/quantity.ts";
import { isStrongBreak } from "../breaks.ts";
import { type Item, itemKind } from "../item.ts";
import { unitCalled } from "../kinds.ts";
import type { Note, Rule } from "../note.ts";
import { valueAs } from "../value-as.ts";
import { role } from "../word.ts";

const around =
  /^(?:not|no|i|mean|meant|sorry|sry|srry|oops|that|thats|was|were|is|its|all|in|,|\.|!|-|[cf])$/;

/** "C not F", "thats C sry": a scale by its letter alone, where nothing else is said. */
function scaleOf(item: Item, items: readonly Item[]): Unit | undefined {
  if (item.kind === itemKind.unit) return item.unit;
  if (!/^[cf]$/.test(item.text) || !items.every(({ text }) => around.test(text))) return undefined;
  return unitCalled(item.text.toUpperCase());
}

/** The two units of "kPa not psi": the right one, the wrong one. */
function unitsOf(
  items: readonly Item[],
): readonly [right: Unit | undefined, wrong: Unit | undefined] {
  const found = items.filter((item) => scaleOf(item, items) !== undefined);
  if (found.length === 0 || found.length > 2) return [undefined, undefined];
  const [first, second] = found;
  const unitOf = (item: Item | undefined): Unit | undefined =>
    item === undefined ? undefined : scaleOf(item, items);
  const not = items.findIndex((item) => item.text === "not");
  if (second === undefined) return [unitOf(first), undefined];
  const at = items.indexOf(second);
  return not >= 0 && not > items.indexOf(first ?? second) && not < at
    ? [unitOf(first), unitOf(second)]
    : [unitOf(second), unitOf(first)];
}

function reread(reading: Reading, unit: Unit, note: Note): Reading | undefined {
  // "n2 300 microns", "psi I mean": what a gauge shows, no vacuum
  const gauge = reading.quantity === "vacuum" && unit.dimension === "pressure";
  const quantity = gauge ? "pressure" : reading.quantity;
  const value = valueAs(reading, quantity, unit);
  if (value === undefined) return undefined;
  const last = note.items[note.items.length - 1]?.to ?? 0;
  const all = note.text.trimEnd().length;
  const span: readonly [number, number] = [0, last < all - 1 ? last : all];
  return {
    ...reading,
    quantity,
    value,
    figure: { number: reading.figure.number, unit: unit.figure },
    corrects: true,
    assumed: [],
    said: note.text.slice(span[0], span[1]),
    spans: [span],
    rule: unitCorrections.name,
  };
}

/** "kPa not psi", "gig not meg sry", "that was bar": the last numbers again in another unit. */
export const unitCorrections: Rule = {
  name: "<unit> not <unit>",
  needs: "context",
  apply: (whole) => {
    // "bar not psi. and suction temp is 11": what comes in the next sentence is said for itself
    const end = whole.items.findIndex(isStrongBreak);
    const note = end < 0 ? whole : { ...whole, items: whole.items.slice(0, end) };
    const { items, context } = note;
    if (context.readings.length === 0 || items.length > 12) return;
    if (
      items.some(
        (item) =>
          item.kind === itemKind.number ||
          item.kind === itemKind.over ||
          item.kind === itemKind.points,
      )
    )
      return;
    if (!items.some((item) => (item.roles & (role.correct | role.not)) !== 0)) return;
    const [right, wrong] = unitsOf(items);
    if (right === undefined) return;
    const latest = context.readings.slice(-Math.max(1, context.latest));
    const fitting = latest.filter(
      (reading) =>
        wrong === undefined ||
        unitCalled(reading.figure.unit)?.figure === wrong.figure ||
        reading.assumed.includes("unit") ||
        unitCalled(reading.figure.unit)?.dimension === wrong.dimension,
    );
    let any = false;
    for (const reading of fitting) {
      if (unitCalled(reading.figure.unit)?.figure === right.figure) continue;
      const again = reread(reading, right, note);
      if (again === undefined) continue;
      note.readings.push(again);
      any = true;
    }
    if (any) for (const item of items) item.owner = unitCorrections.name;
  },
};
