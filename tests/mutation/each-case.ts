import { readdirSync } from "node:fs";
import { expect, test } from "vitest";
import { casesOf, judged, mistakes } from "../support/case-check.ts";

/** The judge's cases, each a test of its own: `judge-cases.test.ts` counts how many of a file are right. */

const byHand = "gas-by-hand.jsonl";
const files = readdirSync("fixtures/cases").filter((name) => /\.jsonl$/.test(name));

for (const file of files.filter((name) => name !== byHand))
  for (const one of casesOf(file))
    test(one.id, () => {
      expect(mistakes(one, judged(one))).toEqual([]);
    });
