import type { Gap } from "./goes-left.ts";
import { itemKind } from "./item.ts";

/** How a machine stands that does not run, behind the other figure of two. */
const standing = /^(?:stopped|off|idle|idling|stop|standby|resting|unloaded|dead|down)$/;

/** "bus at 648 running 662 stopped": each figure has its state behind it. */
export function runsThenStands({ items, from, to }: Gap, next: number): boolean {
  if (next !== from || next + 1 !== to || items[next]?.label?.state !== "running") return false;
  const [behind, more] = [items[to + 1], items[to + 2]];
  const at = /^(?:at|when|while)$/.test(behind?.text ?? "") ? more : behind;
  return standing.test(at?.text ?? "");
}

/** "rise is 52 plate says 40 to 70": the figure is told by its own word, the plate gives the range behind it. */
function rangeAhead({ items, from, to }: Gap, next: number): boolean {
  if (next + 1 !== to) return false;
  const is = /^(?:is|was|at|:|=)$/.test(items[from - 2]?.text ?? "");
  const told = items[is ? from - 3 : from - 2];
  const [joint, end] = [items[to + 1], items[to + 2]];
  const range = /^(?:to|-|thru|through)$/.test(joint?.text ?? "") && end?.kind === itemKind.number;
  const { quantity, hint } = told?.label ?? {};
  const named = quantity !== undefined || hint !== undefined || told?.text === "rise";
  return named && (range || !Number.isNaN(items[to]?.high ?? Number.NaN));
}

/** "rise 71 plate max 60": behind a plate's word stands what bounds its figure. */
export function boundAhead(gap: Gap, next: number): boolean {
  const { items, to } = gap;
  if (rangeAhead(gap, next)) return true;
  const says = /^(?:says|is|calls|for)$/.test(items[next + 1]?.text ?? "") ? 2 : 1;
  return (
    /^(?:max|maximum|min|minimum)$/.test(items[next + says]?.text ?? "") && next + says + 1 === to
  );
}
