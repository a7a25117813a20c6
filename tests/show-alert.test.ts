import { describe, expect, it } from "vitest";
import type { Job } from "../src/model.ts";
import { alertText } from "../src/show/alert.ts";
import { lintReply } from "./support/lint-reply.ts";
import { job, reading } from "./support/reply-input.ts";

const at = "2026-05-12T10:00:00-05:00";
const needed: Job["parts"] = [
  { part: "contactor", number: "44-1902", state: "needed", who: "bram", at, message: "a" },
];
const box = (f: number): Job => ({
  ...job,
  readings: [reading(`${f} F`, { quantity: "temperature", at: "box", value: (f - 32) / 1.8 })],
});

describe("a post of its own for the dispatcher", () => {
  it.each<[string, Job, string]>([
    ["no access", { ...job, status: "no_access" }, "Job 4 OU-3: no access, Bram stands outside."],
    ["a part", { ...job, parts: needed }, "Job 4 OU-3: to order, contactor 44-1902."],
    [
      "a bypass left",
      {
        ...job,
        status: "left_site",
        machine: {
          ...job.machine,
          bypasses: [{ what: "high pressure switch", who: "bram", since: at }],
        },
      },
      "Job 4 OU-3: left with the high pressure switch bypassed.",
    ],
    ["a warm box", box(46), "Job 4 OU-3: product over 41 F."],
  ])("%s is told once", (_, after, text) => {
    expect(alertText(job, after, {})).toBe(text);
    expect(alertText(after, after, {})).toBeUndefined();
    expect(lintReply(text, { lines: 1 })).toEqual([]);
  });

  it("says nothing where nobody must act", () => {
    expect(alertText(job, { ...job, status: "done" }, {})).toBeUndefined();
    expect(alertText(job, box(38), {})).toBeUndefined();
    const ordered = [
      ...needed,
      { ...needed[0], part: "contactor", who: "ife", message: "b", at, state: "ordered" as const },
    ];
    expect(alertText(job, { ...job, parts: ordered }, {})).toBeUndefined();
  });
});
