import type { Job, JobReading, Message, Reading, Understood } from "../model.ts";
import { isCurrent } from "../record/readings.ts";
import { againQuestion } from "../show/again-question.ts";
import type { Memory } from "./memory.ts";
import { jobAt } from "./rest.ts";
import { workedBetween } from "./worked-between.ts";

/** One motor's value twice within so long, with nothing done between; our choice, no source. */
const sameHandMs = 30 * 60_000;
/** A value that is twice or half of what the same point read is rather another machine's; our choice, no source. */
const twofold = 2;
const ofMotor: ReadonlySet<string> = new Set(["insulation_resistance", "winding_resistance"]);
const named =
  /\b(?:comp(?:ressor)?s?|cmpr|c)\s*#?\s*(?:\d|[ab]\b|one|two|three)|\b(?:again|now|retest\w*|re-?read|still|after|dried|wiped|clean\w*|new)\b/i;

/** `understood` with the question whether it is the same compressor still, where one point reads twofold otherwise. */
export function askedOfOther(
  memory: Memory,
  message: Message,
  note: { readonly understood: Understood; readonly job: number },
): Understood {
  const { understood } = note;
  const job = jobAt(memory, note.job);
  if (job === undefined || understood.ask.length > 0 || named.test(message.text)) return understood;
  for (const reading of understood.readings) {
    const before = lastAt(job, reading, message);
    if (before === undefined || !isTwofold(before, reading)) continue;
    if (workedBetween(job, before.taken, message.at)) continue;
    return { ...understood, ask: [againQuestion(before, reading)] };
  }
  return understood;
}

/** The newest standing value of the same person on the same point of the same compressor, a short while ago. */
function lastAt(job: Job, reading: Reading, message: Message): JobReading | undefined {
  if (!ofMotor.has(reading.quantity) || reading.corrects === true) return undefined;
  if (reading.points === undefined || reading.rating !== undefined) return undefined;
  const key = ({ quantity, points, test_voltage, after_s, temperature }: Reading): string =>
    JSON.stringify([quantity, points, test_voltage, after_s, temperature]);
  return job.readings.findLast(
    (old) =>
      isCurrent(old) &&
      old.who === message.person &&
      old.subject !== undefined &&
      /^compressor\b/.test(old.subject) &&
      (reading.subject ?? old.subject) === old.subject &&
      key(old) === key(reading) &&
      Date.parse(message.at) - Date.parse(old.received) <= sameHandMs,
  );
}

function isTwofold(a: Reading, b: Reading): boolean {
  if (typeof a.value !== "number" || typeof b.value !== "number") return false;
  const [low, high] = [Math.min(a.value, b.value), Math.max(a.value, b.value)];
  return low > 0 && high / low >= twofold;
}
