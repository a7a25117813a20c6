import { describe, expect, it } from "vitest";
import { judge } from "../src/judge/judge.ts";
import { caseOf, note, r } from "./case-builder.ts";

const drive = { drive: "inverter", phases: 3, supply_V: 460 } as const;
const drop = (leg: string, value: number | "OL") =>
  r("diode_drop", value, { points: [leg, "DC+"], said: `${leg} to plus ${value}` });

function level(text: string, ...drops: readonly ReturnType<typeof drop>[]): string | undefined {
  const { findings } = judge(caseOf(drive, [note(text, ...drops)]));
  return findings.find((one) => one.check === "bridge")?.level;
}

describe("a bridge of which one leg reads OL", () => {
  it("is not called good while the other legs conduct", () => {
    expect(level("", drop("L1", 0.38), drop("L2", 0.39), drop("L3", "OL"))).toBe("watch");
  });

  it("is good where all legs conduct one way and block the other", () => {
    const forward = ["L1", "L2", "L3"].map((leg) => drop(leg, 0.38));
    const turned = ["L1", "L2", "L3"].map((leg) => drop(leg, "OL"));
    expect(level("", ...forward, ...turned)).toBe("good");
    expect(level("", ...forward)).toBe("good");
  });

  it("is bad where that leg is open both ways", () => {
    const open = { ...drop("L3", "OL"), said: "L3 OL both ways" };
    expect(level("L3 OL both ways", drop("L1", 0.38), drop("L2", 0.39), open)).toBe("bad");
  });
});
