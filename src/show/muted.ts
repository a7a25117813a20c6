import type { Job } from "../model.ts";
import { unitName } from "./wording.ts";

/** The answer to "quiet", and to who takes it back. */
export function mutedText(word: "on" | "off", job: Job): string {
  return word === "on"
    ? `${unitName(job)}: quiet here for today. I file, and speak of danger, clocks and what you ask.`
    : `${unitName(job)}: I answer again.`;
}
