import { describe, expect, it } from "vitest";
import { answers } from "../src/show/answers/list.ts";
import { howTo, howToLines } from "../src/show/how-to.ts";
import { checkNames } from "../src/vocabulary.ts";
import { lintReply } from "./support/lint-reply.ts";
import { input, statement } from "./support/reply-input.ts";

const ask = (about: string) =>
  answers.how(input({}), statement({ kind: "question", question: "how", about, said: about }));

describe("how a check is done", () => {
  it.each(checkNames)("%s stands in six lines that pass the reply's rules", (name) => {
    const lines = howToLines(name);
    expect(lines).toHaveLength(6);
    expect(lintReply(lines.join("\n"), { lines: 6, words: 120 })).toEqual([]);
  });

  it("asks for proof of absence of voltage wherever hands go onto bare parts", () => {
    for (const name of ["insulation", "polarization", "winding", "bridge"] as const) {
      expect(howTo[name].caution).toMatch(/prove the meter live, test dead, prove it live again/);
    }
  });

  it.each([
    ["how do I meg a compressor", "insulation"],
    ["how to do a vacuum hold", "evacuation"],
    ["how do I check the cap", "capacitor"],
    ["how do I do superheat", "superheat"],
    ["how do you test the diodes", "bridge"],
    ["how to pressure test with nitrogen", "pressure_test"],
  ] as const)("%s gives %s", (words, name) => {
    expect(ask(words)).toBe(howToLines(name).join("\n"));
  });

  it("asks which check, where neither words nor job tell", () => {
    expect(ask("how do I do that")).toMatch(/^How to do which check\?/);
  });
});
