import { describe, expect, it } from "vitest";
import { judgeNotes } from "../src/bot/judge-notes.ts";
import type { Check, CheckExample } from "../src/judge/check.ts";
import { checks } from "../src/judge/checks/list.ts";
import type { Level } from "../src/model.ts";

/** Each check's own examples: what it says that it judges good, bad or not at all. */

const rank: Readonly<Record<Level, number>> = { unknown: 0, good: 1, watch: 2, bad: 3 };

function levelOf(check: Check, example: CheckExample): Level | undefined {
  const { findings } = judgeNotes({
    equipment: example.equipment ?? {},
    site: example.site ?? {},
    notes: example.notes,
    ...(example.limits === undefined ? {} : { limits: example.limits }),
    units: "us",
  });
  return findings
    .filter((one) => one.check === check.name)
    .map((one) => one.level)
    .sort((a, b) => rank[b] - rank[a])[0];
}

const shown = checks.filter((one) => one.examples.length > 0);

describe.each(shown.map((check) => ({ name: check.name, check })))("$name", ({ check }) => {
  it.each(check.examples.map((example) => ({ said: example.notes.join("; "), example })))(
    "$example.level: $said",
    ({ example }) => {
      expect(levelOf(check, example)).toBe(example.level);
    },
  );
});

describe("the examples together", () => {
  it("are there for every check but the one that reads past jobs (see repeats.test.ts)", () => {
    const bare = checks.filter((one) => one.examples.length === 0).map((one) => one.name);
    expect(bare).toEqual(["history"]);
  });

  it("show every level in more than one check", () => {
    for (const level of ["good", "watch", "bad", "unknown"] as const) {
      const showing = checks.filter((one) => one.examples.some((each) => each.level === level));
      expect(showing.length, level).toBeGreaterThan(1);
    }
  });
});
