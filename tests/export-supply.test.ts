import { expect, test } from "vitest";
import { sheets, visit } from "./support/unit-history.ts";

test("each set of supply volts has its own unbalance, and the worst of the site is marked", async () => {
  const { rows } = await sheets({}, [
    ...visit(
      "2026-05-12",
      "L1-L2 461, L2-L3 228, L1-L3 233",
      "L1-L2 is 464, typo",
      "done, leaving",
    ),
    ...visit(
      "2026-06-02",
      "L1-L2 466, L2-L3 465, L1-L3 467",
      "24.6 V at the coil",
      "done, leaving",
    ),
  ]);
  const supply = rows("supply");
  expect(supply.map(({ V }) => V)).toEqual(["228", "233", "464", "466", "465", "467"]);
  // the mean of 464, 228 and 233 is 308.3, and 464 is 155.7 over it; of the second set 1 V in 466
  const unbalance = supply.map((row) => Number(row["unbalance percent"]));
  for (const one of unbalance.slice(0, 3)) expect(one).toBeCloseTo(50.5, 1);
  for (const one of unbalance.slice(3)) expect(one).toBeCloseTo(0.215, 2);
  expect(supply.map((row) => row["worst of site"])).toEqual(["yes", "yes", "yes", "", "", ""]);
});
