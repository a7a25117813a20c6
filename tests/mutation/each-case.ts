import { existsSync, readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { casesOf, judged, verdictLine } from "../support/case-check.ts";

/** The judge's cases, each a test of its own: `judge-cases.test.ts` holds them by the file. */

const folder = "fixtures/cases";

for (const file of readdirSync(folder).filter((name) => name.endsWith(".jsonl"))) {
  const kept = `fixtures/verdicts/${file.replace(".jsonl", ".txt")}`;
  if (!existsSync(kept)) continue;
  const lines = readFileSync(kept, "utf8").split("\n");
  for (const [at, one] of casesOf(file).entries())
    test(one.id, () => {
      const judgement = judged(one);
      expect(verdictLine(one, judgement)).toBe(lines[at]);
    });
}
