import type { Draft } from "./draft.ts";

/** "entering wet bulb 66 leaving 57": air, no water; whether what leaves is wet or dry nobody said. */
export function enteringBulb(drafts: readonly Draft[]): void {
  drafts.forEach((bulb, order) => {
    if (bulb.quantity !== "wet_bulb_temperature") return;
    if (bulb.place !== "water_in" && bulb.place !== "water_out") return;
    bulb.place = undefined;
    const next = drafts[order + 1];
    const other = next?.place === "water_out" && next.quantity === "temperature";
    if (other && next.unit?.figure !== "C" && next.named === undefined) next.question = "quantity";
  });
}
