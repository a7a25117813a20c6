import type { ReplyInput } from "../model.ts";
import { readBack } from "./read-back.ts";
import { sharedPart } from "./shared-part.ts";
import { touchedFindings } from "./touched.ts";
import { sentence } from "./wording.ts";

/** The answer to a message that tells the tree: what was kept, what it makes of the rooms that are out. */
export function treeLines(input: ReplyInput): readonly string[] {
  const touched = touchedFindings(input).filter(({ check }) => check === "places");
  const shared = touched.some(({ level }) => level === "watch") ? sharedPart(input) : "";
  const doubts = touched
    .filter(({ level }) => level === "unknown")
    .map(({ says }) => sentence(says));
  return [...readBack(input), ...doubts.slice(0, 2), shared];
}
