import { describe, expect, it } from "vitest";
import { cautions } from "../src/judge/cautions/list.ts";
import { checks } from "../src/judge/checks/list.ts";
import { faults, sideOf } from "../src/judge/faults/list.ts";
import { signGroups } from "../src/judge/signs/list.ts";
import { steps } from "../src/judge/steps/list.ts";
import { faults as faultNames, observations } from "../src/vocabulary.ts";

/** "group:outcome" stands in the tables. */
function isKnown(sign: string): boolean {
  const [group = "", outcome = ""] = sign.split(":");
  return signGroups.get(group)?.background[outcome] !== undefined;
}

/** What no sentence to a technician may say. */
const forbidden = /\b(?:normal|certainly|definitely|compliant|replace it)\b|[^\x20-\x7e]/i;

describe("the lists of judging", () => {
  it("hold every fault of the vocabulary once", () => {
    expect(faults.map((one) => one.fault).sort()).toEqual([...faultNames].sort());
  });

  it("name in checks and faults only signs that have a background", () => {
    const named = [
      ...checks.flatMap((one) => one.signs),
      ...faults.flatMap((one) => Object.keys(one.shows)),
    ];
    expect(named.filter((sign) => !isKnown(sign))).toEqual([]);
  });

  it("have each test's outcomes sum to about 1 and stay between 0 and 1", () => {
    for (const { group, background, remarks } of signGroups.values()) {
      const shares = Object.values(background);
      expect(Math.min(...shares), group).toBeGreaterThan(0);
      expect(Math.max(...shares), group).toBeLessThan(1);
      if (remarks === true) continue;
      expect(
        shares.reduce((sum, one) => sum + one, 0),
        group,
      ).toBeCloseTo(1, 1);
    }
  });

  it("give probabilities between 0 and 1, a source and a frequency to each fault", () => {
    for (const one of faults) {
      expect(one.common, one.fault).toBeGreaterThan(0);
      expect(one.source, one.fault).not.toBe("");
      for (const [sign, chance] of Object.entries(one.shows)) {
        expect(chance, `${one.fault} ${sign}`).toBeGreaterThan(0);
        expect(chance, `${one.fault} ${sign}`).toBeLessThan(1);
      }
    }
  });

  it("give each fault but the two open ones a proof", () => {
    const bare = faults.filter((one) => one.proof.length === 0).map((one) => one.fault);
    expect(bare.sort()).toEqual(["no_fault", "other"]);
  });

  it("leave each electrical fault a step that no earlier look can use up", () => {
    const used = faults.filter(
      (one) =>
        sideOf(one) === "electrical" &&
        one.proof.every((step) => step.fills.some((group) => signGroups.has(group))),
    );
    expect(used.map((one) => one.fault)).toEqual([]);
  });

  it("put an observation in one group at most", () => {
    const placed = [...signGroups.values()]
      .filter((one) => one.remarks === true)
      .flatMap((one) => Object.keys(one.background))
      .filter((name) => observations.some((one) => one === name));
    expect(placed.filter((name, at) => placed.indexOf(name) !== at)).toEqual([]);
  });

  it("say cautions in at most 140 plain letters, each with its source", () => {
    for (const one of cautions) {
      expect(one.says.length, one.says).toBeLessThanOrEqual(140);
      expect(one.says, one.id).not.toMatch(forbidden);
      expect(one.source, one.id).not.toBe("");
    }
  });

  it("say next checks in plain letters without forbidden words", () => {
    for (const one of [...steps, ...faults.flatMap((fault) => fault.proof)]) {
      expect(one.why).not.toMatch(forbidden);
      expect(one.minutes).toBeGreaterThan(0);
    }
  });
});
