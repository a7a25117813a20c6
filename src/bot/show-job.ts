import type { Job, JobPart, JobReading } from "../model.ts";
import { lastJudgement } from "./judge-job.ts";
import type { Memory } from "./memory.ts";

/** A job's record as `show --json` prints it. */
export function showJob(memory: Memory, job: Job): object {
  const { findings, diagnosis, next, cautions } = lastJudgement(memory, job);
  const { before, after } = factsOf(job);
  return { ...before, findings, diagnosis, next, cautions, ...after };
}

/** What of it follows from the job's entries alone. */
export function shownFacts(job: Job): Readonly<Record<string, unknown>> {
  const { before, after } = factsOf(job);
  return { ...before, ...after };
}

function factsOf(job: Job) {
  const before = {
    job: job.job,
    opened_by: job.opened_by,
    site: job.site,
    equipment: job.equipment,
    opened: job.opened,
    complaint: job.complaint ?? null,
    assigned: job.assigned ?? null,
    ...(job.second === undefined ? {} : { second: job.second }),
    channel: job.channel,
    ...(job.thread === undefined ? {} : { thread: job.thread }),
    status: job.status,
    status_at: job.status_at,
    person: job.person,
    people: job.people,
    timeline: job.timeline,
    readings: job.readings.map(shownReading),
    statements: job.statements.map(({ statement, ...line }) => ({ ...line, ...statement })),
  };
  const after = {
    parts: job.parts.map(shownPart),
    visits: job.visits,
    labor_hours: job.labor_hours,
    refrigerant: job.refrigerant,
    machine: {
      ...job.machine,
      locks: job.machine.locks,
      bypasses: job.machine.bypasses,
    },
    clocks: job.clocks,
    file: job.file,
    files: job.files,
    unread: job.unread,
  };
  return { before, after };
}

/** `at` is where on the machine, as everywhere; when is `taken`. */
function shownReading({ taken, received, ...reading }: JobReading): object {
  return { ...reading, taken, received };
}

/** A part is known by name and number together: "contactor 44-1902". */
function shownPart({ part, number, ...rest }: JobPart): object {
  return number === undefined
    ? { part, ...rest }
    : { part: part.includes(number) ? part : `${part} ${number}`, name: part, number, ...rest };
}
