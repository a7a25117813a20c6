import { describe, expect, test } from "vitest";
import type { EquipmentFacts } from "../src/model.ts";
import { judgedNotes, split } from "./support/judged-notes.ts";

/** Pressures of a compressor that stands still say nothing of how it pumps; a cause that was mended is called put right. */

const rooftop: EquipmentFacts = { ...split, kind: "rooftop unit", phases: 3, supply_V: 460 };

const ratioOf = (...notes: readonly string[]) =>
  judgedNotes(rooftop, notes)
    .findings.filter(({ check }) => check === "compression")
    .map(({ level, signs = [] }) => [level, ...signs].join(" "))
    .join(", ");

describe("both sides of a compressor that is told to stand still", () => {
  test.each([
    ["compressor isn't running, suction 145 head 148"],
    ["unit won't start", "suction 190 head 192"],
    ["comp is off on the overload, suction 170 psi, head 180"],
    ["unit dead, no power", "suction 150 head 165"],
    ["compressor not running. 202 suction 205 head"],
    ["condenser fan runs, comp doesn't", "suction 188, head 196"],
    ["comp never came on, 155 suction 250 head"],
  ])("%s %s: nothing to judge", (...notes) => {
    expect(ratioOf(...notes.filter((one) => one !== undefined))).toBe("unknown");
  });

  test.each([
    ["compressor not pumping, suction 150 head 170 running"],
    ["comp 1 not running, comp 2 suction 150 head 170"],
    ["unit won't start some mornings", "it is running now, suction 150 head 170"],
    ["comp won't run long, suction 150 head 170"],
  ])("%s %s: it runs, or another one does", (...notes) => {
    expect(ratioOf(...notes.filter((one) => one !== undefined))).toContain("ratio:flat");
  });

  // common practice: a compressor in comfort cooling lifts 1.9 times at least, absolute over absolute
  test.each([
    [298, "unknown"],
    [299, "good ratio:usual"],
  ])("suction 150, head %s", (head, verdict) => {
    expect(ratioOf(`compressor isn't running, suction 150 head ${head}`)).toBe(verdict);
  });
});

describe("a cause that was mended", () => {
  const causeOf = (...notes: readonly string[]) => judgedNotes(rooftop, notes).diagnosis[0];

  test("stays the cause, put right", () => {
    const cause = causeOf("32 V lost over the contacts", "replaced the contactor", "runs fine now");
    expect(cause?.fault).toBe("contactor_failed");
    expect(cause?.mended).toBe(true);
  });

  test.each([
    [["32 V lost over the contacts", "need a contactor"]],
    [
      [
        "32 V lost over the contacts",
        "replaced the contactor",
        "still drops 30 V over the contacts",
      ],
    ],
    [["32 V lost over the contacts", "replaced the contactor, same thing, no change"]],
  ])("%j: not put right", (notes) => {
    expect(causeOf(...notes)?.mended).toBeUndefined();
  });
});
