import type { Draft } from "./draft.ts";
import type { Item } from "./item.ts";

/** V between two legs or more that a bare figure beside them can only be; common practice, no source. */
const leastVolts = 90;

/** The kind of thing that a name counts: "fan" of "fan 2". */
function kindOf(subject: string | undefined): string | undefined {
  return subject === undefined ? undefined : /^(.+) \S+$/.exec(subject)?.[1];
}

/**
 * "twelve amps on L1 and none on L2", "480 on A to B and nothing on B to C": nothing of what was measured
 * at the point before, in that unit; undefined where that was neither volts nor amps.
 */
export function zeroLike(
  drafts: readonly Draft[],
  order: number,
  items: readonly Item[],
): "V" | "A" | undefined {
  const zero = drafts[order];
  if (zero === undefined) return undefined;
  const like = drafts.slice(0, order).findLast((draft) => !draft.gone && !draft.zero);
  if (like === undefined || like.sentence !== zero.sentence) return undefined;
  const points = zero.points !== undefined && like.points !== undefined;
  // "compressor two dead" is how it stands, no amps of it
  const kind = items[zero.index]?.text === "dead" ? undefined : kindOf(zero.subject);
  const machines = kind !== undefined && kind === kindOf(like.subject);
  if (!points && !machines) return undefined;
  const behind = items.slice(zero.index + 1, zero.index + 6);
  const row = drafts.slice(0, order).findLast((draft) => draft.unit !== undefined && !draft.zero);
  const unit =
    like.unit ??
    (row?.sentence === zero.sentence ? row.unit : undefined) ??
    behind.find((item) => item.unit?.dimension === "current")?.unit;
  // "L2 is dead" beside amps may be its volts
  if (unit?.dimension === "current") return items[zero.index]?.text === "dead" ? undefined : "A";
  if (unit?.dimension === "voltage") return "V";
  if (unit !== undefined || !points) return undefined;
  return like.value >= leastVolts && like.named === undefined ? "V" : undefined;
}
