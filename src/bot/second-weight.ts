import type { Job, JobReading, Message, Understood } from "../model.ts";
import type { Draft } from "../record/entries-table.ts";
import { isCurrent } from "../record/readings.ts";
import { moreOrTotal, sameOrMore } from "../show/charge-question.ts";
import { bottleRule } from "./bottle-difference.ts";
import { draftFor } from "./filing.ts";
import type { Memory } from "./memory.ts";
import { jobAt } from "./rest.ts";
import { isSameWeight, weighed, weightWords } from "./weights.ts";

/** The question about a weight is answered soon or at the closing check; our choice, no source. */
const bindsForMs = 60 * 60_000;

/**
 * A second, larger weight of the same kind may be the new total, an equal one the same sent again:
 * one question, since a gas record that counts twice is false. `understood` with the question,
 * where it asks nothing else and the words don't tell.
 */
export function askedOfWeight(
  memory: Memory,
  message: Message,
  note: { readonly understood: Understood; readonly job: number },
): Understood {
  const { understood } = note;
  const job = jobAt(memory, note.job);
  if (job === undefined || understood.ask.length > 0) return understood;
  for (const reading of understood.readings) {
    const { quantity, action, value, corrects } = reading;
    if (quantity !== "mass" || action === undefined || corrects === true) continue;
    // what left a bottle since it was weighed last is more by itself
    if (weightWords(message.text, reading) !== undefined || reading.rule === bottleRule) continue;
    const last = weighed(job, action)
      .filter((one) => one.message !== message.id)
      .at(-1);
    if (last === undefined || typeof value !== "number" || typeof last.value !== "number") continue;
    if (isSameWeight(last, reading, message.at)) return { ...understood, ask: [sameOrMore(last)] };
    if (value >= last.value) return { ...understood, ask: [moreOrTotal(last, reading)] };
  }
  return understood;
}

const total =
  /^\s*(?:no,?\s+)?(?:that'?s |it'?s |that was |the )?(?:in )?(total|all in all|altogether|overall)\b/i;
const more =
  /^\s*(?:no,?\s+|yes,?\s+)?(?:that'?s |it'?s |that was |it was )?(?:an? )?(more|on top|another|additional|extra|added|second one)\b/i;
const same =
  /^\s*(?:no,?\s+|sorry,?\s+)?(?:that'?s |it'?s |that was |it was )?(?:the )?(?:same|sent (?:it )?twice|twice|double|duplicate|repeat|resent|went twice)\b/i;

/** "Total", "more" or "the same" answers it: a total stands for the weights before it. */
export function answeredWeight(
  memory: Memory,
  message: Message,
  number: number,
): { readonly draft: Draft; readonly reading: string } | undefined {
  const { text } = message;
  const job = jobAt(memory, number);
  if (job === undefined) return undefined;
  const last = job.readings.findLast(
    (one) =>
      one.quantity === "mass" &&
      one.action !== undefined &&
      isCurrent(one) &&
      one.who === message.person,
  );
  if (last === undefined || Date.parse(message.at) - Date.parse(last.received) > bindsForMs)
    return undefined;
  const before = weighed(job, last.action).filter(({ id }) => id !== last.id);
  const again = sentAgain(job, last);
  const said = total.test(text) ? "total" : more.test(text) ? "more" : undefined;
  if (said === undefined && !(again !== undefined && same.test(text))) return undefined;
  if (before.length === 0 && again === undefined) return undefined;
  const draft = draftFor(message, number, {
    kind: "note",
    role: message.role,
    readings: [],
    statements: [],
    unread: [],
    files: [],
    replaces:
      said === "total"
        ? before.map(({ id }) => ({ was: id, by: last.id }))
        : said === "more" && again !== undefined
          ? // it stands for itself again
            [{ was: again.id, by: again.id }]
          : [],
  });
  return { draft, reading: last.id };
}

/** The equal weight that the last one was taken to repeat. */
function sentAgain(job: Job, last: JobReading): JobReading | undefined {
  return job.readings.findLast(
    (one) =>
      one.replaced_by === last.id &&
      one.action === last.action &&
      isSameWeight(one, last, last.received),
  );
}
