import type { Gap } from "./goes-left.ts";

/** How a machine stands that does not run, behind the other figure of two. */
const standing = /^(?:stopped|off|idle|idling|stop|standby|resting|unloaded|dead|down)$/;

/** "bus at 648 running 662 stopped": each figure has its state behind it. */
export function runsThenStands({ items, from, to }: Gap, next: number): boolean {
  if (next !== from || next + 1 !== to || items[next]?.label?.state !== "running") return false;
  const [behind, more] = [items[to + 1], items[to + 2]];
  const at = /^(?:at|when|while)$/.test(behind?.text ?? "") ? more : behind;
  return standing.test(at?.text ?? "");
}

/** "rise 71 plate max 60": behind a plate's word stands what bounds its figure. */
export function boundAhead({ items, to }: Gap, next: number): boolean {
  const says = /^(?:says|is|calls|for)$/.test(items[next + 1]?.text ?? "") ? 2 : 1;
  return (
    /^(?:max|maximum|min|minimum)$/.test(items[next + says]?.text ?? "") && next + says + 1 === to
  );
}
