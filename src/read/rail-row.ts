import type { Context } from "./context.ts";
import type { Draft } from "./draft.ts";
import { type Item, itemKind } from "./item.ts";
import { takeFor } from "./recast.ts";

const rails: ReadonlyMap<string, string> = new Map([
  ["plus", "DC+"],
  ["positive", "DC+"],
  ["pos", "DC+"],
  ["p", "DC+"],
  ["+", "DC+"],
  ["minus", "DC-"],
  ["negative", "DC-"],
  ["neg", "DC-"],
  ["n", "DC-"],
  ["-", "DC-"],
]);
const joint = /^(?:side|rail|bus|is|was|to|reads|reading|:|=|dc)$/;
const outputs = ["U", "V", "W"] as const;
/** V that a diode of a module shows at most; common practice, no source. */
const mostV = 1;

/** The rail whose name leads the figure at `index`: "minus side .42", "to the positive rail .41". */
function railBefore(items: readonly Item[], index: number): string | undefined {
  let at = index - 1;
  while (joint.test(items[at]?.text ?? "")) at--;
  return rails.get(items[at]?.text ?? "");
}

function isBare(draft: Draft): boolean {
  const volts = draft.unit === undefined || draft.unit.dimension === "voltage";
  return volts && draft.points === undefined && draft.rating === undefined && draft.value < mostV;
}

/** "diode plus side .41 .41 .40, minus side .42 .41 .42": three figures of one rail are its three outputs in their order. */
export function railRow(
  drafts: readonly Draft[],
  items: readonly Item[],
  { readings }: Context,
): void {
  const said = items.some(({ label }) => label?.quantity === "diode_drop");
  if (!said && readings.at(-1)?.quantity !== "diode_drop") return;
  for (let at = 0; at + 2 < drafts.length; at++) {
    const row = drafts.slice(at, at + 3);
    const [first, , last] = row;
    if (first === undefined || last === undefined) return;
    const rail = railOf(first) ?? railBefore(items, first.index);
    if (rail === undefined || !row.every((one) => isBare(one) || one === first)) continue;
    const between = items.slice(first.index + 1, last.index);
    const close = between.every(
      ({ kind, text }) => kind === itemKind.number || /^(?:,|\/|and|&|n)$/.test(text),
    );
    if (!close || first.value >= mostV || first.points?.[0]?.length === 2) continue;
    row.forEach((draft, leg) => {
      takeFor(draft, "diode_drop", "V");
      draft.points = [[rail, outputs[leg] ?? ""]];
      draft.assumedPoints = true;
    });
  }
}

function railOf({ points }: Draft): string | undefined {
  const [one, ...more] = points ?? [];
  const lone = more.length === 0 && one?.length === 1 ? one[0] : undefined;
  return lone?.startsWith("DC") === true ? lone : undefined;
}
