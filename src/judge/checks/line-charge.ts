import type { Finding } from "../../model.ts";
import { lineChargeKg } from "../../physics/line-charge.ts";
import type { Check } from "../check.ts";
import { refrigerantOf } from "../circuit.ts";
import { type Figures, figuresOf } from "../figures.ts";
import { linesTold } from "../lines-told.ts";
import type { Scene } from "../scene.ts";

type Line = NonNullable<Scene["facts"]["line_set"]>[number];

/** What the liquid lines hold beyond the length that the plate's charge covers. */
export const lineCharge: Check = {
  name: "line_charge",
  examples: [
    {
      level: "good",
      notes: ["30 m of 3/8 liquid line"],
      equipment: {
        refrigerant: "R-410A",
        line_set: [{ line: "liquid", size_in: 0.375, length_m: 30, covered_m: 7.5 }],
      },
    },
    {
      level: "good",
      notes: ["liquid line is 3/8, 60 ft of it, the plate covers 25 ft"],
      equipment: { refrigerant: "R-410A" },
    },
  ],
  signs: [],
  judge: (scene) => {
    const lines = (scene.facts.line_set ?? linesTold(scene.words)).filter(isLiquid);
    if (lines.length === 0) return [];
    const refrigerant = refrigerantOf(scene);
    if (refrigerant === undefined) return [unknown("the refrigerant, as on the plate")];
    const added = lines.map((one) =>
      lineChargeKg(refrigerant, { outsideIn: one.size_in, lengthM: beyondM(one) }),
    );
    let totalKg = 0;
    for (const kg of added) {
      if (kg === undefined) return [unknown("a tube size of the table, 1/4 to 2-1/8 in outside")];
      totalKg += kg;
    }
    return [finding(totalKg, lines, figuresOf(scene))];
  },
};

/** Gas, suction and hot gas lines hold vapor, which weighs little. */
function isLiquid(line: Line): boolean {
  return !/suction|gas|vapou?r|discharge|hot/i.test(line.line);
}

function beyondM(line: Line): number {
  return Math.max(0, line.length_m - (line.covered_m ?? 0));
}

function finding(kg: number, lines: readonly Line[], figures: Figures): Finding {
  const none = kg === 0;
  return {
    about: "line set",
    check: "line_charge",
    level: "good",
    says: none
      ? "The lines are no longer than the plate's charge covers: nothing to add for them"
      : `The liquid ${lines.length === 1 ? "line holds" : "lines hold"} ${figures.mass(kg)} beyond what the plate covers; the maker's own figure for the length comes first`,
    brief: none ? "no addition for the lines" : `add ${figures.mass(kg)} for the lines`,
    values: { line_charge_kg: kg },
    basis: "ASTM B280",
    source: "bore by ASTM B280, liquid density at 100 F; gas lines left out",
  };
}

function unknown(missing: string): Finding {
  return {
    about: "line set",
    check: "line_charge",
    level: "unknown",
    says: `No addition for the lines without ${missing}`,
    brief: "line addition not computable",
    values: {},
    basis: "ASTM B280",
    missing,
  };
}
