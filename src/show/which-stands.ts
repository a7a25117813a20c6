import type { Job, JobReading, Reading } from "../model.ts";
import { figureWords } from "./figure-words.ts";
import { figures } from "./figures.ts";
import { personName, sentence, unitName } from "./wording.ts";

/** Two people measured one point and differ: asked once, both are kept. */
export function whichQuestion(
  earlier: JobReading,
  later: Reading,
  names: Readonly<Record<string, string>>,
): string {
  const name = personName(earlier.who, names);
  return `${name} read ${amount(earlier)} there, you ${amount(later)}: whose stands?`;
}

/** The answer once it was said. */
export function stoodText(job: Job, kept: JobReading, gone: JobReading): string {
  return sentence(`${unitName(job)}: ${figures([kept])} stands, not ${amount(gone)}`);
}

function amount(reading: Reading): string {
  const { number, unit } = figureWords(reading);
  return unit === "" ? number : `${number} ${unit}`;
}
