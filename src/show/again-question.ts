import type { Reading } from "../model.ts";
import { figureWords } from "./figure-words.ts";
import { componentName, sentenceCase } from "./wording.ts";

/** One point reads twofold otherwise: the same compressor again, or the next one? Both values are kept. */
export function againQuestion(before: Reading, now: Reading): string {
  const name = componentName(before.subject ?? "");
  const [point = "that point"] = now.points ?? [];
  const { number, unit } = figureWords(before);
  const was = unit === "" ? number : `${number} ${unit}`;
  return sentenceCase(`${point} of ${name} read ${was} before: ${name} again, or another one?`);
}
