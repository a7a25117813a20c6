import { describe, expect, it } from "vitest";
import { daysAgo } from "../src/judge/masses.ts";
import { pairPlaces } from "../src/judge/pairs.ts";
import { saidDateMs } from "../src/judge/said-date.ts";
import { noteOf } from "./gas-case.ts";

describe("a pressure and a temperature said as a pair", () => {
  it.each([
    ["131 psig, 57 F suction", ["p - 131 psi", "t suction 57 F"], ["suction", "suction"]],
    ["suction 125/54 F", ["p suction 125 psi", "t - 54 F"], ["suction", "suction"]],
    [
      "liquid 352 psi 100 F, 86 out",
      ["p liquid 352 psi", "t - 100 F", "t - 86 F"],
      ["liquid", "liquid", undefined],
    ],
    ["low side 99 psi, big line 60 F", ["p suction 99 psi", "t - 60 F"], ["suction", "suction"]],
    [
      "71 degrees on the big line, 109 on the small line",
      ["t - 71 F", "t - 109 F"],
      ["suction", "liquid"],
    ],
    ["suction 78, return 75 F", ["p suction 78 psi", "t - 75 F"], ["suction", undefined]],
    ["head 503 psi, 94 F", ["p discharge 503 psi", "t - 94 F"], ["discharge", undefined]],
    ["suction 131 psi. 85 F", ["p suction 131 psi", "t - 85 F"], ["suction", undefined]],
    ["suction 131 psi, 85 F outside", ["p suction 131 psi", "t - 85 F"], ["suction", undefined]],
  ] as const)("%s", (text, readings, places) => {
    const paired = pairPlaces(noteOf({ text, readings }));
    expect(paired.readings.map((one) => one.at)).toEqual([...places]);
  });
});

describe("when the last addition was", () => {
  const now = Date.UTC(2026, 5, 30);
  it.each([
    ["march 2", "2026-03-02"],
    ["on the 14th of November", "2025-11-14"],
    ["Nov 14, 2024", "2024-11-14"],
    ["2026-01-09", "2026-01-09"],
  ])("reads the date in: %s", (words, date) => {
    const ms = saidDateMs(words, now);
    expect(ms === undefined ? undefined : new Date(ms).toISOString().slice(0, 10)).toBe(date);
  });

  it.each([
    ["402 days back", 402],
    ["about three weeks ago", 21],
    ["a year ago", 365],
    ["2 months ago", 60],
  ])("counts the days in: %s", (words, days) => {
    expect(daysAgo(words)).toBe(days);
  });

  it("finds no date where none is said", () => {
    expect(saidDateMs("last spring", now)).toBeUndefined();
    expect(daysAgo("a while ago")).toBeUndefined();
  });
});
