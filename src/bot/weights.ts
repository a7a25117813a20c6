import type { Job, JobReading, Reading } from "../model.ts";
import { isCurrent } from "../record/readings.ts";

/** The same weight again this soon is the same one sent twice until its author says more; our choice, no source. */
const againForMs = 60 * 60_000;
/** Two weights are one where they differ by less than a scale shows: 0.1 percent; our choice, no source. */
const sameWithin = 0.001;

/** Weights of one kind that stand in a job, oldest first. */
export function weighed(job: Job, action: JobReading["action"]): readonly JobReading[] {
  return job.readings.filter(
    (one) =>
      one.quantity === "mass" &&
      one.action === action &&
      isCurrent(one) &&
      one.rating === undefined &&
      one.earlier !== true,
  );
}

const totalWords = "(?:total|altogether|all in all|all told|overall)";
const totalBehind = new RegExp(`^[^.,;:]{0,12}?\\b(?:in )?${totalWords}\\b`, "i");
const totalBefore = new RegExp(
  `\\b(?:${totalWords}|makes|making|up to|brings (?:it|that|us) to|now at|sum)(?: is| of| now| so far| charged?| in| it| that| weight)*\\s*[:=]?\\s*$`,
  "i",
);
const moreNear =
  /\b(?:more|another|additional|extra|further|on top|added(?: in)?|again|second|other)\b/i;

/** What the words around a weight make of it: the sum so far, one more, or neither. */
export function weightWords(text: string, reading: Reading): "total" | "more" | undefined {
  const from = Math.min(...reading.spans.map(([start]) => start));
  const to = Math.max(...reading.spans.map(([, end]) => end));
  if (!Number.isFinite(from) || !Number.isFinite(to)) return undefined;
  const [before = ""] = text.slice(0, from).match(/[^.,;]*$/) ?? [];
  const said = text.slice(from, to);
  const [behind = ""] = text.slice(to).match(/^[^.,;]*/) ?? [];
  const isTotal =
    totalBefore.test(before) || totalBehind.test(behind) || new RegExp(totalWords, "i").test(said);
  if (isTotal) return "total";
  return moreNear.test(`${before} ${said} ${behind}`) ? "more" : undefined;
}

/** Whether a weight is the one that stands already, said again. */
export function isSameWeight(
  last: JobReading,
  reading: Pick<Reading, "value">,
  at: string,
): boolean {
  if (typeof last.value !== "number" || typeof reading.value !== "number") return false;
  const age = Date.parse(at) - Date.parse(last.received);
  const apart = Math.abs(last.value - reading.value);
  return age >= 0 && age <= againForMs && apart <= sameWithin * last.value;
}

/**
 * The weights that a new one stands for: all before it where it is said to be the total, the last
 * where it is the same one sent again. A gas record that counts twice is false.
 */
export function stoodFor(
  reading: Reading,
  said: { readonly text: string; readonly at: string },
  standing: readonly JobReading[],
): readonly JobReading[] {
  if (reading.quantity !== "mass" || reading.action === undefined) return [];
  if (reading.corrects === true || reading.rating !== undefined) return [];
  const alike = standing.filter((one) => one.quantity === "mass" && one.action === reading.action);
  const words = weightWords(said.text, reading);
  if (words === "total") return alike;
  const last = alike.at(-1);
  const again = words === undefined && last !== undefined && isSameWeight(last, reading, said.at);
  return again ? [last] : [];
}
