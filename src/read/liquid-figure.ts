import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";

/** Where a probe goes on with the next pipe; air, a box or a product says nothing of a gauge. */
export const onPipe = /^(?!box$|product$|oil$)(?!.*_air$)./;

function bareAt(items: readonly Item[], i: number): boolean {
  return items[i]?.kind === itemKind.number && items[i]?.unit === undefined;
}

/** Cel that a liquid line has; common practice, no source. */
const liquidCel = { from: 10, to: 65 } as const;

/** "discharge 82 degrees, shell 71, liquid 38": in a row of degrees, where no pressure is told. */
function amongDegrees(draft: Draft, items: readonly Item[]): boolean {
  if (draft.value < liquidCel.from || draft.value > liquidCel.to) return false;
  const gauged = items.some(
    ({ unit, label }, i) =>
      unit?.dimension === "pressure" ||
      (label?.hint === "pressure" && items[i + 1]?.unit?.dimension !== "temperature"),
  );
  const degrees = items.slice(0, draft.index).some(
    ({ unit, kind, label }, i) =>
      (kind === itemKind.number && unit?.dimension === "temperature") ||
      // "suction pipe 11, liquid 38"
      (label?.hint === "temperature" && onPipe.test(label.place ?? "") && bareAt(items, i + 1)),
  );
  return degrees && !gauged;
}

/** "head 27.5 bar, liquid 39": no liquid line has more pressure than the head. */
function overHead({ value }: Draft, items: readonly Item[]): boolean {
  if (value < liquidCel.from || value > liquidCel.to) return false;
  return items.some(
    ({ unit, value: head }, i) =>
      unit?.figure === "bar" && items[i - 1]?.text === "head" && value > head * 1.05,
  );
}

/** "liquid 344" is a pressure, "liq 106" a temperature; between them nobody knows. */
export function liquid(draft: Draft, items: readonly Item[], context: Context): Draft["quantity"] {
  if (context.units === "si")
    return amongDegrees(draft, items) || overHead(draft, items) ? "temperature" : undefined;
  if (draft.value > 165) return "pressure";
  return draft.value < 130 ? "temperature" : undefined;
}
