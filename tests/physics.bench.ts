import { spawnSync } from "node:child_process";
import { bench, describe } from "vitest";
import { judge } from "../src/judge/judge.ts";
import { refrigerants } from "../src/physics/refrigerant.ts";
import { saturationPa } from "../src/physics/saturation-pressure.ts";
import { saturationCel } from "../src/physics/saturation-temperature.ts";
import { caseOf } from "./gas-case.ts";

/** Times of p(T), T(p) and of a full judgement, beside the reference library's where it is at hand. */

let turn = 0;
/** Another refrigerant and another value each time, so that nothing stays in a register. */
function next(): number {
  turn = (turn + 1) % 1_000;
  return turn;
}
const nameAt = (index: number) => refrigerants[index % refrigerants.length] ?? "R-410A";

describe("saturation", () => {
  bench("p(T), any of the refrigerants", () => {
    const index = next();
    saturationPa(nameAt(index), "dew", -30 + index / 12);
  });
  bench("T(p), any of the refrigerants", () => {
    const index = next();
    saturationCel(nameAt(index), "dew", 300_000 + 1_500 * index);
  });
});

const circuit = caseOf(
  { kind: "rooftop unit", refrigerant: "R-410A", metering: "expansion_valve", drive: "line" },
  [
    {
      text: "low side 106, line 77. head 334, liquid 102. outside 95",
      readings: [
        "p suction 106 psi",
        "t suction 77 F",
        "p discharge 334 psi",
        "t liquid 102 F",
        "t outdoor_air 95 F",
      ],
    },
  ],
);

describe("judging", () => {
  bench("a circuit's five readings, from readings to next checks", () => {
    judge(circuit);
  });
});

const python = process.env.COOLPROP_PYTHON ?? "python3";
const reference = `
import timeit
import CoolProp.CoolProp as CP
n = 2000
for label, call in (("p(T)", "CP.PropsSI('P','T',280.0,'Q',1,'R134a')"), ("T(p)", "CP.PropsSI('T','P',400000.0,'Q',1,'R134a')")):
    print(label, round(1e6 * timeit.timeit(call, globals=globals(), number=n) / n, 2), "microseconds with CoolProp from Python, R-134a")
`;
const ran = spawnSync(python, ["-c", reference], { encoding: "utf8", timeout: 60_000 });
console.log(
  ran.status === 0
    ? ran.stdout
    : `"${python}" has no CoolProp here, so no time of the reference library; name one in COOLPROP_PYTHON`,
);
