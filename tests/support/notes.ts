import { readdirSync, readFileSync } from "node:fs";
import { z } from "zod";

const folder = new URL("../../fixtures/notes/", import.meta.url);
const Line = z.looseObject({ text: z.string() });

/** The texts of all labelled notes. */
export function notesAtHand(): string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".jsonl"))
    .flatMap((name) => readFileSync(new URL(name, folder), "utf8").split("\n"))
    .filter((line) => line.trim() !== "")
    .map((line) => Line.parse(JSON.parse(line)).text);
}
