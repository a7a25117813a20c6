import { describe, expect, it } from "vitest";
import { judgeNotes } from "../src/bot/judge-notes.ts";
import { judge } from "../src/judge/judge.ts";
import type { EquipmentFacts, Judgement } from "../src/model.ts";
import { amps, caseOf, note, r, volts } from "./case-builder.ts";
import { mutated } from "./support/mutated.ts";

const facts: EquipmentFacts = { drive: "line", phases: 3, supply_V: 460, rla_A: 20, lra_A: 130 };
const single: EquipmentFacts = { drive: "line", phases: 1, supply_V: 230, rla_A: 16, lra_A: 92 };

function judged(equipment: EquipmentFacts, ...notes: string[]): Judgement {
  return judgeNotes({ equipment, site: {}, notes, units: "us" });
}

/** Fault and level of each, which must not depend on the unit typed. */
function gist(judgement: Judgement) {
  return {
    first: judgement.diagnosis[0]?.fault,
    levels: judgement.findings.map((one) => `${one.check} ${one.level}`),
    chance: Number((judgement.diagnosis[0]?.probability ?? 0).toFixed(6)),
  };
}

describe("what was typed", () => {
  it.each([
    [
      facts,
      [
        "T1 84 megohm, T2 85 megohm, T3 84 megohm to ground",
        "T1 84000 kilohm, T2 85000 kilohm, T3 84000 kilohm to ground",
      ],
    ],
    [
      facts,
      ["all three to ground 2.2 gigohm at 500 V", "all three to ground 2200 megohm at 500 V"],
    ],
    [
      single,
      ["run cap rated 40 microfarad reads 22 microfarad", "run cap rated 40 uf reads 22 mfd"],
    ],
    [
      facts,
      ["L1-L2 460 V, L2-L3 461 V, L1-L3 459 V", "L1-L2 0.460 kV, L2-L3 0.461 kV, L1-L3 0.459 kV"],
    ],
  ] as const)("in another unit of the same size changes no verdict", (equipment, [one, other]) => {
    expect(gist(judged(equipment, one)).first).toBeDefined();
    expect(gist(judged(equipment, other))).toEqual(gist(judged(equipment, one)));
  });

  it("split over several notes or put in one says the same", () => {
    const apart = judged(
      facts,
      "T1-T2 0.66, T2-T3 0.67, T1-T3 0.66 ohm",
      "all three to ground 900 megohm",
    );
    const together = judged(
      facts,
      "T1-T2 0.66, T2-T3 0.67, T1-T3 0.66 ohm, all three to ground 900 megohm",
    );
    expect(gist(together).first).toBe(gist(apart).first);
    expect(gist(together).levels.sort()).toEqual(gist(apart).levels.sort());
  });
});

describe("a job of 200 readings", () => {
  const hour = (at: number) => [
    note("comp amps on all legs", amps([12 + at / 10, 12.1, 12.05], { state: "running" })),
    note("volts at the lugs", volts([460 + at, 461, 459])),
    note(
      "suction and head",
      r("pressure", 8e5 + at * 100, { at: "suction" }),
      r("temperature", 12, { at: "suction" }),
      r("pressure", 25e5, { at: "liquid" }),
      r("temperature", 35, { at: "liquid" }),
    ),
  ];
  const notes = Array.from({ length: 20 }, (_, at) => hour(at)).flat();
  const job = caseOf(
    { ...facts, refrigerant: "R-410A", metering: "expansion_valve", mode: "cooling" },
    notes,
  );

  // alone it takes under 2 ms, as the measurements show; here other tests run beside it
  it.skipIf(mutated)("is judged in about 2 ms", () => {
    expect(notes.flatMap((one) => one.readings)).toHaveLength(200);
    for (let warm = 0; warm < 150; warm++) judge(job);
    const times = Array.from({ length: 60 }, () => {
      const from = performance.now();
      judge(job);
      return performance.now() - from;
    }).sort((a, b) => a - b);
    // among the quickest: other work on the machine only makes it slower
    const quick = times[2] ?? Number.POSITIVE_INFINITY;
    console.log(`200 readings judged in ${quick.toFixed(2)} ms`);
    expect(quick).toBeLessThan(4);
  });
});
