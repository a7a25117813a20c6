import { judgeNotes } from "../../src/bot/judge-notes.ts";
import type { EquipmentFacts, Judgement } from "../../src/model.ts";

/** A split system of one speed with an expansion valve, cooling. */
export const split: EquipmentFacts = {
  kind: "split system",
  refrigerant: "R-410A",
  metering: "expansion_valve",
  mode: "cooling",
  drive: "line",
};

/** Notes judged as if they had just been filed on a job of such equipment. */
export function judgedNotes(equipment: EquipmentFacts, notes: readonly string[]): Judgement {
  return judgeNotes({ equipment, site: {}, notes: [...notes], units: "us" });
}
