import { readdirSync, readFileSync } from "node:fs";
import { z } from "zod";

const folder = new URL("../../fixtures/notes/", import.meta.url);
const Line = z.looseObject({
  text: z.string(),
  before: z.array(z.string()).optional(),
  units: z.enum(["us", "si"]).optional(),
  at: z.string().optional(),
});

/** The texts of all labelled notes. */
export function notesAtHand(): string[] {
  return labelledNotes().map(({ text }) => text);
}

/** All labelled notes with what was said before them. */
export function labelledNotes(): z.output<typeof Line>[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".jsonl"))
    .flatMap((name) => readFileSync(new URL(name, folder), "utf8").split("\n"))
    .filter((line) => line.trim() !== "")
    .map((line) => Line.parse(JSON.parse(line)));
}
