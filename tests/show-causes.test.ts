import { describe, expect, test } from "vitest";
import type { Suspect } from "../src/model.ts";
import { causeBlock } from "../src/show/report/found.ts";
import { causeCell, causeSentence, causeWords } from "../src/show/wording.ts";
import { job } from "./support/reply-input.ts";

/** A cause that was put right is called so wherever it is named: replies, sheets and the report. */

const suspect = (probability: number, mended?: true): Suspect => ({
  fault: "contactor_failed",
  probability,
  for: ["32 V lost over the contacts"],
  against: [],
  ...(mended === undefined ? {} : { mended }),
});

const foundOf = (one: Suspect): string => {
  const block = causeBlock({
    job,
    equipment: {},
    judgement: { findings: [], diagnosis: [one], next: [], cautions: [] },
  });
  return block.kind === "lines" ? (block.lines[0] ?? "") : "";
};

describe.each([
  [0.9, undefined, "likely: ", "Likely cause: ", "likely ", "Cause likely: "],
  [0.9, true, "put right: ", "Cause, put right: ", "", "Cause, put right: "],
  [0.3, undefined, "possible: ", "Possible cause: ", "possible ", "Cause possible: "],
  [
    0.3,
    true,
    "possible, put right: ",
    "Possible cause, put right: ",
    "possible ",
    "Cause possible, put right: ",
  ],
] as const)("a cause of %s, mended %s", (probability, mended, cell, report, reply, sentence) => {
  const one = suspect(probability, mended);
  test("stands so in a sheet, a report and a reply", () => {
    expect(causeCell(one).startsWith(cell)).toBe(true);
    expect(foundOf(one).startsWith(report)).toBe(true);
    expect(causeWords(one).startsWith(reply)).toBe(true);
    expect(causeSentence(one).startsWith(sentence)).toBe(true);
    expect(causeWords(one).endsWith(", put right")).toBe(mended === true);
  });
});
