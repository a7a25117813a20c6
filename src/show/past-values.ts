import type { PastValues, ReplyInput } from "../model.ts";
import { dayAndMonth } from "./days.ts";
import { figureWords } from "./figure-words.ts";
import { figures } from "./figures.ts";
import { localTime } from "./local-time.ts";
import { componentName, listed, sentence, sentenceCase } from "./wording.ts";

const mostPairs = 3;

/** Beside the settled set after the last repair, and a value that falls from visit to visit; "" each where there is nothing. */
export function pastLines(input: ReplyInput): readonly string[] {
  const past = input.past;
  if (past === undefined) return [];
  const falls = driftLine(input, past);
  return [
    baselineLine(input, past),
    falls,
    falls === "" ? beforeLine(input, past) : "",
    sisterLine(past),
  ].filter((line) => line !== "");
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

/** Between these shares a value is as it was; common practice, no source. */
const asBefore = { from: 0.75, to: 1.33 } as const;

/** "Was 655 megohm on 2 Mar: a tenth of it now." */
function beforeLine(input: ReplyInput, { before }: PastValues): string {
  if (before === undefined) return "";
  const { was, now, comparable } = before;
  const volts = comparable || was.test_voltage === undefined ? "" : ` at ${was.test_voltage} V`;
  const then = `Was ${amount(was)}${volts} on ${day(input, was.taken)}`;
  if (!comparable) return sentence(`${then}: not comparable, another test voltage`);
  const ratio = Number(now.value) / Number(was.value);
  if (!(ratio > 0)) return sentence(then);
  if (ratio >= asBefore.from && ratio <= asBefore.to) return sentence(`${then}: about the same`);
  return sentence(ratio > 1 ? `${then}: more now` : `${then}: ${shareWords(1 / ratio)} of it now`);
}

const shares = ["half", "a third", "a quarter", "a fifth", "a sixth", "a seventh", "an eighth"];

/** "half", "a tenth"; below that so many parts. */
function shareWords(times: number): string {
  const parts = Math.round(times);
  if (parts <= 1) return "three quarters";
  if (parts <= 8) return shares[parts - 2] ?? "half";
  return parts < 15 ? "about a tenth" : `one part in ${Number(parts.toPrecision(1))}`;
}

/** "Comp 2 today: 640 megohm." */
function sisterLine({ sister }: PastValues): string {
  if (sister === undefined) return "";
  const name = componentName(sister.other.subject ?? "");
  return sentence(`${sentenceCase(name)} today: ${amount(sister.other)}`);
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
