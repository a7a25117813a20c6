import type { JobReading, Message, Understood } from "../model.ts";
import type { AnswerFacts } from "../record/entry.ts";
import { isCurrent } from "../record/readings.ts";
import type { Memory } from "./memory.ts";
import { jobAt } from "./rest.ts";

/** "Yes" binds only to what was asked of its author this short a while ago; common practice, no source. */
const bindsForMs = 10 * 60_000;

/** Doubtful values of a person that still wait for "yes" or "no". */
export function doubted(memory: Memory, message: Message, job: number): readonly JobReading[] {
  const now = Date.parse(message.at);
  return (jobAt(memory, job)?.readings ?? []).filter((reading) => {
    const age = now - Date.parse(reading.received);
    return (
      reading.doubtful === true &&
      isCurrent(reading) &&
      reading.who === message.person &&
      age >= 0 &&
      age <= bindsForMs
    );
  });
}

/** What a "yes" or "no" settles. */
export function answerFacts(
  memory: Memory,
  message: Message,
  note: { readonly understood: Understood; readonly job: number },
): AnswerFacts | undefined {
  const said = note.understood.statements.find((statement) => statement.kind === "confirm");
  if (said === undefined || note.understood.readings.length > 0) return undefined;
  const last = doubted(memory, message, note.job).at(-1);
  if (last === undefined) return undefined;
  return { kind: "answer", readings: [last.id], stands: said.answer === "yes" };
}
