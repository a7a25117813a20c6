import type { ReplyInput } from "../model.ts";
import { figures } from "./figures.ts";
import { unreadSentence } from "./questions.ts";
import { clipped, unitName } from "./wording.ts";

/** At most so many jobs are offered; one word or number must be enough to answer. */
const mostOffered = 3;

/** Asks whose the readings are where no job fits, or more than one does; "" for talk. */
export function routingQuestion(input: ReplyInput): string {
  const readings = input.understood.readings;
  const waiting = readings.length > 0 || input.routing !== undefined;
  if (!waiting) return input.addressed ? unreadSentence(input) : "";
  const what =
    readings.length > 0 ? clipped(figures(readings), 14) : clipped(input.message.text, 8);
  return `${what.trim() === "" ? filesOf(input) : what}: ${offer(input)}`;
}

/** What came without a word. */
function filesOf({ message: { files } }: ReplyInput): string {
  const kind = files.every(({ type }) => type.startsWith("image/")) ? "photo" : "file";
  return files.length === 1 ? `Your ${kind}` : `Your ${files.length} ${kind}s`;
}

function offer({ routing }: ReplyInput): string {
  const jobs = routing?.candidates ?? [];
  const names = jobs.slice(0, mostOffered).map((j) => `${j.job} ${unitName(j)}`);
  // the same question a second time is short
  const kept = routing?.again === true ? "Kept too." : "Kept, not filed yet.";
  if (names.length === 0) return `which unit or job is this for? ${kept}`;
  if (names.length === 1) return `for job ${names[0]}? ${kept}`;
  return `which job, ${names.join(" or ")}? ${kept}`;
}
