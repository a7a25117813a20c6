import type { Job, JobReading, Message, Understood } from "../model.ts";
import { jobsFiling } from "../record/entries-table.ts";
import type { AnswerFacts } from "../record/entry.ts";
import { findMessage } from "../record/inbox.ts";
import { findOut } from "../record/outbox.ts";
import { isCurrent } from "../record/readings.ts";
import type { Bot } from "./desk.ts";
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
  const last =
    message.answers === undefined
      ? doubted(memory, message, note.job).at(-1)
      : pointedAt(memory, message, { job: note.job, about: message.answers });
  if (last === undefined) return undefined;
  return { kind: "answer", readings: [last.id], stands: said.answer === "yes" };
}

/** What a word on one answer settles: what was asked there, and nothing that was asked elsewhere. */
function pointedAt(
  memory: Memory,
  message: Message,
  { job, about }: { readonly job: number; readonly about: string },
): JobReading | undefined {
  const { platform, person } = message;
  const own = doubtedOf(memory, jobAt(memory, job), { platform, id: about });
  const asked = findOut(memory.store, `reply:${platform}:${about}:0`)?.text ?? "";
  return (
    own.findLast(({ who }) => who === person) ??
    doubted(memory, message, job).findLast(({ figure }) =>
      asked.split(/[^\d.]+/).includes(figure.number),
    )
  );
}

/** Doubtful values of one message, or of its edit. */
function doubtedOf(
  { store }: Memory,
  job: Job | undefined,
  { platform, id }: Pick<Message, "platform" | "id">,
): readonly JobReading[] {
  const isOf = (message: string): boolean =>
    message === id || findMessage(store, platform, message)?.message.edits === id;
  return (job?.readings ?? []).filter(
    (reading) => reading.doubtful === true && isCurrent(reading) && isOf(reading.message),
  );
}

/** Whether what the answer to a message asked still waits: whose it is, or whether a value is right. */
export function stillAsks({ store, memory }: Bot, platform: string, id: string): boolean {
  if (findMessage(store, platform, id)?.state === "waiting") return true;
  return jobsFiling(store, id).some(
    (job) => doubtedOf(memory, jobAt(memory, job), { platform, id }).length > 0,
  );
}
