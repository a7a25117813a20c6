import type { Job, JobReading, Message, Understood } from "../model.ts";
import type { Draft } from "../record/entries-table.ts";
import { isCurrent } from "../record/readings.ts";
import { moreOrTotal } from "../show/charge-question.ts";
import { draftFor } from "./filing.ts";
import type { Memory } from "./memory.ts";
import { jobAt } from "./rest.ts";

/** The question about a weight is answered soon or at the closing check; our choice, no source. */
const bindsForMs = 60 * 60_000;

const weighed = (job: Job, action: JobReading["action"]): readonly JobReading[] =>
  job.readings.filter(
    (one) =>
      one.quantity === "mass" &&
      one.action === action &&
      isCurrent(one) &&
      one.rating === undefined,
  );

/**
 * A second, larger weight of the same kind may be the new total: one question, since a gas record
 * that counts twice is false. `understood` with the question, where it asks nothing else.
 */
export function askedOfWeight(
  memory: Memory,
  note: { readonly understood: Understood; readonly job: number },
): Understood {
  const { understood } = note;
  const job = jobAt(memory, note.job);
  if (job === undefined || understood.ask.length > 0) return understood;
  for (const reading of understood.readings) {
    const { quantity, action, value, corrects } = reading;
    if (quantity !== "mass" || action === undefined || corrects === true) continue;
    const last = weighed(job, action).at(-1);
    if (last === undefined || typeof value !== "number" || typeof last.value !== "number") continue;
    if (value > last.value) return { ...understood, ask: [moreOrTotal(last, reading)] };
  }
  return understood;
}

/** "Total" or "more" answers it: a total stands for the weights before it. */
export function answeredWeight(
  memory: Memory,
  message: Message,
  number: number,
): { readonly draft: Draft; readonly reading: string } | undefined {
  const said = /^\s*(?:that'?s |it'?s |the )?(?:in )?(total|all in all|altogether|overall)\b/i.test(
    message.text,
  )
    ? "total"
    : /^\s*(?:that'?s )?(more|on top|another|additional|extra|added)\b/i.test(message.text)
      ? "more"
      : undefined;
  const job = jobAt(memory, number);
  if (said === undefined || job === undefined) return undefined;
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
  if (before.length === 0) return undefined;
  const draft = draftFor(message, number, {
    kind: "note",
    role: message.role,
    readings: [],
    statements: [],
    unread: [],
    files: [],
    replaces: said === "total" ? before.map(({ id }) => ({ was: id, by: last.id })) : [],
  });
  return { draft, reading: last.id };
}
