import type { Draft } from "./draft.ts";
import { nearSupply } from "./guard.ts";
import { alive } from "./inherit.ts";
import { type Item, itemKind } from "./item.ts";
import { unitCalled } from "./kinds.ts";

const line = /^(?:l|line|leg|phase|ph)$/;
const other = /^(?:l|line|leg|phase|ph|n|neutral|neut|g|gnd|ground|earth)$/;
/** Legs in a row at most. */
const LEGS = 3;

/** Where "L-N", "line to neutral", "l to g" ends that begins at `i`; `i` where it is none. */
function pairEnd(items: readonly Item[], i: number, plain: string): number {
  if (!line.test(items[i]?.text ?? "") || items[i]?.kind === itemKind.number) return i;
  const joint = /^(?:-|\/|to)$/.test(items[i + 1]?.text ?? "");
  const at = joint ? i + 2 : i + 1;
  const item = items[at];
  if (item === undefined) return i;
  const said = plain.slice(item.from, item.to);
  const whole = !joint && item.kind === itemKind.ground;
  if (!whole && (!joint || !other.test(said))) return i;
  return /^[:=]$/.test(items[at + 1]?.text ?? "") ? at + 2 : at + 1;
}

/** Up to three bare figures behind it, with nothing but signs between. */
function rowFrom(items: readonly Item[], from: number, list: readonly Draft[]): Draft[] {
  const row: Draft[] = [];
  for (let i = from; i < items.length && row.length < LEGS; i++) {
    const draft = list.find(({ index }) => index === i);
    if (draft !== undefined && draft.unit === undefined && !draft.over) row.push(draft);
    else if (!/^(?:[/,&]|and|n)$/.test(items[i]?.text ?? "")) break;
  }
  return row;
}

/** "L-L 480/482/479 L-N 277/278/276": volts of a supply, where the figures are such. */
export function lineToLine(drafts: readonly Draft[], items: readonly Item[], plain: string): void {
  const list = alive(drafts);
  items.forEach((_, i) => {
    const end = pairEnd(items, i, plain);
    if (end === i) return;
    const row = rowFrom(items, end, list);
    const volts = row.filter(({ value }) => nearSupply(value));
    if (volts.length === 0 || row.some((one) => one.value !== 0 && !volts.includes(one))) return;
    for (const draft of row) {
      draft.named = "voltage";
      draft.hint = undefined;
      draft.points = undefined;
      draft.grounded = false;
      draft.unit = unitCalled("V");
      draft.assumedUnit = true;
    }
  });
}
