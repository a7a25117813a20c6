import type { Message, Understood } from "../model.ts";
import type { Route } from "../record/route.ts";
import type { QuestionName } from "../vocabulary.ts";
import { lastOf } from "./beside-colleague.ts";
import { allJobs, gripsIn, type Memory } from "./memory.ts";

/** Words of a question that names no place: "what's left to do", "what do the warm rooms share". */
const shortest = 4;
const shortestPlain = 8;
/** "at the bakery"; but "put in", "on three", "on comp 2", "in it" name none. */
const maybePlace =
  /\b(?:at|on|for|with|of|in)\s+(?!(?:it|that|this|there|here|them|one|two|three|four|five|six|comps?|compressors?|circuits?|ckts?|fans?|leads?|pumps?|total|all|so far)\b|\d)\w/i;

/** Questions that are about one job; the others look through all where none is meant. */
const ofOneJob: ReadonlySet<QuestionName> = new Set([
  ...(["why", "next", "history", "summary", "how", "handover", "lacking"] as const),
  ...(["bring", "customer", "reading", "weights", "shared"] as const),
]);

/**
 * "Summary", "what was the superheat?", asked by who has just left: of the job that he had last,
 * since asking files nothing and the answer names the job. Asked by anybody with no job in hand, it
 * is about the only job that is open in that channel.
 */
export function lastJobOf(memory: Memory, message: Message, said: Understood): Route | undefined {
  const questions = said.statements.filter(({ kind }) => kind === "question");
  if (questions.length === 0 || said.readings.length > 0) return undefined;
  if (!said.statements.every(({ kind }) => kind === "question" || kind === "note"))
    return undefined;
  const own = gripsIn(memory, message.channel, message.person);
  const last = message.role === "tech" ? lastOf(own, Date.parse(message.at)) : undefined;
  // the desk asks of what was weighed today, wherever that was
  const desk = message.role !== "tech";
  const one = questions.every(
    (asked) =>
      asked.kind === "question" &&
      ofOneJob.has(asked.question) &&
      !(desk && asked.question === "weights"),
  );
  const job = last ?? (one ? onlyOpen(memory, message) : undefined);
  return job === undefined ? undefined : { kind: "job", job, by: "hand" };
}

function onlyOpen(memory: Memory, message: Message): number | undefined {
  const most = maybePlace.test(message.text) ? shortest : shortestPlain;
  if (message.text.trim().split(/\s+/).length > most) return undefined;
  const now = Date.parse(message.at);
  const open = allJobs(memory).filter(
    ({ channel, status, opened }) =>
      channel === message.channel && status !== "done" && Date.parse(opened) <= now,
  );
  return open.length === 1 ? open[0]?.job : undefined;
}
