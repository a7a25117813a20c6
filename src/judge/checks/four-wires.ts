import type { Finding } from "../../model.ts";
import { unbalancePercent } from "../../physics/unbalance.ts";
import { percentWords } from "../words.ts";

/** Percent from the mean by a meter that its own leads can't deceive, and by a hand meter. Source: maintenance literature on unbalanced current: 2 and 5. */
export const balancedPercent = 2;
export const investigatePercent = 5;

const fourWires =
  /\b(?:micro|milli)-?ohm|\bfour.?wire|\b4.?wire|\bkelvin (?:clip|bridge|lead|meter)|\blow.?ohm/;

/** Three pairs by four wires: 2 percent is the limit there and not 5; undefined where that decides nothing. */
export function byFourWires(
  values: readonly number[],
  coarse: number,
  words: string,
): (Pick<Finding, "level" | "says" | "missing"> & { readonly sign?: string }) | undefined {
  const off = unbalancePercent(values) ?? 0;
  const fair = off > Math.max(balancedPercent, coarse) && off <= investigatePercent;
  if (values.length !== 3 || !fair || !fourWires.test(words)) return undefined;
  return {
    level: "watch",
    says: `${percentWords(off, coarse)} percent from the mean by four wires, over 2: again at one temperature, and against its sister or its record`,
  };
}
