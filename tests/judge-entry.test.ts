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

/** Regular expressions over a text, as most of judging is; about 1 ms where a judgement takes 2. */
function yardstick(): number {
  let found = 0;
  for (let at = 0; at < 330; at++)
    for (const word of ["valve", "lug", "drier", "comp"])
      if (new RegExp(`\\b${word}\\b.{0,${at}}\\b(?:hot|cold)\\b`).test(plainText)) found++;
  return found;
}

const plainText = "suction and head at the lugs, comp amps on all legs, volts at the lugs. ".repeat(
  4,
);

/** Yardsticks that a judgement may take: 4 ms where nothing else runs; measured 1.5 to 2.6, at any load. */
const yardsticks = 4;

function timeOf(work: () => unknown): number {
  const from = performance.now();
  work();
  return performance.now() - from;
}

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

  // a machine that others load is slower at everything: a yardstick of plain work, timed in turn with
  // each judgement, is slowed as much, and what is compared is how many of it a judgement takes
  it.skipIf(mutated)("is judged in the time of a fixed amount of plain work, about 2 ms", () => {
    expect(notes.flatMap((one) => one.readings)).toHaveLength(200);
    for (let warm = 0; warm < 150; warm++) judge(job);
    for (let warm = 0; warm < 20; warm++) yardstick();
    const pairs = Array.from({ length: 80 }, () => [timeOf(yardstick), timeOf(() => judge(job))]);
    const quickest = (at: 0 | 1) => Math.min(...pairs.map((pair) => pair[at] ?? Infinity));
    const [plain, judged] = [quickest(0), quickest(1)];
    console.log(
      `200 readings judged in ${judged.toFixed(2)} ms, ${(judged / plain).toFixed(2)} yardsticks`,
    );
    expect(judged / plain).toBeLessThan(yardsticks);
  });
});
