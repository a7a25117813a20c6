import { bench, describe } from "vitest";
import { startContext } from "../src/read/context.ts";
import { read } from "../src/read/read.ts";
import { notesAtHand } from "./support/notes.ts";

const notes = notesAtHand();
const context = startContext("us");

describe("reading", () => {
  bench(`${notes.length} notes`, () => {
    for (const note of notes) read(note, context);
  });
});
