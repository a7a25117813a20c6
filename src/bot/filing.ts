import type { Job, JobReading, Message, Reading, Statement, Understood } from "../model.ts";
import { beginsTest } from "../record/clock-kinds.ts";
import { correctedBy, deniedIn, inherit } from "../record/corrections.ts";
import type { Draft } from "../record/entries-table.ts";
import type { Entry, Facts, NoteFacts, Opening, Replaces } from "../record/entry.ts";
import { isCurrent } from "../record/readings.ts";
import { takesOver } from "../record/takes-over.ts";
import type { Memory } from "./memory.ts";
import { entriesAt, jobAt } from "./rest.ts";
import { stoodFor } from "./weights.ts";

/** What a message leaves that says nothing. */
export const nothingRead: Understood = {
  readings: [],
  statements: [],
  unread: [],
  unread_spans: [],
  ask: [],
  skipped: [],
};

/** An entry to append, written for a message. */
export function draftFor(message: Message, job: number, facts: Facts): Draft {
  const { at, person, platform, id, channel, thread, text } = message;
  return {
    job,
    at,
    who: person,
    platform,
    message: id,
    channel,
    ...(thread === undefined ? {} : { thread }),
    text,
    facts,
  };
}

/** The facts of a note: what was read, with each correction tied to what it corrects. */
export function noteFacts(
  memory: Memory,
  message: Message,
  note: {
    readonly understood: Understood;
    readonly job?: number;
    readonly opens?: Opening;
    readonly edits?: string;
  },
): NoteFacts {
  const { understood, job, opens, edits } = note;
  const { readings, replaces } = corrected(memory, message, { readings: understood.readings, job });
  const [asked] = understood.ask;
  return {
    kind: "note",
    role: message.role,
    ...(opens === undefined ? {} : { opens }),
    readings,
    statements: understood.statements,
    unread: understood.unread_spans,
    ...(asked === undefined ? {} : { asked }),
    ...(understood.open === undefined ? {} : { open: understood.open }),
    files: message.files,
    replaces,
    ...(edits === undefined ? {} : { edits }),
  };
}

function corrected(
  memory: Memory,
  message: Message,
  note: { readonly readings: readonly Reading[]; readonly job: number | undefined },
): { readonly readings: readonly Reading[]; readonly replaces: readonly Replaces[] } {
  const known = note.job === undefined ? undefined : jobAt(memory, note.job);
  const job =
    known === undefined ? undefined : unsaid(known, message, entriesAt(memory, known.job));
  const instant = Date.parse(message.at);
  const replaces: Replaces[] = [];
  const taken = new Set<string>();
  const readings = note.readings.map((read, index) => {
    if (job === undefined) return read;
    const reading = timedByClock(read, message, entriesAt(memory, job.job));
    const doubt = reading.corrects === true ? undefined : doubtMended(reading, message, job);
    if (doubt !== undefined && !taken.has(doubt.id)) {
      taken.add(doubt.id);
      replaces.push({ was: doubt.id, by: index });
    }
    const standing = job.readings.filter(
      (old) =>
        !taken.has(old.id) &&
        old.message !== message.id &&
        old.message !== message.edits &&
        Date.parse(old.received) <= instant,
    );
    for (const { id } of stoodFor(reading, message, standing.filter(isCurrent))) {
      taken.add(id);
      replaces.push({ was: id, by: index });
    }
    if (reading.corrects !== true) return reading;
    const denied = deniedIn(message.text, reading);
    const was = correctedBy(reading, message.person, standing, denied);
    if (was === undefined) return reading;
    taken.add(was.id);
    replaces.push({ was: was.id, by: index });
    return inherit(reading, was);
  });
  return { readings, replaces };
}

/**
 * A job's readings as if a message had not been filed yet: read anew, or rewritten, it corrects what
 * it corrected before, and never its own first reading.
 */
function unsaid(job: Job, { id, edits }: Message, entries: readonly Entry[]): Job {
  const own = entries.filter(({ message }) => message === id || message === edits);
  const places = new Set(own.map(({ place }) => `${job.job}.${place}`));
  const readings = job.readings.map((reading): JobReading => {
    const { replaced_by: by, ...rest } = reading;
    return by !== undefined && places.has(by.split(".", 2).join(".")) ? rest : reading;
  });
  return places.size === 0 ? job : { ...job, readings };
}

/** An insulation value that comes when the clock asks was read when the clock asks. */
function timedByClock(reading: Reading, message: Message, entries: readonly Entry[]): Reading {
  if (reading.quantity !== "insulation_resistance" || reading.after_s !== undefined) return reading;
  const start = entries.findLast(
    ({ text, at }) => beginsTest(text ?? "") && Date.parse(at) <= Date.parse(message.at),
  );
  if (start === undefined) return reading;
  const elapsed = (Date.parse(message.at) - Date.parse(start.at)) / 1000;
  const minute = [60, 600].find((wanted) => Math.abs(elapsed - wanted) <= 30 + wanted / 10);
  return minute === undefined ? reading : { ...reading, after_s: minute };
}

/** A doubtful value asked about is answered by saying the value again. */
function doubtMended(reading: Reading, message: Message, job: Job): JobReading | undefined {
  return job.readings.findLast(
    (old) =>
      old.doubtful === true &&
      isCurrent(old) &&
      old.who === message.person &&
      old.message !== message.id &&
      old.quantity === reading.quantity &&
      (old.action === undefined || old.action === reading.action) &&
      old.at === reading.at &&
      old.subject === reading.subject &&
      old.points?.join() === reading.points?.join(),
  );
}

/** Whether a message holds anything for a job's record. */
export function isWork(understood: Understood, message: Message): boolean {
  return (
    understood.readings.length > 0 ||
    message.files.length > 0 ||
    understood.statements.some((said) => tells(said) || takesOver(said))
  );
}

function tells(statement: Statement): boolean {
  return statement.kind !== "note" && statement.kind !== "confirm" && statement.kind !== "question";
}
