import { expect, test } from "vitest";
import { check, linesOf, noteFiles } from "../support/note-check.ts";

/** The labelled notes, each a test of its own: `read.test.ts` counts how many of a file are read in full. */

for (const file of noteFiles)
  for (const line of linesOf(file))
    test(line.id, () => {
      expect(check(line).says).toBe("");
    });
