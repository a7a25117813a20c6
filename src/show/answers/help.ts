import type { Answer } from "./answer.ts";

/** Five lines: nobody scrolls on a roof. */
export const help: Answer = () =>
  [
    "Readings: write as you would say it. OU-2 comp 1 lead 1 to ground 90 meg at 500.",
    "Wrong number: no, lead 1 was 95. Or undo.",
    "Where you are: on my way, here, need a part, no access, done, leaving.",
    "Ask: why, what next, history, summary, status, how do I do that.",
    "Office: New job: site, unit, what is wrong, who goes. Export today.",
  ].join("\n");
