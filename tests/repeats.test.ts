import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { poissonTail } from "../src/physics/poisson-tail.ts";
import { repeatLine } from "../src/show/repeat-line.ts";
import { playConversation } from "./support/conversation.ts";
import { lintReply } from "./support/lint-reply.ts";

describe("the chance of so many failures", () => {
  /** Cumulative Poisson probabilities P(X <= k), as printed to three places in the usual tables; from memory. */
  const table: readonly (readonly [mean: number, k: number, atMost: number])[] = [
    [0.1, 0, 0.905],
    [0.1, 1, 0.995],
    [0.5, 0, 0.607],
    [0.5, 1, 0.91],
    [0.5, 2, 0.986],
    [1, 0, 0.368],
    [1, 2, 0.92],
    [1, 3, 0.981],
    [2, 1, 0.406],
    [2, 4, 0.947],
    [5, 4, 0.44],
    [5, 9, 0.968],
    [10, 9, 0.458],
    [10, 15, 0.951],
  ];
  test.each(table)("mean %f, at most %i: %f", (mean, k, atMost) => {
    expect(1 - (poissonTail(k + 1, mean) ?? Number.NaN)).toBeCloseTo(atMost, 3);
  });

  test("against the sum of its terms, each from the formula", () => {
    const term = (k: number, mean: number): number => {
      let value = Math.exp(-mean);
      for (let i = 1; i <= k; i++) value *= mean / i;
      return value;
    };
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.double({ min: 0.01, max: 8, noNaN: true }),
        (count, mean) => {
          const fewer = Array.from({ length: count }, (_, k) => term(k, mean));
          const wanted = 1 - fewer.reduce((sum, one) => sum + one, 0);
          expect(poissonTail(count, mean)).toBeCloseTo(wanted, 10);
        },
      ),
      { numRuns: 300, seed: 7 },
    );
  });

  test("no events or fewer are sure; outside its range there is no number", () => {
    expect(poissonTail(0, 3)).toBe(1);
    expect(poissonTail(-1, 3)).toBeUndefined();
    expect(poissonTail(1.5, 3)).toBeUndefined();
    expect(poissonTail(2, -1)).toBeUndefined();
    expect(poissonTail(2, 701)).toBeUndefined();
  });
});

test("two failures are listed without a rate, three with one", () => {
  const two = { component: "compressor", jobs: [1, 4], months: 14, per_100_unit_years: 3 };
  expect(repeatLine(two)).toBe("2 compressors in this building in 14 months, jobs 1 and 4.");
  const three = repeatLine({ ...two, jobs: [1, 4, 9], chance: 0.0017 });
  expect(three).toContain("by chance about once in 590".replace("by", "By"));
  expect(lintReply(three, { lines: 1, words: 60 })).toEqual([]);
});

test("the third compressor in a building is said when the job opens", () => {
  const visit = (day: string): string =>
    [
      `= ${day}`,
      "08:00 maren: New job: Gull Wharf Lofts OU-3, trips. Bram",
      "08:20 bram: on site gull wharf",
      "14:00 bram: comp 1 replaced",
      "15:00 bram: done, leaving gull wharf",
    ].join("\n");
  const days = ["2025-06-10", "2025-11-03", "2026-03-02"].map(visit).join("\n");
  const last = "= 2026-05-12\n08:00 maren: New job: Gull Wharf Lofts OU-3, trips again. Bram";
  const { replies } = playConversation(`# repeats\n${days}\n${last}`);
  expect(replies.at(-1)).toMatch(/3 compressors in this building in 14 months, jobs 1, 2 and 3\./);
  expect(replies.at(-1)).toMatch(/By chance about once in \d+/);
});
