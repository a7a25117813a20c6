import type { PastValues, ReplyInput } from "../model.ts";
import { dayAndMonth } from "./days.ts";
import { figureWords } from "./figure-words.ts";
import { figures } from "./figures.ts";
import { localTime } from "./local-time.ts";
import { listed, sentence } from "./wording.ts";

const mostPairs = 3;

/** Beside the settled set after the last repair, and a value that falls from visit to visit; "" each where there is nothing. */
export function pastLines(input: ReplyInput): readonly string[] {
  const past = input.past;
  if (past === undefined) return [];
  return [baselineLine(input, past), driftLine(input, past)].filter((line) => line !== "");
}

function baselineLine(input: ReplyInput, { baseline }: PastValues): string {
  if (baseline === undefined) return "";
  const date = day(input, baseline.when);
  if (baseline.missing === true) {
    return `NOT JUDGED against the set after the repair of ${date}: outdoor air then and now is needed.`;
  }
  if (baseline.air !== undefined) {
    const [was, now] = baseline.air.map((one) => amount(one));
    return `NOT JUDGED against the set after the repair of ${date}: outdoor air ${was} then, ${now} now.`;
  }
  if (baseline.pairs.length === 0) return `As after the repair of ${date}.`;
  const words = baseline.pairs
    .slice(0, mostPairs)
    .map(({ was, now }) => `${figures([was])}, now ${amount(now)}`);
  return sentence(`After the repair of ${date}: ${words.join("; ")}`);
}

function driftLine(input: ReplyInput, { drift }: PastValues): string {
  const first = drift?.[0];
  if (drift === undefined || first === undefined) return "";
  const words = listed(drift.map(amount));
  return sentence(`Falling visit by visit since ${day(input, first.taken)}: ${words}`);
}

function amount(reading: Parameters<typeof figureWords>[0]): string {
  const { number, unit } = figureWords(reading);
  return unit === "" ? number : `${number} ${unit}`;
}

function day(input: ReplyInput, iso: string): string {
  const year = iso.slice(0, 4);
  const date = dayAndMonth(localTime(iso, input.time_zone)?.date ?? iso.slice(0, 10));
  return input.message.at.startsWith(year) ? date : `${date} ${year}`;
}
